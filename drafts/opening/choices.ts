import type { Choice, StylingOf } from '../../engine/pattern/styling.ts';
import { zipAllowance } from '../allowances.ts';

/** Where a dress opens. */
export const openingChoices = [
  {
    kind: 'word',
    name: 'opening',
    default: 'back',
    words: ['back', 'side'],
    help: 'where the zip is set in: the centre back seam, or the left side seam',
  },
  zipAllowance,
] as const satisfies readonly Choice[];

export type OpeningStyling = StylingOf<typeof openingChoices>;

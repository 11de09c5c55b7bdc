import type { DraftingTable } from '../../engine/pattern/drafting-table.ts';
import type { Choice, StylingOf } from '../../engine/pattern/styling.ts';
import { zipAllowance } from '../allowances.ts';
import type { skirtChoices } from '../skirt/choices.ts';

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

/** What an opening is drawn on: where a dress opens, and whether a lining of its skirt opens with it. */
export type OpenedTable = DraftingTable<readonly [...typeof openingChoices, ...typeof skirtChoices]>;

export type OpenedStyling = OpenedTable['styling'];

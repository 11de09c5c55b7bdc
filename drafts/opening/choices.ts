import type { DraftingTable } from '../../engine/pattern/drafting-table.ts';
import type { Choice, StylingOf } from '../../engine/pattern/styling.ts';
import { zipAllowance } from '../allowances.ts';
import type { makingChoices } from '../making-choices.ts';
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
  {
    kind: 'word',
    name: 'zipKind',
    default: 'centred',
    words: ['centred', 'lapped'],
    help: 'how the zip is set in: under the middle of its seam, or with one edge lapped over it',
  },
  zipAllowance,
  {
    kind: 'word',
    name: 'waistStay',
    default: 'tape',
    words: ['tape', 'ribbon', 'none'],
    help: 'what keeps the waist from stretching: a tape in its seam, or a ribbon that hangs inside',
  },
] as const satisfies readonly Choice[];

export type OpeningStyling = StylingOf<typeof openingChoices>;

/** What an opening is drawn on: where a dress opens, and whether a lining of its skirt opens with it. */
export type OpenedTable = DraftingTable<
  readonly [...typeof openingChoices, ...typeof skirtChoices, ...typeof makingChoices]
>;

export type OpenedStyling = OpenedTable['styling'];

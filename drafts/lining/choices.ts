import type { DraftingTable } from '../../engine/pattern/drafting-table.ts';
import type { Choice } from '../../engine/pattern/styling.ts';
import { facingAllowance } from '../allowances.ts';

/** How the bodice is finished inside. */
export const liningChoices = [
  {
    kind: 'word',
    name: 'inside',
    default: 'lined',
    words: ['lined', 'faced'],
    help: 'the panels lined throughout, or only necklines (and armholes without sleeves) faced',
  },
  {
    kind: 'number',
    name: 'turnOfCloth',
    unit: 'mm',
    default: 1.5,
    min: 0.5,
    max: 4,
    help: 'lining and facings are set back by this at a finished edge, so that its seam rolls inside; more for thick cloth',
  },
  facingAllowance,
] as const satisfies readonly Choice[];

/** What a lining is drawn on: the table of any garment that has these choices. */
export type LiningTable = DraftingTable<typeof liningChoices>;

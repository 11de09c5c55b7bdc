import type { DraftingTable } from '../../engine/pattern/drafting-table.ts';
import type { Choice, StylingOf } from '../../engine/pattern/styling.ts';

/** What the gathered front insert leaves to taste. */
export const insertChoices = [
  {
    kind: 'number or auto',
    name: 'insertFullness',
    unit: 'ratio',
    default: 'auto',
    min: 1.2,
    max: 3,
    help: 'cloth gathered into the under-bust seam, for each mm of seam',
  },
  {
    kind: 'number or auto',
    name: 'necklineFullness',
    unit: 'ratio',
    default: 'auto',
    min: 1,
    max: 3,
    help: 'cloth drawn up along the neckline, for each mm of finished neckline',
  },
  {
    kind: 'word',
    name: 'necklineGathers',
    default: 'drawstring',
    words: ['drawstring', 'fixed'],
    help: 'drawn up by a drawstring, or gathered for good (always for a child)',
  },
  {
    kind: 'number',
    name: 'slashLines',
    unit: 'count',
    default: 6,
    min: 2,
    max: 16,
    help: 'lines along which each half of the insert is slashed and spread',
  },
  {
    kind: 'word',
    name: 'slashLinesDrawn',
    default: 'no',
    words: ['no', 'yes'],
    help: 'whether the slash lines are drawn on the insert; they belong to the lesson, not to the cloth',
  },
  {
    kind: 'number',
    name: 'casingDepth',
    unit: 'mm',
    default: 16,
    min: 8,
    max: 30,
    help: 'distance from the neckline fold to the stitching of the casing',
  },
] as const satisfies readonly Choice[];

export type InsertStyling = StylingOf<typeof insertChoices>;

/** What an insert is drawn on: the table of any garment that has these choices. */
export type InsertTable = DraftingTable<typeof insertChoices>;

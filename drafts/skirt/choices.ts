import type { DraftingTable } from '../../engine/pattern/drafting-table.ts';
import type { Choice } from '../../engine/pattern/styling.ts';
import { hemAllowance } from '../allowances.ts';
import type { makingChoices } from '../making-choices.ts';

/** What the gored skirt leaves to taste. */
export const skirtChoices = [
  {
    kind: 'number or auto',
    name: 'hipEase',
    unit: 'mm',
    default: 'auto',
    min: 20,
    max: 400,
    help: 'room around the hips beyond the body, instead of 60 mm and 8 more for each tenth of skirtFullness beyond 1',
  },
  {
    kind: 'word',
    name: 'skirtTo',
    default: 'knee',
    words: ['knee', 'calf', 'ankle'],
    help: 'where the hem lies, level to the floor',
  },
  {
    kind: 'number or auto',
    name: 'skirtLength',
    unit: 'mm',
    default: 'auto',
    min: 300,
    max: 1300,
    help: 'length at centre front from waist to hem, instead of to knee, calf or ankle',
  },
  {
    kind: 'number',
    name: 'skirtFullness',
    unit: 'ratio',
    default: 1.7,
    min: 1.1,
    max: 5,
    help: 'hem sweep for each mm of finished hip girth',
  },
  {
    kind: 'number or auto',
    name: 'hemSweep',
    unit: 'mm',
    default: 'auto',
    min: 900,
    max: 7000,
    help: 'how wide the hem is, instead of by fullness',
  },
  hemAllowance,
  {
    kind: 'word',
    name: 'skirtLining',
    default: 'none',
    words: ['none', 'lined'],
    help: 'whether the skirt has a lining, which hangs free from the waist',
  },
] as const satisfies readonly Choice[];

/** What a skirt is drawn on: the table of any garment that has these choices. */
export type SkirtTable = DraftingTable<readonly [...typeof skirtChoices, ...typeof makingChoices]>;

import type { Edge } from '../geometry/curve.ts';
import type { Garment, Notion } from '../pattern/garment.ts';
import type { Unit } from '../text/units.ts';
import { type ClothNeed, clothNeeded, leastCloth } from './cloth-needed.ts';
import { type ThreadNeed, threadNeeds } from './thread.ts';
import { clothWidths } from './widths.ts';

/** What to buy for a garment. */
export interface Materials {
  readonly cloths: readonly ClothNeed[];
  readonly thread: readonly ThreadNeed[];
  readonly notions: readonly Notion[];
}

/**
 * What to buy for a garment, cloth in the widths in which it is sold to who measures in `unit`: `least` says only what no lay
 * goes below, which costs milliseconds; `planned` lays each cloth on each width quickly, which costs a second or two.
 */
export const materialsFor = (
  garment: Garment,
  cutLines: ReadonlyMap<string, Edge>,
  unit: Unit,
  how: 'least' | 'planned',
): Materials => ({
  cloths: (how === 'planned' ? clothNeeded : leastCloth)(garment, cutLines, clothWidths(unit)),
  thread: threadNeeds(garment),
  notions: garment.notions,
});

import type { Edge } from '../geometry/curve.ts';
import type { Garment, Notion } from '../pattern/garment.ts';
import type { Unit } from '../text/units.ts';
import { type ClothNeed, clothNeeded } from './cloth-needed.ts';
import { type ThreadNeed, threadNeeds } from './thread.ts';
import { clothWidths } from './widths.ts';

/** What to buy for a garment. */
export interface Materials {
  readonly cloths: readonly ClothNeed[];
  readonly thread: readonly ThreadNeed[];
  readonly notions: readonly Notion[];
}

/** What to buy for a garment, cloth in the widths that it is sold in to who measures in `unit`; plans each quickly. */
export const materialsFor = (
  garment: Garment,
  cutLines: ReadonlyMap<string, Edge>,
  unit: Unit,
): Materials => ({
  cloths: clothNeeded(garment, cutLines, clothWidths(unit)),
  thread: threadNeeds(garment),
  notions: garment.notions,
});

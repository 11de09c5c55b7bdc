import { flatMapped } from '../../flat-mapped.ts';
import type { Issue } from '../../issue.ts';
import type { Garment } from '../../pattern/garment.ts';
import type { PieceEdge } from '../../pattern/piece.ts';
import type { Seam } from '../../pattern/seam.ts';
import { edgeKey, type Schedule } from './schedule.ts';
import { seamFault } from './seam-order.ts';

/** An edge, the seams that sew it, and the step in which it is first sewn or turned. */
interface Worked {
  readonly edge: PieceEdge;
  readonly seams: readonly Seam[];
  readonly first: number;
}

/**
 * Seams sewn against the way in which their allowances were cut. At every corner of a piece the edge of lower rank
 * runs through and was cut to be sewn first, so that the other can be sewn across it, and across allowances that
 * have been pressed (common practice, no source).
 */
export function crossingFaults(garment: Garment, schedule: Schedule): Issue[] {
  const seamsOn = seamsByEdge(garment);
  return flatMapped(garment.pieces, ({ name: piece, edges }) => {
    const worked = edges.map((edge): Worked => {
      const key = edgeKey({ piece, edge: edge.name });
      const seams = seamsOn.get(key) ?? [];
      let first = schedule.turned.get(key)?.[0] ?? Infinity;
      for (const { name } of seams) first = Math.min(first, schedule.sewn.get(name)?.[0] ?? Infinity);
      return { edge, seams, first };
    });
    return flatMapped(worked, (one, i) => {
      const other = worked[(i + 1) % worked.length];
      if (!other || other.edge.rank === one.edge.rank) return [];
      return one.edge.rank < other.edge.rank
        ? crossed(piece, one, other, schedule)
        : crossed(piece, other, one, schedule);
    });
  });
}

/** The seams on the edge that should come first are sewn and pressed before the other edge is worked. */
function crossed(piece: string, lower: Worked, higher: Worked, schedule: Schedule): Issue[] {
  if (higher.first === Infinity) return [];
  return flatMapped(lower.seams, (seam): Issue[] => {
    const place = schedule.sewn.get(seam.name)?.[0];
    if (place === undefined || place === higher.first) return [];
    if (place > higher.first) {
      const what = `sews “${lower.edge.name}” of the ${piece} after “${higher.edge.name}”, but its allowance is cut to be sewn first`;
      return [seamFault('sewing-against-cut', seam, place, schedule, what)];
    }
    if ((schedule.pressed.get(seam.name)?.[0] ?? Infinity) < higher.first) return [];
    const what = `crosses the seam “${seam.name}” at the ${piece} before it is pressed`;
    return [seamFault('sewing-not-pressed', seam, higher.first, schedule, what)];
  });
}

function seamsByEdge({ seams }: Garment): ReadonlyMap<string, readonly Seam[]> {
  const found = new Map<string, Seam[]>();
  for (const seam of seams)
    for (const side of seam.felled ? [seam.a] : [seam.a, seam.b])
      for (const ref of side) {
        const known = found.get(edgeKey(ref));
        if (known) known.push(seam);
        else found.set(edgeKey(ref), [seam]);
      }
  return found;
}

import type { Curve, Edge } from '../geometry/curve.ts';
import { type EdgePlace, edgeEnd, edgeLength, edgeStart } from '../geometry/edge.ts';
import { edgeCrossings, throughPoints } from '../geometry/intersect.ts';
import { nearestOnEdge } from '../geometry/nearest.ts';
import { distance } from '../geometry/point.ts';
import type { Notch } from '../pattern/piece.ts';

/**
 * Where on an edge a notch at a dart stands: where its line, prolonged, meets the edge. That is at the dart's mouth, the very
 * end of the edge, where rounding may let them pass each other: then the end that is nearer to the notch.
 */
export function whereItPoints(edge: Edge, stroke: readonly Curve[]): EdgePlace {
  const [from, to] = [stroke[0]?.from ?? edgeStart(edge), stroke.at(-1)?.to ?? edgeEnd(edge)];
  const met = edgeCrossings(edge, throughPoints(from, to)).toSorted(
    (a, b) => distance(a.point, from) - distance(b.point, from),
  );
  const end =
    distance(edgeStart(edge), from) < distance(edgeEnd(edge), from) ? edgeStart(edge) : edgeEnd(edge);
  const [nearest] = met;
  return nearest && distance(nearest.point, from) <= distance(end, from) ? nearest : nearestOnEdge(edge, end);
}

/** Strokes nearer to an end of their edge than this stand on it, mm: files have four digits. */
const ON_THE_END = 1e-3;

/**
 * Where a notch stands whose strokes stand at these places along an edge (mm): in their middle. A double one that reaches
 * an end of its edge would have fallen off there and was moved inward, so it stands at that end.
 */
export function amidStrokes(edge: Edge, places: readonly number[], mark: Notch['mark']): number {
  const [first, last] = [Math.min(...places), Math.max(...places)];
  const length = edgeLength(edge);
  if (mark === 'double' && last > first) {
    if (first < ON_THE_END) return 0;
    if (last > length - ON_THE_END) return length;
  }
  return places.reduce((sum, at) => sum + at, 0) / places.length;
}

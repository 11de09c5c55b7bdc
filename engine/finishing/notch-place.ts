import type { Curve, Edge } from '../geometry/curve.ts';
import { type EdgePlace, edgeEnd, edgeLength, edgeStart, lengthUpTo } from '../geometry/edge.ts';
import { edgeCrossings, throughPoints } from '../geometry/intersect.ts';
import { feetOnEdge, nearestOnEdge } from '../geometry/nearest.ts';
import { distance, type Point } from '../geometry/point.ts';
import { THREE_DIGITS } from '../geometry/tolerance.ts';
import type { Notch } from '../pattern/piece.ts';

/** Where a stroke of a notch stands on its edge, and how far along that is, mm. */
export interface Foot {
  readonly point: Point;
  readonly along: number;
}

/**
 * Where on an edge a stroke of a notch stands, which points straight away from it: the foot of its inner end, of a wedge
 * that of its tip. Across a hollow an end has several feet, and the nearest may be another; then it is the one that is
 * nearest to where the notch says it stands (`said`, mm along the edge). A stroke square to no place of the edge stands
 * where the edge is nearest to it.
 */
export function footOf(edge: Edge, stroke: readonly Curve[], said: number): Foot {
  const [first] = stroke;
  const end = (stroke.length > 1 ? first?.to : first?.from) ?? edgeStart(edge);
  const feet = feetOnEdge(edge, end);
  return (feet.length > 0 ? feet : [nearestOnEdge(edge, end)])
    .map((place): Foot => ({ point: place.point, along: lengthUpTo(edge, place) }))
    .reduce((best, foot) => (Math.abs(foot.along - said) < Math.abs(best.along - said) ? foot : best));
}

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

/**
 * Where a notch stands whose strokes stand at these places along an edge (mm): in their middle. A double one that reaches
 * an end of its edge would have fallen off there and was moved inward, so it stands at that end.
 */
export function amidStrokes(edge: Edge, places: readonly number[], mark: Notch['mark']): number {
  const [first, last] = [Math.min(...places), Math.max(...places)];
  const length = edgeLength(edge);
  if (mark === 'double' && last > first) {
    if (first < THREE_DIGITS) return 0;
    if (last > length - THREE_DIGITS) return length;
  }
  return places.reduce((sum, at) => sum + at, 0) / places.length;
}

import type { Curve, Edge } from '../geometry/curve.ts';
import { type EdgePlace, edgeEnd, edgeStart } from '../geometry/edge.ts';
import { edgeCrossings, throughPoints } from '../geometry/intersect.ts';
import { nearestOnEdge } from '../geometry/nearest.ts';
import { distance } from '../geometry/point.ts';

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

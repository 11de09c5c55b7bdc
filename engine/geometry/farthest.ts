import type { Edge } from './curve.ts';
import { edgeStart } from './edge.ts';
import { pointAt } from './evaluate.ts';
import { type Point, vectorBetween } from './point.ts';
import { rootsBetween01 } from './roots.ts';
import { dot, type Vector } from './vector.ts';

/** The place of an edge that lies farthest in a direction; the first of several that lie equally far. Exact. */
export function farthestAlong(edge: Edge, direction: Vector): Point {
  const start = edgeStart(edge);
  const far = (p: Point): number => dot(direction, vectorBetween(start, p));
  const summits = edge.curves.flatMap((curve): readonly Point[] => {
    if (curve.kind === 'line') return [curve.from, curve.to];
    const { from, handle1, handle2, to } = curve;
    const slopes = [
      vectorBetween(from, handle1),
      vectorBetween(handle1, handle2),
      vectorBetween(handle2, to),
    ];
    const turns = rootsBetween01(slopes.map((slope) => dot(direction, slope)));
    return [from, ...turns.map((t) => pointAt(curve, t)), to];
  });
  return summits.reduce((best, p) => (far(p) > far(best) ? p : best), start);
}

import type { Edge } from './curve.ts';
import { edgeStart } from './edge.ts';
import { pointAt } from './evaluate.ts';
import type { Point } from './point.ts';
import { rootsBetween01 } from './roots.ts';
import type { Vector } from './vector.ts';

/** The place of an edge that lies farthest in a direction; the first of several that lie equally far. Exact. */
export function farthestAlong(edge: Edge, direction: Vector): Point {
  const start = edgeStart(edge);
  const along = (from: Point, to: Point): number =>
    direction.x * (to.x - from.x) + direction.y * (to.y - from.y);
  let best = start;
  let farthest = 0;
  const look = (p: Point): void => {
    const far = along(start, p);
    if (!(far > farthest)) return;
    best = p;
    farthest = far;
  };
  for (const curve of edge.curves) {
    const { from, to } = curve;
    look(from);
    if (curve.kind === 'cubic') {
      const { handle1, handle2 } = curve;
      const turns = rootsBetween01([along(from, handle1), along(handle1, handle2), along(handle2, to)]);
      for (const t of turns) look(pointAt(curve, t));
    }
    look(to);
  }
  return best;
}

import { orient2d } from 'robust-predicates';
import type { Point } from './point.ts';

/** Where a point lies to a closed outline. */
export type PlaceInPolygon = 'inside' | 'on' | 'outside';

/** On which side of a straight edge a point is that its level passes: the sign is that of the edge less the point, along x. */
function besideEdge(from: Point, to: Point, p: Point): number {
  const side = orient2d(from.x, from.y, to.x, to.y, p.x, p.y);
  return from.y < to.y ? -side : side;
}

/** Whether a level passes an edge; half-open, so that one through a joint passes exactly one of its two edges, both, or neither. */
export const levelPasses = (from: Point, to: Point, { y }: Point): boolean => from.y > y !== to.y > y;

/** Whether a straight edge that the level of a point passes is met by a ray from it to the right; exact. */
export const metByRay = (from: Point, to: Point, p: Point): boolean => besideEdge(from, to, p) > 0;

/**
 * Where a point lies to a polygon, whichever way it runs: how often a level ray to the right crosses it (M. Shimrat,
 * "Algorithm 112", 1962). Exact for the doubles given, by adaptive predicates (J. R. Shewchuk, Discrete & Computational
 * Geometry 18, 1997).
 */
export function placeInPolygon(p: Point, polygon: readonly Point[]): PlaceInPolygon {
  let inside = false;
  let from = polygon.at(-1);
  for (const to of polygon) {
    if (from && levelPasses(from, to, p)) {
      const beside = besideEdge(from, to, p);
      if (beside === 0) return 'on';
      if (beside > 0) inside = !inside;
    } else if (from && liesOnLevelEnd(from, to, p)) return 'on';
    from = to;
  }
  return inside ? 'inside' : 'outside';
}

/** Of an edge that the level of a point does not pass: whether the point is its end, or lies on it where it is level. */
const liesOnLevelEnd = (from: Point, to: Point, { x, y }: Point): boolean =>
  (to.x === x && to.y === y) ||
  (from.y === y && to.y === y && Math.min(from.x, to.x) <= x && x <= Math.max(from.x, to.x));

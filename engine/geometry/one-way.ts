import type { Curve } from './curve.ts';
import { type Point, vectorBetween } from './point.ts';
import { plus, unit, type Vector } from './vector.ts';

/**
 * Whether a curve and the one that follows it run on one way: no leg of their control polygons goes back along the
 * direction halfway between their chords. Then they meet nowhere but at their joint. False says nothing. Told from
 * the control points alone, so it spares most searches for crossings.
 */
export function runOneWay(curve: Curve, next: Curve = curve): boolean {
  const way = plus(unit(vectorBetween(curve.from, curve.to)), unit(vectorBetween(next.from, next.to)));
  return goes(curve, way) && goes(next, way);
}

/** By the Bernstein form of the derivative: where no leg goes back and the whole goes on, so does every part. */
function goes(curve: Curve, way: Vector): boolean {
  if (!(along(curve.from, curve.to, way) > 0)) return false;
  if (curve.kind === 'line') return true;
  const { from, handle1, handle2, to } = curve;
  return along(from, handle1, way) >= 0 && along(handle1, handle2, way) >= 0 && along(handle2, to, way) >= 0;
}

const along = (a: Point, b: Point, way: Vector): number => (b.x - a.x) * way.x + (b.y - a.y) * way.y;

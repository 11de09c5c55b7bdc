import type { Curve } from './curve.ts';
import type { Point } from './point.ts';

/**
 * Whether a curve and the one that follows it run on one way: no leg of their control polygons goes back along the
 * direction halfway between their chords. Then they meet nowhere but at their joint. False says nothing. Told from
 * the control points alone, so it spares most searches for crossings.
 */
export function runOneWay(curve: Curve, next: Curve = curve): boolean {
  const ax = curve.to.x - curve.from.x;
  const ay = curve.to.y - curve.from.y;
  const bx = next.to.x - next.from.x;
  const by = next.to.y - next.from.y;
  // The sum of their unit headings, times both lengths.
  const a = Math.sqrt(ax * ax + ay * ay);
  const b = Math.sqrt(bx * bx + by * by);
  const x = ax * b + bx * a;
  const y = ay * b + by * a;
  return goes(curve, x, y) && goes(next, x, y);
}

/** By the Bernstein form of the derivative: where no leg goes back and the whole goes on, so does every part. */
function goes(curve: Curve, x: number, y: number): boolean {
  const { from, to } = curve;
  if (!(along(from, to, x, y) > 0)) return false;
  if (curve.kind === 'line') return true;
  const { handle1, handle2 } = curve;
  return (
    along(from, handle1, x, y) >= 0 && along(handle1, handle2, x, y) >= 0 && along(handle2, to, x, y) >= 0
  );
}

const along = (a: Point, b: Point, x: number, y: number): number => (b.x - a.x) * x + (b.y - a.y) * y;

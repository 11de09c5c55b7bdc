import type { Curve } from './curve.ts';
import { secondDerivativeAt } from './evaluate.ts';
import { magnitude } from './vector.ts';

/**
 * The ends of a chain of chords that stay within `flatness` (mm) of a curve, at even steps of its parameter, flat: x,
 * y, x, y ..., since the cutting lines of one garment have some ten thousand of them. A chord over a step h of the
 * parameter strays by at most max |B"| h^2 / 8 (Taylor's theorem), and |B"| of a cubic is greatest at one of its ends.
 */
export function chordPoints(curve: Curve, flatness: number): Float64Array {
  const { from, to } = curve;
  if (curve.kind === 'line') return Float64Array.of(from.x, from.y, to.x, to.y);
  const { handle1, handle2 } = curve;
  const bend = Math.max(magnitude(secondDerivativeAt(curve, 0)), magnitude(secondDerivativeAt(curve, 1)));
  const count = Math.max(1, Math.ceil(Math.sqrt(bend / (8 * flatness))));
  const points = new Float64Array(2 * (count + 1));
  for (let i = 0; i <= count; i++) {
    const t = i / count;
    const u = 1 - t;
    const a = u * u * u;
    const b = 3 * u * u * t;
    const c = 3 * u * t * t;
    const d = t * t * t;
    points[2 * i] = a * from.x + b * handle1.x + c * handle2.x + d * to.x;
    points[2 * i + 1] = a * from.y + b * handle1.y + c * handle2.y + d * to.y;
  }
  return points;
}

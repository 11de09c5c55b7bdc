import type { Curve } from '../geometry/curve.ts';
import { pointAt, secondDerivativeAt } from '../geometry/evaluate.ts';
import type { Point } from '../geometry/point.ts';
import { magnitude } from '../geometry/vector.ts';

/** A straight stretch of something drawn. */
export interface Stroke {
  readonly from: Point;
  readonly to: Point;
}

/** A chord of a curve, between two of its parameters. */
export interface Chord extends Stroke {
  readonly t0: number;
  readonly t1: number;
}

/**
 * A curve as a chain of chords that stay within `flatness` (mm) of it. A chord over a step h of the parameter
 * strays by at most max |B"| h^2 / 8 (Taylor's theorem), and |B"| of a cubic is greatest at one of its ends.
 */
export function chordsOf(curve: Curve, flatness: number): Chord[] {
  const bend = Math.max(magnitude(secondDerivativeAt(curve, 0)), magnitude(secondDerivativeAt(curve, 1)));
  const count = Math.max(1, Math.ceil(Math.sqrt(bend / (8 * flatness))));
  const points = Array.from({ length: count + 1 }, (_, i) => pointAt(curve, i / count));
  return points.slice(1).map((to, i) => ({ from: points[i] ?? to, to, t0: i / count, t1: (i + 1) / count }));
}

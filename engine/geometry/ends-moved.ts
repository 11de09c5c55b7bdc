import type { Curve } from './curve.ts';
import { moved } from './point.ts';
import type { Vector } from './vector.ts';

/**
 * A curve with its ends moved by two vectors (mm), each taking its handle along: a cubic keeps its headings at both
 * ends, and what lies between is moved by a mean of the two that passes smoothly from one to the other,
 * `(1 - w) start + w end` with `w = 3 t^2 - 2 t^3`.
 */
export function withEndsMoved(curve: Curve, start: Vector, end: Vector): Curve {
  const ends = { from: moved(curve.from, start), to: moved(curve.to, end) };
  if (curve.kind === 'line') return { kind: 'line', ...ends };
  const handles = { handle1: moved(curve.handle1, start), handle2: moved(curve.handle2, end) };
  return { kind: 'cubic', ...ends, ...handles };
}

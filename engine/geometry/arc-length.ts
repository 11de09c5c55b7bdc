import type { Curve } from './curve.ts';
import { GAUSS_RULES, MOST_NODES } from './gauss-legendre.ts';
import { ellipseThrough, type Hodograph, hodograph, nodesNeeded, speedAt, speedBound } from './hodograph.ts';
import { distance } from './point.ts';

/** Beyond this half-axis a larger ellipse gains less by faster convergence than it loses by a larger bound. */
const WIDEST_ELLIPSE = 5;

/**
 * Length of a curve (mm) to an absolute accuracy (mm).
 *
 * Gauss-Legendre quadrature of the speed. The number of nodes follows from a proven bound of the error, and the
 * interval is halved where too many would be needed, so the accuracy is kept for every curve, cusps included,
 * down to the rounding of doubles (about 1e-15 of the length).
 */
export function arcLength(curve: Curve, accuracy: number): number {
  if (curve.kind === 'line') return distance(curve.from, curve.to);
  return lengthBetween(hodograph(curve), 0, 1, accuracy);
}

/**
 * The parameter t at which a curve has run `s` mm from its start: the length up to t differs from s by no more
 * than `accuracy` (mm). Newton's method, kept inside a bracket that bisection narrows. An s below zero gives 0,
 * an s beyond the curve's length gives 1.
 */
export function parameterAtLength(curve: Curve, s: number, accuracy: number): number {
  if (s <= 0) return 0;
  const whole = arcLength(curve, accuracy / 4);
  if (s >= whole) return 1;
  if (curve.kind === 'line') return s / whole;
  const h = hodograph(curve);
  let low = 0;
  let high = 1;
  let t = s / whole;
  while (high - low > Number.EPSILON) {
    const excess = lengthBetween(h, 0, t, accuracy / 4) - s;
    if (Math.abs(excess) <= accuracy / 2) return t;
    if (excess > 0) high = t;
    else low = t;
    t -= excess / speedAt(h, t);
    if (!(t > low && t < high)) t = (low + high) / 2;
  }
  return t;
}

/** Length of the part of a cubic between two parameters (mm), to `accuracy` (mm). */
function lengthBetween(h: Hodograph, t0: number, t1: number, accuracy: number): number {
  const mid = (t0 + t1) / 2;
  const half = (t1 - t0) / 2;
  if (half === 0) return 0;
  const axis = Math.min(
    WIDEST_ELLIPSE,
    ellipseThrough(h.root1x, h.root1y, t0, t1),
    ellipseThrough(h.root2x, h.root2y, t0, t1),
  );
  const nodes = nodesNeeded(half, speedBound(h, mid, half, axis), axis, accuracy);
  if (nodes <= MOST_NODES) return integratedSpeed(h, mid, half, nodes);
  // Beside a cusp no rule converges, but the interval soon is so short that its mid speed says enough.
  const middle = speedAt(h, mid);
  const change = speedBound(h, mid, half, 1) - middle;
  if (2 * half * change <= accuracy || mid === t0 || mid === t1) return 2 * half * middle;
  return lengthBetween(h, t0, mid, accuracy / 2) + lengthBetween(h, mid, t1, accuracy / 2);
}

function integratedSpeed(h: Hodograph, mid: number, half: number, count: number): number {
  const rule = GAUSS_RULES[count - 2];
  if (rule === undefined) return NaN;
  const { nodes, weights } = rule;
  const { ax, ay, bx, by, cx, cy } = h;
  let sum = 0;
  for (let i = 0; i < count; i++) {
    const t = mid + half * (nodes[i] ?? 0);
    const x = (cx * t + bx) * t + ax;
    const y = (cy * t + by) * t + ay;
    sum += (weights[i] ?? 0) * Math.sqrt(x * x + y * y);
  }
  return half * sum;
}

import type { Cubic, Curve } from './curve.ts';
import { derivativeAt } from './evaluate.ts';
import { gaussPairs, MOST_PAIRS } from './gauss-legendre.ts';
import { analyticReach } from './hodograph.ts';
import { distance } from './point.ts';
import { part, split } from './split.ts';
import { magnitude } from './vector.ts';

/**
 * Length of a curve (mm) to an absolute accuracy (mm).
 *
 * Gauss-Legendre quadrature of the speed. The number of nodes follows from a proven bound of its error, and the
 * curve is halved where too many would be needed, so the accuracy is kept for every curve, cusps included, down to
 * the rounding of doubles (about 1e-15 of the coordinates).
 *
 * The bound: an integrand analytic and at most M inside the ellipse of half-axis sum rho is integrated by n nodes
 * to within 64/15 M rho^(-2n) / (1 - rho^(-2)) (L. N. Trefethen, "Is Gauss quadrature better than
 * Clenshaw-Curtis?", SIAM Review 50, 2008, theorem 4.5).
 */
export function arcLength(curve: Curve, accuracy: number): number {
  return curve.kind === 'line' ? distance(curve.from, curve.to) : cubicLength(curve, accuracy);
}

function cubicLength(cubic: Cubic, accuracy: number): number {
  const { from, handle1, handle2, to } = cubic;
  const ax = handle1.x - from.x;
  const ay = handle1.y - from.y;
  const bx = handle2.x - handle1.x;
  const by = handle2.y - handle1.y;
  const cx = to.x - handle2.x;
  const cy = to.y - handle2.y;
  // The derivative by t as z + 2 e u + k u^2, u = 2 t - 1.
  const zx = 0.75 * (ax + 2 * bx + cx);
  const zy = 0.75 * (ay + 2 * by + cy);
  const ex = 0.75 * (cx - ax);
  const ey = 0.75 * (cy - ay);
  const kx = 0.75 * (ax - 2 * bx + cx);
  const ky = 0.75 * (ay - 2 * by + cy);
  const reach = analyticReach(zx, zy, ex, ey, kx, ky);
  // In the ellipse |u|^2 <= (reach + 1) / 2 and 2 |u| <= |u|^2 + 1; |x| + |y| stands for the size of a vector.
  const largest =
    Math.abs(zx) +
    Math.abs(zy) +
    0.5 * (reach + 3) * (Math.abs(ex) + Math.abs(ey)) +
    0.5 * (reach + 1) * (Math.abs(kx) + Math.abs(ky));
  const shrink = reach - Math.sqrt(reach * reach - 1);
  const goal = accuracy * (1 - shrink);
  let error = (32 / 15) * largest;
  let pairs = 0;
  while (!(error <= goal) && pairs <= MOST_PAIRS) {
    error *= shrink * shrink;
    pairs++;
  }
  if (pairs > MOST_PAIRS) return hardLength(cubic, accuracy);
  const rule = gaussPairs(Math.max(1, pairs));
  let sum = 0;
  for (let i = 0; i < rule.length; i += 2) {
    const u = rule[i] as number;
    const uu = u * u;
    const evenX = zx + kx * uu;
    const evenY = zy + ky * uu;
    const oddX = 2 * ex * u;
    const oddY = 2 * ey * u;
    const x1 = evenX + oddX;
    const y1 = evenY + oddY;
    const x2 = evenX - oddX;
    const y2 = evenY - oddY;
    sum += (rule[i + 1] as number) * (Math.sqrt(x1 * x1 + y1 * y1) + Math.sqrt(x2 * x2 + y2 * y2));
  }
  return sum / 2;
}

/** Length of a cubic that one rule cannot measure: its chord and its polygon enclose it, or it is halved. */
function hardLength(cubic: Cubic, accuracy: number): number {
  const { from, handle1, handle2, to } = cubic;
  const chord = distance(from, to);
  const polygon = distance(from, handle1) + distance(handle1, handle2) + distance(handle2, to);
  const rounding = 4 * Number.EPSILON * (Math.abs(from.x) + Math.abs(from.y) + polygon);
  if (!(polygon - chord > Math.max(accuracy, rounding))) return (chord + polygon) / 2;
  const [before, after] = split(cubic, 0.5);
  return arcLength(before, accuracy / 2) + arcLength(after, accuracy / 2);
}

/**
 * The parameter t at which a curve has run `s` mm from its start: the length up to t differs from s by no more
 * than `accuracy` (mm). Newton's method, kept inside a bracket that bisection narrows. An s below zero gives 0,
 * an s beyond the curve's length gives 1.
 */
export function parameterAtLength(curve: Curve, s: number, accuracy: number): number {
  if (!(s > 0)) return 0;
  const whole = arcLength(curve, accuracy / 4);
  if (s >= whole) return 1;
  if (curve.kind === 'line') return s / whole;
  let low = 0;
  let high = 1;
  let t = s / whole;
  while (high - low > Number.EPSILON) {
    const excess = arcLength(part(curve, 0, t), accuracy / 4) - s;
    if (Math.abs(excess) <= accuracy / 2) return t;
    if (excess > 0) high = t;
    else low = t;
    t -= excess / magnitude(derivativeAt(curve, t));
    if (!(t > low && t < high)) t = (low + high) / 2;
  }
  return t;
}

import type { Cubic } from './curve.ts';

/**
 * The derivative of a cubic as a complex quadratic z(t) = x'(t) + i y'(t) = a + b t + c t^2, and the two places
 * in the complex plane where it vanishes. The speed, as a function of complex t, is sqrt(z(t) conj(z(conj t))):
 * analytic everywhere except at these roots and their mirror images. How near they come to an interval says
 * exactly how fast a quadrature rule converges there.
 */
export interface Hodograph {
  readonly ax: number;
  readonly ay: number;
  readonly bx: number;
  readonly by: number;
  readonly cx: number;
  readonly cy: number;
  readonly root1x: number;
  readonly root1y: number;
  readonly root2x: number;
  readonly root2y: number;
}

/** The hodograph of a cubic. A root at infinity (a lower degree) is given as infinite. */
export function hodograph({ from, handle1, handle2, to }: Cubic): Hodograph {
  const ax = 3 * (handle1.x - from.x);
  const ay = 3 * (handle1.y - from.y);
  const bx = 6 * (handle2.x - handle1.x) - 2 * ax;
  const by = 6 * (handle2.y - handle1.y) - 2 * ay;
  const cx = 3 * (to.x - handle2.x) - ax - bx;
  const cy = 3 * (to.y - handle2.y) - ay - by;
  // The stable quadratic formula in complex numbers: q = -(b + s) / 2 with the sign of s that avoids cancelling.
  const dx = bx * bx - by * by - 4 * (ax * cx - ay * cy);
  const dy = 2 * bx * by - 4 * (ax * cy + ay * cx);
  const size = Math.sqrt(dx * dx + dy * dy);
  let sx = Math.sqrt((size + Math.abs(dx)) / 2);
  let sy = sx === 0 ? 0 : Math.abs(dy) / (2 * sx);
  if (dx < 0) [sx, sy] = [sy, sx];
  if (dy < 0) sy = -sy;
  const sign = bx * sx + by * sy < 0 ? -1 : 1;
  const qx = -(bx + sign * sx) / 2;
  const qy = -(by + sign * sy) / 2;
  const cc = cx * cx + cy * cy;
  const qq = qx * qx + qy * qy;
  return {
    ax,
    ay,
    bx,
    by,
    cx,
    cy,
    root1x: cc === 0 ? Infinity : (qx * cx + qy * cy) / cc,
    root1y: cc === 0 ? 0 : (qy * cx - qx * cy) / cc,
    root2x: qq === 0 ? Infinity : (ax * qx + ay * qy) / qq,
    root2y: qq === 0 ? 0 : (ay * qx - ax * qy) / qq,
  };
}

/** Speed of the curve at t (mm per unit of t). */
export function speedAt(h: Hodograph, t: number): number {
  const x = (h.cx * t + h.bx) * t + h.ax;
  const y = (h.cy * t + h.by) * t + h.ay;
  return Math.sqrt(x * x + y * y);
}

/**
 * The larger half-axis, in half-lengths of the interval [t0, t1], of the ellipse with foci t0 and t1 that passes
 * through a root: half the sum of the root's distances to the foci.
 */
export function ellipseThrough(rootX: number, rootY: number, t0: number, t1: number): number {
  const d0 = Math.sqrt((rootX - t0) * (rootX - t0) + rootY * rootY);
  const d1 = Math.sqrt((rootX - t1) * (rootX - t1) + rootY * rootY);
  return (d0 + d1) / (t1 - t0);
}

/** A bound of the speed inside the ellipse about [mid - half, mid + half] with larger half-axis `axis`. */
export function speedBound(h: Hodograph, mid: number, half: number, axis: number): number {
  const reach = half * axis;
  const ex = h.bx + 2 * h.cx * mid;
  const ey = h.by + 2 * h.cy * mid;
  const turn = Math.sqrt(ex * ex + ey * ey);
  return speedAt(h, mid) + reach * (turn + reach * Math.sqrt(h.cx * h.cx + h.cy * h.cy));
}

/**
 * How many Gauss-Legendre nodes (2 or more) bring the error of an integral over an interval of half-length `half`
 * below `accuracy`, when the integrand is analytic and at most `bound` inside the ellipse about the interval with
 * larger half-axis `axis`: error <= half 64/15 bound rho^(-2n) / (1 - rho^(-2)), rho the sum of the half-axes
 * (L. N. Trefethen, "Is Gauss quadrature better than Clenshaw-Curtis?", SIAM Review 50, 2008, theorem 4.5).
 */
export function nodesNeeded(half: number, bound: number, axis: number, accuracy: number): number {
  const rho = axis + Math.sqrt(axis * axis - 1);
  if (!(rho > 1)) return Infinity;
  const error = (half * (64 / 15) * bound) / (1 - 1 / (rho * rho));
  return Math.max(2, Math.ceil(Math.log(error / accuracy) / (2 * Math.log(rho))));
}

import type { Cubic } from './curve.ts';
import { gaussPairs, MOST_PAIRS } from './gauss-legendre.ts';
import { analyticReach } from './hodograph.ts';
import { distance } from './point.ts';
import { minus, type Vector } from './vector.ts';

/** The length of a cubic (mm) and how it changes when a control point moves (mm per mm). */
export interface LengthGradient {
  readonly length: number;
  readonly from: Vector;
  readonly handle1: Vector;
  readonly handle2: Vector;
  readonly to: Vector;
}

/**
 * Length of a cubic and its gradient with respect to the four control points, analytic: the length is the integral
 * of |B'|, so its derivative is the integral of the unit tangent times the derivative of the Bernstein polynomials.
 *
 * The length keeps `accuracy` (mm), the gradient keeps accuracy divided by the length of the control polygon. A
 * cubic without extent has no gradient: zero vectors.
 */
export function arcLengthGradient(cubic: Cubic, accuracy: number): LengthGradient {
  const { from, handle1, handle2, to } = cubic;
  const polygon = distance(from, handle1) + distance(handle1, handle2) + distance(handle2, to);
  if (polygon === 0) return { length: 0, from: ZERO, handle1: ZERO, handle2: ZERO, to: ZERO };
  const sides = {
    ax: handle1.x - from.x,
    ay: handle1.y - from.y,
    bx: handle2.x - handle1.x,
    by: handle2.y - handle1.y,
    cx: to.x - handle2.x,
    cy: to.y - handle2.y,
  };
  const sums = tangentSums(sides, accuracy / polygon, 1);
  const first = { x: sums.ax, y: sums.ay };
  const middle = { x: sums.bx, y: sums.by };
  const last = { x: sums.cx, y: sums.cy };
  return {
    // Length is homogeneous of degree one in the sides of the polygon: Euler's theorem.
    length:
      sides.ax * sums.ax +
      sides.ay * sums.ay +
      sides.bx * sums.bx +
      sides.by * sums.by +
      sides.cx * sums.cx +
      sides.cy * sums.cy,
    from: { x: -first.x, y: -first.y },
    handle1: minus(first, middle),
    handle2: minus(middle, last),
    to: last,
  };
}

const ZERO: Vector = { x: 0, y: 0 };

/** The three sides of a control polygon, or the gradient with respect to them. */
interface Sides {
  readonly ax: number;
  readonly ay: number;
  readonly bx: number;
  readonly by: number;
  readonly cx: number;
  readonly cy: number;
}

/**
 * Integrals of the unit tangent times 3 (1-t)^2, 6 t (1-t) and 3 t^2, to `accuracy` (no unit), over a part of the
 * curve that counts by `share` of its parameter. In complex numbers the tangent is sqrt(z(u) / conj(z(conj u))),
 * analytic like the speed but unbounded at its roots; it stays below 1 + 2 sqrt(A^2 - 1) / (A - B) in an ellipse
 * of half-axis B inside that of half-axis A through the nearest root.
 */
function tangentSums(sides: Sides, accuracy: number, share: number): Sides {
  const { ax, ay, bx, by, cx, cy } = sides;
  const zx = 0.75 * (ax + 2 * bx + cx);
  const zy = 0.75 * (ay + 2 * by + cy);
  const ex = 0.75 * (cx - ax);
  const ey = 0.75 * (cy - ay);
  const kx = 0.75 * (ax - 2 * bx + cx);
  const ky = 0.75 * (ay - 2 * by + cy);
  const pairs = pairsNeeded(analyticReach(zx, zy, ex, ey, kx, ky), accuracy / 2);
  // At most four such slivers lie beside the two roots, and each errs by less than twice its share.
  const sliver = 16 * share < accuracy;
  if (pairs > MOST_PAIRS && !sliver) return sumsOfHalves(sides, accuracy, share / 2);
  const rule = gaussPairs(Math.min(pairs, MOST_PAIRS));
  // Moments of the tangent: plain, times u, times u^2.
  let x0 = 0;
  let y0 = 0;
  let x1 = 0;
  let y1 = 0;
  let x2 = 0;
  let y2 = 0;
  for (let i = 0; i < rule.length; i += 2) {
    const weight = rule[i + 1] ?? 0;
    const node = rule[i] ?? 0;
    for (let u = node, side = 0; side < 2; side++, u = -node) {
      const dx = zx + u * (2 * ex + u * kx);
      const dy = zy + u * (2 * ey + u * ky);
      const speed = Math.sqrt(dx * dx + dy * dy);
      if (speed === 0) continue;
      const tx = (weight * dx) / speed;
      const ty = (weight * dy) / speed;
      x0 += tx;
      y0 += ty;
      x1 += tx * u;
      y1 += ty * u;
      x2 += tx * u * u;
      y2 += ty * u * u;
    }
  }
  return {
    ax: 0.375 * (x0 - 2 * x1 + x2),
    ay: 0.375 * (y0 - 2 * y1 + y2),
    bx: 0.75 * (x0 - x2),
    by: 0.75 * (y0 - y2),
    cx: 0.375 * (x0 + 2 * x1 + x2),
    cy: 0.375 * (y0 + 2 * y1 + y2),
  };
}

/** Pairs of nodes by the bound named at `arcLength`, for a tangent times at most 3/8 (1 + |u|)^2. */
function pairsNeeded(reach: number, accuracy: number): number {
  const outer = Math.sqrt((reach + 1) / 2);
  const inner = outer - (outer - 1) / 8;
  const tangent = 1 + (2 * Math.sqrt(outer * outer - 1)) / (outer - inner);
  const largest = 0.375 * (1 + inner) * (1 + inner) * tangent;
  const rho = inner + Math.sqrt(inner * inner - 1);
  const shrink = 1 / (rho * rho);
  let error = ((64 / 15) * largest) / (1 - shrink);
  let pairs = 1;
  while (pairs <= MOST_PAIRS) {
    error *= shrink * shrink;
    if (error <= accuracy) return pairs;
    pairs++;
  }
  return pairs;
}

/** The sums of a cubic from those of its halves, whose sides are known sums of its own (de Casteljau). */
function sumsOfHalves({ ax, ay, bx, by, cx, cy }: Sides, accuracy: number, share: number): Sides {
  const midX = (ax + 2 * bx + cx) / 8;
  const midY = (ay + 2 * by + cy) / 8;
  const before = { ax: ax / 2, ay: ay / 2, bx: (ax + bx) / 4, by: (ay + by) / 4, cx: midX, cy: midY };
  const after = { ax: midX, ay: midY, bx: (bx + cx) / 4, by: (by + cy) / 4, cx: cx / 2, cy: cy / 2 };
  const l = tangentSums(before, accuracy, share);
  const r = tangentSums(after, accuracy, share);
  return {
    ax: l.ax / 2 + l.bx / 4 + (l.cx + r.ax) / 8,
    ay: l.ay / 2 + l.by / 4 + (l.cy + r.ay) / 8,
    bx: (l.bx + l.cx + r.ax + r.bx) / 4,
    by: (l.by + l.cy + r.ay + r.by) / 4,
    cx: (l.cx + r.ax) / 8 + r.bx / 4 + r.cx / 2,
    cy: (l.cy + r.ay) / 8 + r.by / 4 + r.cy / 2,
  };
}

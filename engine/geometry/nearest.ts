import { controlBox } from './bounds.ts';
import type { Curve, Edge } from './curve.ts';
import { headingAt, pointAt } from './evaluate.ts';
import { distance, type Point, vectorBetween } from './point.ts';
import { rootsBetween01 } from './roots.ts';
import { dot, minus } from './vector.ts';

/** The place on a curve nearest to a point. */
export interface Nearest {
  readonly t: number;
  readonly point: Point;
  /** mm */
  readonly distance: number;
}

/** The place on an edge nearest to a point. */
export interface NearestOnEdge extends Nearest {
  /** Which curve of the edge. */
  readonly curve: number;
}

/** The place on a curve nearest to p, to rounding; the first one where several are equally near. */
export function nearestOnCurve(curve: Curve, p: Point): Nearest {
  let best = placeOf(curve, 0, p);
  for (const t of [...squareTo(curve, p), 1]) {
    const place = placeOf(curve, t, p);
    if (place.distance < best.distance) best = place;
  }
  return best;
}

/** The place on an edge, or on any chain of curves, nearest to p, to rounding. */
export function nearestOnEdge(edge: Pick<Edge, 'curves'>, p: Point): NearestOnEdge {
  let best: NearestOnEdge = { curve: 0, t: 0, point: p, distance: Infinity };
  edge.curves.forEach((curve, index) => {
    if (leastDistance(curve, p) >= best.distance) return;
    const { t, point, distance } = nearestOnCurve(curve, p);
    if (distance < best.distance) best = { curve: index, t, point, distance };
  });
  return best;
}

/** An end of a curve counts as square to a point that stands aside of it by no more, mm: files are rounded. */
const ASIDE = 1e-2;

/** Every place on an edge where the line from p stands square on it, in order along the edge; a joint may come twice. */
export function feetOnEdge(edge: Pick<Edge, 'curves'>, p: Point): readonly NearestOnEdge[] {
  return edge.curves.flatMap((curve, index) => {
    const ends = [0, 1].filter((t) => {
      const aside = dot(headingAt(curve, t), vectorBetween(pointAt(curve, t), p));
      return Math.abs(aside) <= ASIDE;
    });
    return [...squareTo(curve, p), ...ends]
      .toSorted((a, b) => a - b)
      .map((t) => ({ curve: index, ...placeOf(curve, t, p) }));
  });
}

function placeOf(curve: Curve, t: number, p: Point): Nearest {
  const point = pointAt(curve, t);
  return { t, point, distance: distance(point, p) };
}

/**
 * Where the line from p to the curve stands square on it: the roots of (B - p) . B', of degree 5 for a cubic. They
 * are found with certainty, so no nearer place is missed.
 */
function squareTo(curve: Curve, p: Point): number[] {
  if (curve.kind === 'line') {
    const along = vectorBetween(curve.from, curve.to);
    const t = dot(along, vectorBetween(curve.from, p)) / dot(along, along);
    return t > 0 && t < 1 ? [t] : [];
  }
  const d0 = vectorBetween(p, curve.from);
  const d1 = vectorBetween(p, curve.handle1);
  const d2 = vectorBetween(p, curve.handle2);
  const d3 = vectorBetween(p, curve.to);
  const a = minus(d1, d0);
  const b = minus(d2, d1);
  const c = minus(d3, d2);
  // Bernstein coefficients of the product of a cubic and a quadratic vector polynomial.
  return rootsBetween01([
    dot(d0, a),
    (3 * dot(d1, a) + 2 * dot(d0, b)) / 5,
    (3 * dot(d2, a) + 6 * dot(d1, b) + dot(d0, c)) / 10,
    (dot(d3, a) + 6 * dot(d2, b) + 3 * dot(d1, c)) / 10,
    (2 * dot(d3, b) + 3 * dot(d2, c)) / 5,
    dot(d3, c),
  ]);
}

/** No place on the curve is nearer to p than this: its distance from the box about the control points. */
function leastDistance(curve: Curve, p: Point): number {
  const { left, right, top, bottom } = controlBox(curve);
  const x = Math.max(0, left - p.x, p.x - right);
  const y = Math.max(0, top - p.y, p.y - bottom);
  return Math.sqrt(x * x + y * y);
}

import { flatMapped } from '../flat-mapped.ts';
import { type Bounds, boundingBox } from './bounds.ts';
import type { Curve, Outline } from './curve.ts';
import { reversedEdge } from './edge.ts';
import { derivativeAt, pointAt } from './evaluate.ts';
import { gaussPairs } from './gauss-legendre.ts';
import type { Point } from './point.ts';
import { cross, type Vector } from './vector.ts';

/** All curves of an outline in order. */
export const outlineCurves = (outline: Outline): readonly Curve[] =>
  flatMapped(outline, (edge) => edge.curves);

/** An outline walked the other way round: what a mirrored outline needs to run clockwise again. */
export const reversedOutline = (outline: Outline): Outline => outline.toReversed().map(reversedEdge);

/** The smallest upright rectangle about an outline. Exact. */
export const outlineBounds = (outline: Outline): Bounds => boundingBox(outlineCurves(outline));

/**
 * Area enclosed by an outline (mm^2), positive when it runs clockwise as drawn. Exact for lines and cubics:
 * Green's theorem, half the integral of x dy - y dx, written out in the control points.
 */
export function signedArea(outline: Outline): number {
  const origin = outline[0]?.curves[0]?.from;
  if (!origin) return 0;
  let sum = 0;
  for (const curve of outlineCurves(outline)) sum += sweptArea(curve, origin);
  return sum;
}

/** Area swept by the ray from `origin` to a point that walks along the curve (mm^2, clockwise positive). Exact. */
export function sweptArea(curve: Curve, origin: Point): number {
  const p0 = from(origin, curve.from);
  const p3 = from(origin, curve.to);
  if (curve.kind === 'line') return cross(p0, p3) / 2;
  const p1 = from(origin, curve.handle1);
  const p2 = from(origin, curve.handle2);
  const weighted =
    6 * cross(p0, p1) +
    3 * cross(p0, p2) +
    cross(p0, p3) +
    3 * cross(p1, p2) +
    3 * cross(p1, p3) +
    6 * cross(p2, p3);
  return weighted / 20;
}

/**
 * Centre of area of an outline. Exact: the integrals of x^2 dy and y^2 dx over a cubic are polynomials of degree
 * 8, which six Gauss nodes integrate without error. An outline without area has no centre: its first point.
 */
export function centroid(outline: Outline): Point {
  const origin = outline[0]?.curves[0]?.from ?? { x: 0, y: 0 };
  const area = signedArea(outline);
  if (area === 0) return origin;
  const rule = gaussPairs(3);
  let momentX = 0;
  let momentY = 0;
  for (const curve of outlineCurves(outline)) {
    for (let i = 0; i < rule.length; i++) {
      const node = (i % 2 === 0 ? 1 : -1) * (rule[i - (i % 2)] ?? 0);
      const weight = (rule[i - (i % 2) + 1] ?? 0) / 4;
      const p = from(origin, pointAt(curve, (1 + node) / 2));
      const d = derivativeAt(curve, (1 + node) / 2);
      momentX += weight * p.x * p.x * d.y;
      momentY -= weight * p.y * p.y * d.x;
    }
  }
  return { x: origin.x + momentX / area, y: origin.y + momentY / area };
}

const from = (origin: Point, p: Point): Vector => ({ x: p.x - origin.x, y: p.y - origin.y });

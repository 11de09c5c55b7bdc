import { BooleanOperations, Polygon } from '@flatten-js/core';
import { boundsMeet } from './bounds.ts';
import type { Curve, Outline } from './curve.ts';
import { pointAt } from './evaluate.ts';
import { outlineBounds, outlineCurves } from './outline.ts';
import type { Point } from './point.ts';

/**
 * Points along a curve, its end left out, so that straight chords between them stray from it by no more than
 * `tolerance` (mm): n even steps of t stray by at most |B"| / (8 n^2).
 */
export function flattened(curve: Curve, tolerance: number): Point[] {
  if (curve.kind === 'line') return [curve.from];
  const { from, handle1, handle2, to } = curve;
  const bend = Math.max(
    Math.hypot(from.x - 2 * handle1.x + handle2.x, from.y - 2 * handle1.y + handle2.y),
    Math.hypot(handle1.x - 2 * handle2.x + to.x, handle1.y - 2 * handle2.y + to.y),
  );
  const steps = Math.max(1, Math.ceil(Math.sqrt((0.75 * bend) / tolerance)));
  return Array.from({ length: steps }, (_, i) => pointAt(curve, i / steps));
}

/** The corners of a polygon that follows an outline to within `tolerance` (mm); the first is not repeated. */
export const polygonOf = (outline: Outline, tolerance: number): Point[] =>
  outlineCurves(outline).flatMap((curve) => flattened(curve, tolerance));

/**
 * Area common to two simple outlines (mm^2), each followed by a polygon to within `tolerance` (mm), so the answer
 * errs by no more than the tolerance times the length of both outlines.
 */
export function sharedArea(a: Outline, b: Outline, tolerance: number): number {
  if (!boundsMeet(outlineBounds(a), outlineBounds(b))) return 0;
  const polygons = [a, b].map((outline) => {
    const polygon = new Polygon(polygonOf(outline, tolerance).map(({ x, y }): [number, number] => [x, y]));
    const [face] = [...polygon.faces];
    if (face && face.orientation() < 0) polygon.reverse();
    return polygon;
  });
  const [first, second] = polygons;
  if (!first || !second) return 0;
  return Math.abs(BooleanOperations.intersect(first, second).area());
}

import { BooleanOperations, Polygon } from '@flatten-js/core';
import { boundsMeet } from './bounds.ts';
import { chordPoints } from './chords.ts';
import type { Outline } from './curve.ts';
import { outlineBounds, outlineCurves } from './outline.ts';
import { type Point, point } from './point.ts';

/** The corners of a polygon that follows an outline to within `tolerance` (mm); the first is not repeated. */
export const polygonOf = (outline: Outline, tolerance: number): Point[] =>
  outlineCurves(outline).flatMap((curve) => {
    const ends = chordPoints(curve, tolerance);
    return Array.from({ length: ends.length / 2 - 1 }, (_, i) =>
      point(ends[2 * i] ?? 0, ends[2 * i + 1] ?? 0),
    );
  });

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

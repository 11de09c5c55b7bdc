import type { Curve, Edge, Outline } from './curve.ts';
import { pointAt } from './evaluate.ts';
import { type Point, vectorBetween } from './point.ts';
import { rootsBetween01 } from './roots.ts';
import { COINCIDENCE } from './tolerance.ts';
import { cross, dot, unit, type Vector } from './vector.ts';

/** A straight line without ends: through a point, with a heading. */
export interface StraightLine {
  readonly through: Point;
  readonly heading: Vector;
}

/** Where a curve crosses a straight line. */
export interface Crossing {
  /** Parameter on the curve. */
  readonly t: number;
  readonly point: Point;
  /** Distance along the straight line from the point it was given through (mm, signed). */
  readonly along: number;
}

/** Where an edge crosses a straight line. */
export interface EdgeCrossing extends Crossing {
  /** Which curve of the edge. */
  readonly curve: number;
}

/** Where an outline crosses a straight line. */
export interface OutlineCrossing extends EdgeCrossing {
  readonly edge: string;
}

/** The level line at y. */
export const level = (y: number): StraightLine => ({ through: { x: 0, y }, heading: { x: 1, y: 0 } });

/** The upright line at x. */
export const upright = (x: number): StraightLine => ({ through: { x, y: 0 }, heading: { x: 0, y: 1 } });

/** The straight line through two different points, headed from the first to the second. */
export const throughPoints = (a: Point, b: Point): StraightLine => ({
  through: a,
  heading: vectorBetween(a, b),
});

/**
 * Where a curve meets a straight line, in order along the curve, to rounding. A touch without crossing counts
 * once. A curve that lies in the line gives no crossings.
 */
export function crossings(curve: Curve, line: StraightLine): Crossing[] {
  const heading = unit(line.heading);
  const side = (p: Point): number => cross(heading, vectorBetween(line.through, p));
  const sides =
    curve.kind === 'line'
      ? [side(curve.from), side(curve.to)]
      : [side(curve.from), side(curve.handle1), side(curve.handle2), side(curve.to)];
  return rootsBetween01(sides).map((t) => {
    const point = pointAt(curve, t);
    return { t, point, along: dot(heading, vectorBetween(line.through, point)) };
  });
}

/** Where an edge meets a straight line, in order along the edge; a joint on the line counts once. */
export function edgeCrossings(edge: Edge, line: StraightLine): EdgeCrossing[] {
  const found: EdgeCrossing[] = [];
  for (const [index, curve] of edge.curves.entries()) {
    for (const crossing of crossings(curve, line)) {
      if (!repeats(found.at(-1), crossing)) found.push({ ...crossing, curve: index });
    }
  }
  return found;
}

/**
 * Where an outline meets a straight line, in order along the line; a corner on the line counts once.
 */
export function outlineCrossings(outline: Outline, line: StraightLine): OutlineCrossing[] {
  const all = outline
    .flatMap((edge) => edgeCrossings(edge, line).map((crossing) => ({ ...crossing, edge: edge.name })))
    .sort((a, b) => a.along - b.along);
  return all.filter((crossing, i) => !repeats(all[i - 1], crossing));
}

/** A crossing found again at the place of another one: both sides of one joint. */
const repeats = (before: Crossing | undefined, crossing: Crossing): boolean =>
  before !== undefined &&
  Math.abs(crossing.along - before.along) < COINCIDENCE &&
  Math.hypot(crossing.point.x - before.point.x, crossing.point.y - before.point.y) < COINCIDENCE;

import type { Curve, Edge, Outline } from './curve.ts';
import { pointAt } from './evaluate.ts';
import { distance, type Point, vectorBetween } from './point.ts';
import { rootsBetween01 } from './roots.ts';
import { COINCIDENCE } from './tolerance.ts';
import { unit, type Vector } from './vector.ts';

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
export const levelAt = (y: number): StraightLine => ({ through: { x: 0, y }, heading: { x: 1, y: 0 } });

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
export function crossings(curve: Curve, { through, heading }: StraightLine): readonly Crossing[] {
  const { x, y } = heading;
  const length = Math.sqrt(x * x + y * y);
  return length === 0 ? none : crossingsWith(curve, through, x / length, y / length);
}

/** Most curves lie on one side of most lines. */
const none: readonly Crossing[] = [];

/** The same for a line with a unit heading, x and y apart: for each curve a vector less. */
function crossingsWith(curve: Curve, through: Point, x: number, y: number): readonly Crossing[] {
  const { from, to } = curve;
  const start = x * (from.y - through.y) - y * (from.x - through.x);
  const end = x * (to.y - through.y) - y * (to.x - through.x);
  if (curve.kind === 'line')
    return onOneSide(start, end) ? none : metAt(rootsBetween01([start, end]), curve, through, x, y);
  const { handle1, handle2 } = curve;
  const near = x * (handle1.y - through.y) - y * (handle1.x - through.x);
  const far = x * (handle2.y - through.y) - y * (handle2.x - through.x);
  if (onOneSide(start, near) && onOneSide(end, far) && onOneSide(start, end)) return none;
  return metAt(rootsBetween01([start, near, far, end]), curve, through, x, y);
}

/** Whether two points lie on one side of a line, and neither on it. */
const onOneSide = (a: number, b: number): boolean => (a > 0 && b > 0) || (a < 0 && b < 0);

function metAt(
  parameters: readonly number[],
  curve: Curve,
  through: Point,
  x: number,
  y: number,
): readonly Crossing[] {
  if (parameters.length === 0) return none;
  return parameters.map((t) => {
    const point = pointAt(curve, t);
    return { t, point, along: x * (point.x - through.x) + y * (point.y - through.y) };
  });
}

/** Where an edge meets a straight line, in order along the edge; a joint on the line counts once. */
export function edgeCrossings(edge: Edge, line: StraightLine): EdgeCrossing[] {
  const { through } = line;
  const { x, y } = unit(line.heading);
  const found: EdgeCrossing[] = [];
  for (let curve = 0; curve < edge.curves.length; curve++)
    for (const crossing of crossingsWith(edge.curves[curve] as Curve, through, x, y))
      if (!repeats(found.at(-1), crossing))
        found.push({ t: crossing.t, point: crossing.point, along: crossing.along, curve });
  return found;
}

/**
 * Where an outline meets a straight line, in order along the line; a corner on the line counts once.
 */
export function outlineCrossings(outline: Outline, line: StraightLine): OutlineCrossing[] {
  const all: OutlineCrossing[] = [];
  for (const edge of outline)
    for (const { t, point, along, curve } of edgeCrossings(edge, line))
      all.push({ t, point, along, curve, edge: edge.name });
  all.sort((a, b) => a.along - b.along);
  return all.filter((crossing, i) => !repeats(all[i - 1], crossing));
}

/** A crossing found again at the place of another one: both sides of one joint. */
const repeats = (before: Crossing | undefined, crossing: Crossing): boolean =>
  before !== undefined &&
  Math.abs(crossing.along - before.along) < COINCIDENCE &&
  distance(crossing.point, before.point) < COINCIDENCE;

import type { Curve, Edge, Outline } from './curve.ts';
import { pointAt } from './evaluate.ts';
import { distance, type Point, vectorBetween } from './point.ts';
import { rootsBetween01 } from './roots.ts';
import { COINCIDENCE } from './tolerance.ts';
import { dot, unit, type Vector } from './vector.ts';

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
export const crossings = (curve: Curve, line: StraightLine): readonly Crossing[] =>
  crossingsWith(curve, line.through, unit(line.heading));

/** Most curves lie on one side of most lines. */
const none: readonly Crossing[] = [];

function crossingsWith(curve: Curve, through: Point, heading: Vector): readonly Crossing[] {
  const start = side(through, heading, curve.from);
  const end = side(through, heading, curve.to);
  if (curve.kind === 'line')
    return onOneSide(start, end) ? none : metAt([start, end], curve, through, heading);
  const near = side(through, heading, curve.handle1);
  const far = side(through, heading, curve.handle2);
  if (onOneSide(start, near) && onOneSide(end, far) && onOneSide(start, end)) return none;
  return metAt([start, near, far, end], curve, through, heading);
}

/** Distance of a point from a straight line (mm), positive on the right of its unit heading. */
const side = (through: Point, heading: Vector, p: Point): number =>
  heading.x * (p.y - through.y) - heading.y * (p.x - through.x);

/** Whether two points lie on one side of a line, and neither on it. */
const onOneSide = (a: number, b: number): boolean => (a > 0 && b > 0) || (a < 0 && b < 0);

const metAt = (sides: readonly number[], curve: Curve, through: Point, heading: Vector): Crossing[] =>
  rootsBetween01(sides).map((t) => {
    const point = pointAt(curve, t);
    return { t, point, along: dot(heading, vectorBetween(through, point)) };
  });

/** Where an edge meets a straight line, in order along the edge; a joint on the line counts once. */
export function edgeCrossings(edge: Edge, line: StraightLine): EdgeCrossing[] {
  const { through } = line;
  const heading = unit(line.heading);
  const found: EdgeCrossing[] = [];
  for (let curve = 0; curve < edge.curves.length; curve++)
    for (const crossing of crossingsWith(edge.curves[curve] as Curve, through, heading))
      if (!repeats(found.at(-1), crossing))
        found.push({ t: crossing.t, point: crossing.point, along: crossing.along, curve });
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
  distance(crossing.point, before.point) < COINCIDENCE;

import { flatMapped } from '../flat-mapped.ts';
import { roomForNumbers } from '../room-for-numbers.ts';
import { controlBox, turningParameters } from './bounds.ts';
import type { Curve, Outline } from './curve.ts';
import { curveCrossings } from './curve-crossings.ts';
import { directionAt, pointAt } from './evaluate.ts';
import { levelPasses, metByRay } from './in-polygon.ts';
import { crossings, levelAt } from './intersect.ts';
import { runOneWay } from './one-way.ts';
import { outlineCurves } from './outline.ts';
import { distance, type Point } from './point.ts';
import { part } from './split.ts';
import { COINCIDENCE, UNIT_ROUNDING } from './tolerance.ts';
import { cross, dot } from './vector.ts';

/**
 * Whether a point lies inside an outline, by counting how often a level ray to its right crosses the curves
 * themselves (M. Shimrat, "Algorithm 112", 1962). Points on the outline, within rounding, may count either way.
 */
export function contains(outline: Outline, p: Point): boolean {
  let inside = false;
  for (const curve of outlineCurves(outline)) {
    if (rightmost(curve) < p.x) continue;
    for (const piece of monotone(curve, ['y'])) {
      if (!levelPasses(piece.from, piece.to, p)) continue;
      if (passesRightOf(piece, p)) inside = !inside;
    }
  }
  return inside;
}

/** Whether a piece that runs one way past the level of a point passes on its right: of a line that is told exactly. */
function passesRightOf(piece: Curve, p: Point): boolean {
  const { from, to } = piece;
  if (piece.kind === 'line') return metByRay(from, to, p);
  return (crossings(piece, levelAt(p.y))[0]?.point.x ?? to.x) > p.x;
}

/**
 * Whether an outline never meets itself, apart from each curve meeting the next at their common end. An outline that
 * turns straight back on itself is not simple.
 */
export function isSimple(outline: Outline): boolean {
  const pieces: Curve[] = [];
  for (const edge of outline)
    for (const curve of edge.curves)
      if (curve.kind === 'cubic') pieces.push(...monotone(curve, bothAxes));
      else if (distance(curve.from, curve.to) > 0) pieces.push(curve);
  const last = pieces.length - 1;
  const boxes = roomForNumbers(BOX * pieces.length);
  for (let i = 0; i <= last; i++) writeBox(pieces[i] as Curve, boxes, BOX * i);
  for (let i = 0; i <= last; i++) {
    const a = pieces[i] as Curve;
    if (turnsBack(a, pieces[i < last ? i + 1 : 0] as Curve)) return false;
    for (let j = i + 1; j <= last; j++) {
      if (!boxesMeet(boxes, BOX * i, BOX * j)) continue;
      const b = pieces[j] as Curve;
      const follows = j === i + 1;
      const closes = i === 0 && j === last;
      if ((follows && runOneWay(a, b)) || (closes && runOneWay(b, a))) continue;
      const isJoint = (point: Point): boolean =>
        (follows && distance(point, a.to) <= 10 * COINCIDENCE) ||
        (closes && distance(point, a.from) <= 10 * COINCIDENCE);
      const meets = curveCrossings(a, b).some(({ point }) => !isJoint(point));
      if (meets) return false;
    }
  }
  return true;
}

/** Numbers of the upright rectangle about a curve's control points: left, right, top, bottom. */
const BOX = 4;

function writeBox(curve: Curve, into: number[], at: number): void {
  const { left, right, top, bottom } = controlBox(curve);
  into[at] = left;
  into[at + 1] = right;
  into[at + 2] = top;
  into[at + 3] = bottom;
}

const boxesMeet = (boxes: readonly number[], a: number, b: number): boolean =>
  (boxes[a] as number) <= (boxes[b + 1] as number) &&
  (boxes[b] as number) <= (boxes[a + 1] as number) &&
  (boxes[a + 2] as number) <= (boxes[b + 3] as number) &&
  (boxes[b + 2] as number) <= (boxes[a + 3] as number);

function turnsBack(a: Curve, b: Curve): boolean {
  const into = directionAt(a, 'end');
  const outOf = directionAt(b, 'start');
  return dot(into, outOf) < 0 && Math.abs(cross(into, outOf)) < UNIT_ROUNDING;
}

const bothAxes = ['x', 'y'] as const;

/**
 * A curve cut where it turns back along an axis: the pieces cannot cross themselves. Where it turns back by less than
 * a coincidence, as rounding makes a handle that should stand upright lean out, it is not cut: its slivers would seem
 * to let it meet the curves beside it.
 */
function monotone(curve: Curve, axes: readonly ('x' | 'y')[]): readonly Curve[] {
  if (curve.kind === 'line') return [curve];
  const { from, handle1, handle2, to } = curve;
  if (goesOneWay(from.x, handle1.x, handle2.x, to.x) && goesOneWay(from.y, handle1.y, handle2.y, to.y))
    return [curve];
  const turns = flatMapped(axes, (axis) => turningParameters(from, handle1, handle2, to, axis))
    .filter((t) => t > 0 && t < 1)
    .sort((a, b) => a - b);
  if (turns.length === 0) return [curve];
  const same = (s: number, t: number): boolean =>
    distance(pointAt(curve, s), pointAt(curve, t)) <= COINCIDENCE;
  const stops = [0];
  for (const t of turns) if (!same(stops.at(-1) ?? 0, t)) stops.push(t);
  while (stops.length > 1 && same(stops.at(-1) ?? 0, 1)) stops.pop();
  return stops.map((start, i) => part(curve, start, stops[i + 1] ?? 1));
}

/** Whether the control points of a cubic follow each other along an axis, as those of most do: then it turns back nowhere. */
const goesOneWay = (from: number, handle1: number, handle2: number, to: number): boolean =>
  (from < handle1 && handle1 < handle2 && handle2 < to) ||
  (from > handle1 && handle1 > handle2 && handle2 > to);

const rightmost = (curve: Curve): number =>
  curve.kind === 'line'
    ? Math.max(curve.from.x, curve.to.x)
    : Math.max(curve.from.x, curve.handle1.x, curve.handle2.x, curve.to.x);

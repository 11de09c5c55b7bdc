import type { Curve } from './curve.ts';
import { derivativeAt, headingAt, pointAt } from './evaluate.ts';
import { nearestOnEdge } from './nearest.ts';
import { between, distance, type Point, vectorBetween } from './point.ts';
import { angleOf, dot } from './vector.ts';

/** How far a polyline strays from a chain of curves: in place, mm, and in direction, radians. */
export interface Stray {
  readonly apart: number;
  readonly turned: number;
}

/** A place on a chain: which curve, and the parameter on it. */
interface StrayPlace {
  readonly curve: number;
  readonly t: number;
}

/** A search for a foot that no longer moves by this share of its curve has found it. */
const STILL = 1e-9;

/** Near enough to be the place that is looked for, mm. */
const NEAR = 0.05;

/** What differs by less is equally near, mm. */
const SAME = 1e-7;

/** Steps towards a foot; two or three do, where a polyline follows its curve at all. */
const MOST_STEPS = 12;

/**
 * How far a polyline strays from the chain of curves that it was drawn for, walked along it from its start: its corners and the middles
 * of its straights from the curves, the joints of the curves from its straights, its ends from theirs; and the direction of each
 * straight from all that the curve has over it, so that it runs as the curve does, and as far, at every corner. A place is looked
 * for from the one before: where a polyline runs elsewhere what is told is too large at most, never too small.
 */
export function strayOf(points: readonly Point[], curves: readonly Curve[]): Stray {
  const [first, start, end] = [points[0], curves[0]?.from, curves.at(-1)?.to];
  if (!first || !start || !end) return { apart: Number.POSITIVE_INFINITY, turned: 0 };
  let apart = Math.max(distance(first, start), distance(points.at(-1) ?? first, end));
  let turned = 0;
  let place: StrayPlace = { curve: 0, t: 0 };
  for (const [i, to] of points.slice(1).entries()) {
    const from = points[i] ?? to;
    const middle = between(from, to, 0.5);
    const at = footFrom(curves, place, middle);
    const then = footFrom(curves, at, to);
    apart = Math.max(apart, offAt(curves, at, middle), offAt(curves, then, to));
    for (let joint = place.curve; joint < then.curve; joint++)
      apart = Math.max(apart, fromStraight(curves[joint]?.to ?? to, from, to));
    const curve = curves[at.curve];
    if (curve && distance(from, to) > 0) {
      const heading = angleOf(vectorBetween(from, to));
      const begins = place.curve === at.curve ? place.t : 0;
      const ends = then.curve === at.curve ? then.t : 1;
      turned = Math.max(turned, offRange(heading, curve, [begins, at.t, ends]));
    }
    place = then;
  }
  return { apart, turned };
}

/**
 * The foot of a point on a chain, not before a place: on the first curve from there on that it lies `NEAR`, or on one after it that
 * it lies nearer to, as at a corner; where it lies near none, on the nearest.
 */
function footFrom(curves: readonly Curve[], { curve: from, t: after }: StrayPlace, p: Point): StrayPlace {
  let best: StrayPlace = { curve: from, t: after };
  let least = Number.POSITIVE_INFINITY;
  for (let i = from; i < curves.length; i++) {
    const curve = curves[i];
    if (!curve) break;
    const t = footOn(curve, i === from ? after : 0, p);
    const off = distance(pointAt(curve, t), p);
    if (off < least - SAME) [best, least] = [{ curve: i, t }, off];
    else if (least <= NEAR) break;
  }
  return best;
}

/** The parameter of the foot of a point on a curve by Gauss and Newton's method, kept between `after` and 1. */
function footOn(curve: Curve, after: number, p: Point): number {
  let t = after;
  for (let step = 0; step < MOST_STEPS; step++) {
    const along = derivativeAt(curve, t);
    const speed = dot(along, along);
    // Where a handle lies on its end the curve stands still: a little further on it moves.
    const next = speed > 0 ? t + dot(vectorBetween(pointAt(curve, t), p), along) / speed : t + 0.01;
    const kept = Math.min(1, Math.max(after, next));
    if (Math.abs(kept - t) <= STILL) return kept;
    t = kept;
  }
  return t;
}

const offAt = (curves: readonly Curve[], { curve: index, t }: StrayPlace, p: Point): number => {
  const curve = curves[index];
  return curve ? distance(pointAt(curve, t), p) : Number.POSITIVE_INFINITY;
};

function fromStraight(p: Point, from: Point, to: Point): number {
  return nearestOnEdge({ curves: [{ kind: 'line', from, to }] }, p).distance;
}

/** How far a direction lies outside all that a curve has at some parameters and between them; radians. */
function offRange(heading: number, curve: Curve, at: readonly number[]): number {
  const turns = at.map((t) => turnTo(heading, angleOf(headingAt(curve, t))));
  return Math.max(0, Math.min(...turns), -Math.max(...turns));
}

/** The turn from one direction to another, from -pi to pi. */
function turnTo(from: number, to: number): number {
  const turn = to - from;
  return turn - 2 * Math.PI * Math.round(turn / (2 * Math.PI));
}

import type { Cubic, Curve, Edge } from '../geometry/curve.ts';
import {
  edgeEnd,
  edgeLength,
  edgeStart,
  endDirection,
  splitEdgeAt,
  startDirection,
} from '../geometry/edge.ts';
import { inflectionCount } from '../geometry/inflections.ts';
import { moved, vectorBetween } from '../geometry/point.ts';
import { RELATION, RELATION_ANGLE, WALK } from '../geometry/tolerance.ts';
import { cross, dot, scaled, type Vector } from '../geometry/vector.ts';
import { hangTogether, LET_GO } from './leading-places.ts';
import { ofLength } from './of-length.ts';

/** Handles that reach so far to where the tangents meet draw a circle, for small angles. */
const CIRCLE = 2 / 3;

/** A kink is rounded over no less than this on either side, mm: a tighter bend would still look like a kink. */
const TIGHTEST = 10;

/**
 * What the rounding that loses least still loses of the length by which the sides of a kink exceed the chord: both
 * handles reach the kink, and half the squared slope, integrated along the chord, comes out so (to first order).
 */
const LOST = (3 * Math.PI) / 4 - 2;

/**
 * Two stretches that meet in one kink, as at a single hinge, drawn in one: each is kept until near the kink, and one
 * cubic rounds it, as near to `length` (mm) as it can come without waving. Nothing when the stretches do not hang
 * together in one kink, or when rounding it so would wave more than wished.
 *
 * Between straight stretches the length cannot be had: a line that does not wave lies inside the triangle of the
 * kink, and so is shorter than its two sides (of two convex curves with the same ends the inner one is shorter,
 * Archimedes, "On the Sphere and Cylinder"). Rounded over l on either side it loses at most
 * (3 pi / 4 - 2) 2 l (1 - cos(kink / 2)); l is 30 mm, or as much less as keeps the loss within 0.05 mm, but 10 mm at
 * least.
 */
export function roundedKink(
  stretches: readonly Edge[],
  length: number,
  inflections: number,
): readonly Curve[] | undefined {
  const [one, other, more] = stretches;
  if (!one || !other || more || !hangTogether(stretches)) return undefined;
  const over = roundedOver(endDirection(one), startDirection(other));
  const [until, from] = [edgeLength(one), edgeLength(other)];
  const [before] = splitEdgeAt(one, until - Math.min(over, until / 2), [one.name, one.name]);
  const [, after] = splitEdgeAt(other, Math.min(over, from / 2), [other.name, other.name]);
  const across = rounding(before, after);
  if (!across) return undefined;
  const kept = edgeLength(before, RELATION) + edgeLength(after, RELATION);
  const curves = [...before.curves, ...ofLength([across], length - kept, 0), ...after.curves];
  return inflectionCount({ name: '', curves }) <= inflections ? curves : undefined;
}

function roundedOver(into: Vector, outOf: Vector): number {
  const kink = Math.atan2(Math.abs(cross(into, outOf)), dot(into, outOf));
  const within = WALK / (2 * LOST * (1 - Math.cos(kink / 2)));
  return Math.max(TIGHTEST, Math.min(LET_GO, within));
}

/** The rounding of the kink between two edges; nothing where they run straight on or away from each other. */
function rounding(before: Edge, after: Edge): Cubic | undefined {
  const [from, to] = [edgeEnd(before), edgeStart(after)];
  const [out, into] = [endDirection(before), startDirection(after)];
  const turn = cross(out, into);
  if (Math.abs(turn) < RELATION_ANGLE) return undefined;
  const chord = vectorBetween(from, to);
  const [toMeeting, fromMeeting] = [cross(chord, into) / turn, cross(out, chord) / turn];
  if (!(toMeeting > 0 && fromMeeting > 0)) return undefined;
  const handle1 = moved(from, scaled(out, CIRCLE * toMeeting));
  return { kind: 'cubic', from, handle1, handle2: moved(to, scaled(into, -CIRCLE * fromMeeting)), to };
}

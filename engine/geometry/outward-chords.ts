import type { Cubic, Curve } from './curve.ts';
import { directionAt, pointAt } from './evaluate.ts';
import { bendEnds } from './inflections.ts';
import { distance, moved, type Point, vectorBetween } from './point.ts';
import { part } from './split.ts';
import { UNIT_ROUNDING } from './tolerance.ts';
import { cross, dot, magnitude, scaled } from './vector.ts';

/** A cubic is halved so often at the most; its error falls to a quarter each time. */
const MOST_HALVINGS = 20;

/**
 * The corners of a polygon about a closed, clockwise chain of curves that nowhere cuts into what the chain surrounds, and
 * lies outside it by no more than `flatness` (mm): chords where the chain is hollow, tangents where it is round. The ends
 * of all curves are corners of it. The first corner is not repeated.
 */
export const outwardPoints = (curves: readonly Curve[], flatness: number): readonly Point[] =>
  curves.flatMap((curve) =>
    curve.kind === 'line'
      ? [curve.from]
      : bendEnds(curve)
          .slice(1)
          .flatMap((end, i, ends) => stretchPoints(part(curve, ends[i - 1] ?? 0, end), flatness, 0)),
  );

/** The corners from the start of a cubic that bends one way, its end left out. */
function stretchPoints(curve: Cubic, flatness: number, depth: number): readonly Point[] {
  const { from, to } = curve;
  const chord = vectorBetween(from, to);
  const middle = pointAt(curve, 0.5);
  const isRound = cross(chord, vectorBetween(from, middle)) < 0;
  const apex = tangentsMeet(curve);
  if (depth < MOST_HALVINGS && (!apex || distance(apex, middle) > flatness)) {
    return [
      ...stretchPoints(part(curve, 0, 0.5), flatness, depth + 1),
      ...stretchPoints(part(curve, 0.5, 1), flatness, depth + 1),
    ];
  }
  return apex && isRound ? [from, apex] : [from];
}

/**
 * Where the tangents at both ends of a curve that bends one way meet, which no point of it is farther from its chord than;
 * the middle of the chord where it is straight. Undefined where it turns by a right angle or more.
 */
function tangentsMeet(curve: Cubic): Point | undefined {
  const { from, to } = curve;
  const chord = vectorBetween(from, to);
  const length = magnitude(chord);
  if (length === 0) return from;
  const [out, into] = [directionAt(curve, 'start'), directionAt(curve, 'end')];
  if (dot(out, into) <= 0) return undefined;
  const turn = cross(out, into);
  if (Math.abs(turn) < UNIT_ROUNDING) return pointAt({ kind: 'line', from, to }, 0.5);
  const along = cross(chord, into) / turn;
  if (along < 0 || along > length) return pointAt({ kind: 'line', from, to }, 0.5);
  return moved(from, scaled(out, along));
}

import { arc } from './arc.ts';
import type { Curve } from './curve.ts';
import { directionAt } from './evaluate.ts';
import { distance, moved, type Point } from './point.ts';
import { ROUNDING, SMOOTH_ANGLE } from './tolerance.ts';
import { cross, dot, outward, plus, scaled, type Vector } from './vector.ts';

/** How a parallel goes round a corner that opens it: along a circle, or on to where the two sides would meet. */
export type JoinStyle = 'round' | 'mitre';

/** What stands between the parallels of two curves that meet. */
export type CornerJoin =
  /** They run on into each other. */
  | { readonly kind: 'smooth' }
  /** They cross, and have to be cut. */
  | { readonly kind: 'crossing' }
  /** There is a gap, filled by these curves. */
  | { readonly kind: 'filled'; readonly curves: readonly Curve[]; readonly deviation: number };

/** A mitre longer than this many times the distance is made round instead: its tip would run far off the piece. */
const LONGEST_MITRE = 4;

/**
 * The join between the parallels, at `aside` (mm, outward positive), of two curves that meet in a point.
 * A round join keeps `tolerance` (mm); a mitre is exact.
 */
export function cornerJoin(
  before: Curve,
  after: Curve,
  aside: number,
  tolerance: number,
  join: JoinStyle,
): CornerJoin {
  const into = directionAt(before, 'end');
  const outOf = directionAt(after, 'start');
  const turn = Math.atan2(cross(into, outOf), dot(into, outOf));
  if (Math.abs(turn) <= SMOOTH_ANGLE) return { kind: 'smooth' };
  if (turn > 0 !== aside > 0) return { kind: 'crossing' };
  const corner = after.from;
  const spoke = scaled(outward(into), aside);
  if (join === 'mitre' && Math.abs(1 / Math.cos(turn / 2)) <= LONGEST_MITRE)
    return { kind: 'filled', curves: mitre(corner, spoke, scaled(outward(outOf), aside)), deviation: 0 };
  return { kind: 'filled', ...arc(corner, spoke, turn, tolerance) };
}

/** The two sides of a mitre: the tip lies on the bisector, at d / cos(half the turn) from the corner. */
function mitre(corner: Point, spokeIn: Vector, spokeOut: Vector): readonly Curve[] {
  const sum = plus(spokeIn, spokeOut);
  const tip = moved(corner, scaled(sum, (2 * dot(spokeIn, spokeIn)) / dot(sum, sum)));
  return [
    { kind: 'line', from: moved(corner, spokeIn), to: tip },
    { kind: 'line', from: tip, to: moved(corner, spokeOut) },
  ];
}

/** One line instead of two where a line runs straight on into another; undefined otherwise. */
export function asOneLine(before: Curve, after: Curve): Curve | undefined {
  if (before.kind !== 'line' || after.kind !== 'line') return undefined;
  const into = directionAt(before, 'end');
  const outOf = directionAt(after, 'start');
  if (dot(into, outOf) <= 0) return undefined;
  const off = Math.abs(cross(into, outOf)) * Math.min(length(before), length(after));
  return off <= 100 * ROUNDING ? { kind: 'line', from: before.from, to: after.to } : undefined;
}

const length = (curve: Curve): number => distance(curve.from, curve.to);

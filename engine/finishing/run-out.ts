import { evenPoints } from '../geometry/chords.ts';
import type { Curve } from '../geometry/curve.ts';
import { edgeLength, edgeOf, edgeStart, splitEdgeAt, startDirection } from '../geometry/edge.ts';
import { distance, type Point, point, vectorBetween } from '../geometry/point.ts';
import { COINCIDENCE } from '../geometry/tolerance.ts';
import { cross, dot } from '../geometry/vector.ts';

/** An end that was lengthened for its neighbour's sake runs out into its parallel over so many times what was added. */
const RUNS_OUT = 8;

/** More than this of its allowance is no unevenness of a curve but another allowance beside it: that is stepped. */
export const MOST_RUN_OUT = 1 / 4;

/** The line in which an end runs out is no longer than this many allowances. */
export const RUN_OUT_REACH = MOST_RUN_OUT * (RUNS_OUT + 1);

/** A smaller step is not seen, mm. */
const UNSEEN = 0.05;

/** Places of the parallel looked at on each of its curves. */
const PLACES = 8;

/**
 * What is left of a parallel that begins at `natural`, where its end was lengthened to `end`: the stretch of it that a
 * straight line from `end` replaces is taken away, so that the cutting line has no step. The line nowhere comes nearer to
 * the seam than the parallel. Undefined where that cannot be, or where there is no more than a step of a twentieth of a mm.
 * Common practice, no source.
 */
export function runOut(
  end: Point,
  natural: Point,
  parallel: readonly Curve[],
  allowance: number,
): readonly Curve[] | undefined {
  const added = distance(natural, end);
  const [first] = parallel;
  if (!first || !(added > UNSEEN && added <= MOST_RUN_OUT * allowance)) return undefined;
  const gap = vectorBetween(natural, first.from);
  const whole = edgeOf('parallel', [
    ...(distance(natural, first.from) > COINCIDENCE
      ? [{ kind: 'line', from: natural, to: first.from } as const]
      : []),
    ...parallel,
  ]);
  // A parallel with a tail that runs back begins elsewhere.
  if (dot(gap, startDirection(edgeOf('parallel', parallel))) < -COINCIDENCE) return undefined;
  if (!(edgeLength(whole) > RUNS_OUT * added + COINCIDENCE)) return undefined;
  const [replaced, left] = splitEdgeAt(whole, RUNS_OUT * added, ['replaced', 'left']);
  const line = vectorBetween(end, edgeStart(left));
  const outside = Math.sign(cross(startDirection(whole), vectorBetween(natural, end)));
  const inside = (x: number, y: number): boolean =>
    cross(line, vectorBetween(end, point(x, y))) * outside <= COINCIDENCE * distance(end, edgeStart(left));
  for (const curve of replaced.curves) {
    const places = evenPoints(curve, PLACES);
    for (let i = 0; i < places.length; i += 2)
      if (!inside(places[i] as number, places[i + 1] as number)) return undefined;
  }
  return left.curves;
}

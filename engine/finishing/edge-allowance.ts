import type { Curve } from '../geometry/curve.ts';
import { headingAt } from '../geometry/evaluate.ts';
import { crossings } from '../geometry/intersect.ts';
import { nearestOnEdge } from '../geometry/nearest.ts';
import type { Point } from '../geometry/point.ts';
import { split } from '../geometry/split.ts';
import { COINCIDENCE } from '../geometry/tolerance.ts';
import { dot, type Vector } from '../geometry/vector.ts';

/** The allowance of an edge of a piece, before its corners are turned. */
export interface EdgeAllowance {
  /** mm */
  readonly width: number;
  /** The lower runs through, the higher crosses it; `FOLD` is lower than everything. */
  readonly rank: number;
  /** The stitching line of the edge. */
  readonly curves: readonly Curve[];
  /** The whole parallel of the edge at its allowance, with the tail that runs back where the edge is hollow. */
  readonly parallel: readonly Curve[];
  /** How far the parallel strays from the true one, mm. */
  readonly deviation: number;
}

/** What is left of a parallel that is cut off at a ray, and how far along the ray that happens, mm. */
export interface Trimmed {
  readonly rest: readonly Curve[];
  readonly along: number;
}

/** What is left of a parallel after it first crosses the ray from `at`, at a place and with a heading that count. */
export function trimmedAt(
  parallel: readonly Curve[],
  at: Point,
  ray: Vector,
  counts: (place: Point, heading: Vector) => boolean = () => true,
): Trimmed | undefined {
  for (const [i, curve] of parallel.entries()) {
    const crossing = crossings(curve, { through: at, heading: ray }).find(
      ({ along, point, t }) => along >= -COINCIDENCE && counts(point, headingAt(curve, t)),
    );
    if (!crossing) continue;
    const { t, along } = crossing;
    const rest = t <= 0 ? [curve] : t >= 1 ? [] : [split(curve, t)[1]];
    return { rest: [...rest, ...parallel.slice(i + 1)], along };
  }
  return undefined;
}

/**
 * What is left of the parallel of an edge, both walked away from their corner `at`, where it comes in over the
 * prolongation of the seam that ends there: `through` heads beyond the corner. The tail of a hollow, which runs back
 * or is nearer to the edge than the allowance, does not count. A parallel that first goes out over the prolongation
 * does so far from the corner.
 */
export function trimmedAcross(
  edge: EdgeAllowance,
  at: Point,
  through: { readonly along: Vector; readonly outward: Vector },
): Trimmed | undefined {
  const away = edge.width - edge.deviation - COINCIDENCE;
  let comesIn = false;
  const trimmed = trimmedAt(edge.parallel, at, through.along, (place, heading) => {
    const foot = nearestOnEdge(edge, place);
    const source = edge.curves[foot.curve];
    if (!source || foot.distance < away || dot(heading, headingAt(source, foot.t)) < 0) return false;
    comesIn = dot(heading, through.outward) <= 0;
    return true;
  });
  return comesIn ? trimmed : undefined;
}

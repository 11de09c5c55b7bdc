import { flatMapped } from '../flat-mapped.ts';
import type { Cubic, Curve, Edge } from './curve.ts';
import { curvatureAt, directionAt, pointAt } from './evaluate.ts';
import { distance, type Point, vectorBetween } from './point.ts';
import { rootsBetween01 } from './roots.ts';
import { part } from './split.ts';
import { STRAIGHTNESS } from './tolerance.ts';
import { cross, dot, magnitude, unit } from './vector.ts';

/**
 * The parameters at which a curve's curvature changes sign, exactly: x'y" - y'x" of a cubic is a quadratic.
 * Changes into or out of a part that is straight within `straightness` (mm) do not count.
 */
export function inflections(curve: Curve, straightness: number = STRAIGHTNESS): number[] {
  const stretches = turningStretches(curve, straightness);
  return flatMapped(stretches, (stretch, i) => {
    const before = stretches[i - 1];
    return before && before.sign !== stretch.sign ? [stretch.start] : [];
  });
}

/** How often the curvature changes sign along a whole edge, straight parts apart and joints included. */
export function inflectionCount(edge: Edge, straightness: number = STRAIGHTNESS): number {
  let count = 0;
  let before: 1 | -1 | undefined;
  for (const curve of edge.curves)
    for (const { sign } of turningStretches(curve, straightness)) {
      if (before !== undefined && sign !== before) count++;
      before = sign;
    }
  return count;
}

/** How an edge runs on at the joint between two of its curves. */
export interface EdgeJoint {
  readonly point: Point;
  /** Angle turned at the joint (radians, clockwise positive); 0 is tangent-continuous. */
  readonly angle: number;
  /** Signed curvature after the joint less that before it (1/mm); 0 is curvature-continuous. */
  readonly curvatureJump: number;
}

/** All joints inside an edge, in order. */
export function joints(edge: Edge): EdgeJoint[] {
  return edge.curves.slice(1).map((after, i) => {
    const before = edge.curves[i] ?? after;
    const into = directionAt(before, 'end');
    const outOf = directionAt(after, 'start');
    return {
      point: after.from,
      angle: Math.atan2(cross(into, outOf), dot(into, outOf)),
      curvatureJump: curvatureAt(after, 0) - curvatureAt(before, 1),
    };
  });
}

interface TurningStretch {
  readonly start: number;
  readonly sign: 1 | -1;
}

/** The stretches of a curve between the roots of its curvature that are not straight, with their signs. */
function turningStretches(curve: Curve, straightness: number): TurningStretch[] {
  if (curve.kind === 'line' || isStraight(curve, straightness)) return [];
  const turns = turning(curve);
  // Most curves bend one way only, which their control polygon tells.
  if (turns.every((turn) => turn > 0)) return [{ start: 0, sign: 1 }];
  if (turns.every((turn) => turn < 0)) return [{ start: 0, sign: -1 }];
  const bends = bendEnds(curve);
  return flatMapped(bends.slice(1), (end, i) => {
    const start = bends[i] ?? 0;
    if (bends.length > 2 && isStraight(part(curve, start, end), straightness)) return [];
    return [{ start, sign: curvatureAt(curve, (start + end) / 2) > 0 ? 1 : -1 }] as const;
  });
}

/** The ends of the stretches of a cubic along which it bends one way only, from 0 to 1: the roots of its curvature between. */
export const bendEnds = (curve: Cubic): readonly number[] => [
  0,
  ...rootsBetween01(turning(curve)).filter((t) => t > 0 && t < 1),
  1,
];

/**
 * Bernstein coefficients of (x'y" - y'x") / 18 of a cubic. The cubic terms cancel, so it is a quadratic in the
 * cross products of the sides of the control polygon.
 */
function turning({ from, handle1, handle2, to }: Cubic): number[] {
  const a = vectorBetween(from, handle1);
  const b = vectorBetween(handle1, handle2);
  const c = vectorBetween(handle2, to);
  return [cross(a, b), cross(a, c) / 2, cross(b, c)];
}

/** Whether a curve stays within `tolerance` (mm) of the straight line between its ends. */
export function isStraight(curve: Curve, tolerance: number = STRAIGHTNESS): boolean {
  if (curve.kind === 'line') return true;
  const along = vectorBetween(curve.from, curve.to);
  if (magnitude(along) <= tolerance)
    return distance(curve.from, curve.handle1) <= tolerance && distance(curve.to, curve.handle2) <= tolerance;
  const heading = unit(along);
  const [near, far] = [off(curve.handle1), off(curve.handle2)];
  if (Math.abs(near) <= tolerance && Math.abs(far) <= tolerance) return true;
  // Half way it lies so far off: most curves are told by that.
  if ((3 / 8) * Math.abs(near + far) > tolerance) return false;
  const bulge = [0, near, far, 0];
  const slopes = bulge.slice(1).map((b, i) => b - (bulge[i] ?? 0));
  return rootsBetween01(slopes).every((t) => Math.abs(off(pointAt(curve, t))) <= tolerance);

  function off(p: Point): number {
    return cross(heading, vectorBetween(curve.from, p));
  }
}

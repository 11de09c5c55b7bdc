import type { Curve, Edge } from './curve.ts';
import { moved, type Point, vectorBetween } from './point.ts';
import { cross, unit, type Vector } from './vector.ts';

/** A similarity of the plane: where it puts each point. Curves follow their control points exactly. */
export type Transform = (p: Point) => Point;

/** Moves by a vector (mm). */
export const movedBy =
  (v: Vector): Transform =>
  (p) =>
    moved(p, v);

/** Turns about a pivot by an angle (radians, clockwise as drawn). */
export function turnedBy(pivot: Point, angle: number): Transform {
  const cosine = Math.cos(angle);
  const sine = Math.sin(angle);
  return ({ x, y }) => {
    const dx = x - pivot.x;
    const dy = y - pivot.y;
    return { x: pivot.x + dx * cosine - dy * sine, y: pivot.y + dx * sine + dy * cosine };
  };
}

/**
 * Mirrors in the straight line through two different points. A mirrored outline runs anticlockwise: hand it to
 * `reversedOutline` to make it run clockwise again.
 */
export function mirroredIn(a: Point, b: Point): Transform {
  const along = unit(vectorBetween(a, b));
  return (p) => {
    const away = 2 * cross(along, vectorBetween(a, p));
    return { x: p.x + away * along.y, y: p.y - away * along.x };
  };
}

/** Scales from a fixed point by a factor. */
export const scaledFrom =
  (centre: Point, factor: number): Transform =>
  (p) => ({ x: centre.x + (p.x - centre.x) * factor, y: centre.y + (p.y - centre.y) * factor });

/** A curve with every control point put through a transform. */
export function transformedCurve<C extends Curve>(curve: C, to: Transform): C;
export function transformedCurve(curve: Curve, to: Transform): Curve {
  if (curve.kind === 'line') return { kind: 'line', from: to(curve.from), to: to(curve.to) };
  return {
    kind: 'cubic',
    from: to(curve.from),
    handle1: to(curve.handle1),
    handle2: to(curve.handle2),
    to: to(curve.to),
  };
}

/** An edge put through a transform; everything else it carries is kept. */
export const transformedEdge = <E extends Edge>(edge: E, to: Transform): E => ({
  ...edge,
  curves: edge.curves.map((curve) => transformedCurve(curve, to)),
});

import type { Vector } from './vector.ts';

/**
 * A place on the cloth, in millimetres. x runs towards the wearer's side, y runs down the body.
 *
 * A point is not a vector: the difference of two points is a vector, the sum of two points is nothing,
 * and the compiler refuses both mix-ups.
 */
export interface Point {
  readonly x: number;
  readonly y: number;
  readonly is?: 'point';
}

/** The point at x, y (mm). */
export const point = (x: number, y: number): Point => ({ x, y });

/** The vector that leads from `a` to `b` (mm). */
export const vectorBetween = (a: Point, b: Point): Vector => ({ x: b.x - a.x, y: b.y - a.y });

/** `p` moved by `v`. */
export const moved = (p: Point, v: Vector): Point => ({ x: p.x + v.x, y: p.y + v.y });

/** The point a share `t` of the way from `a` (t = 0) to `b` (t = 1). */
export const between = (a: Point, b: Point, t: number): Point => ({
  x: a.x + (b.x - a.x) * t,
  y: a.y + (b.y - a.y) * t,
});

/** Straight distance from `a` to `b` (mm). */
export const distance = (a: Point, b: Point): number =>
  Math.sqrt((b.x - a.x) * (b.x - a.x) + (b.y - a.y) * (b.y - a.y));

/** `p` turned about `pivot` by `angle` (radians, clockwise as drawn, since y runs down). */
export function turnedAbout(p: Point, pivot: Point, angle: number): Point {
  const c = Math.cos(angle);
  const s = Math.sin(angle);
  const dx = p.x - pivot.x;
  const dy = p.y - pivot.y;
  return { x: pivot.x + dx * c - dy * s, y: pivot.y + dx * s + dy * c };
}

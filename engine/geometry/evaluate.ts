import type { Cubic, Curve } from './curve.ts';
import { between, distance, type Point, vectorBetween } from './point.ts';
import { COINCIDENCE } from './tolerance.ts';
import { cross, dot, magnitude, unit, type Vector } from './vector.ts';

/** The point of a curve at parameter t in [0, 1]. */
export function pointAt(curve: Curve, t: number): Point {
  if (curve.kind === 'line') return between(curve.from, curve.to, t);
  const { from, handle1, handle2, to } = curve;
  const u = 1 - t;
  const a = u * u * u;
  const b = 3 * u * u * t;
  const c = 3 * u * t * t;
  const d = t * t * t;
  return {
    x: a * from.x + b * handle1.x + c * handle2.x + d * to.x,
    y: a * from.y + b * handle1.y + c * handle2.y + d * to.y,
  };
}

/** The first derivative by t (mm per unit of t). */
export function derivativeAt(curve: Curve, t: number): Vector {
  if (curve.kind === 'line') return vectorBetween(curve.from, curve.to);
  const { from, handle1, handle2, to } = curve;
  const u = 1 - t;
  const a = 3 * u * u;
  const b = 6 * u * t;
  const c = 3 * t * t;
  return {
    x: a * (handle1.x - from.x) + b * (handle2.x - handle1.x) + c * (to.x - handle2.x),
    y: a * (handle1.y - from.y) + b * (handle2.y - handle1.y) + c * (to.y - handle2.y),
  };
}

/** The second derivative by t. */
export function secondDerivativeAt(curve: Curve, t: number): Vector {
  if (curve.kind === 'line') return { x: 0, y: 0 };
  const { from, handle1, handle2, to } = curve;
  const a = 6 * (1 - t);
  const b = 6 * t;
  return {
    x: a * (handle2.x - 2 * handle1.x + from.x) + b * (to.x - 2 * handle2.x + handle1.x),
    y: a * (handle2.y - 2 * handle1.y + from.y) + b * (to.y - 2 * handle2.y + handle1.y),
  };
}

/**
 * Signed curvature at t (1/mm), positive where the curve turns clockwise as drawn: (x'y" - y'x") / |B'|^3.
 * Infinite, with its sign, at a cusp and at the end of a zero-length handle; 0 where a line has no length.
 */
export function curvatureAt(curve: Curve, t: number): number {
  if (curve.kind === 'line') return 0;
  const first = derivativeAt(curve, t);
  const turning = cross(first, secondDerivativeAt(curve, t));
  const speed = magnitude(first);
  return turning === 0 ? 0 : turning / (speed * speed * speed);
}

/** The derivative of the signed curvature by t (1/mm); not finite where the curvature is not, 0 along a line. */
export function curvatureSlopeAt(curve: Curve, t: number): number {
  if (curve.kind === 'line') return 0;
  const first = derivativeAt(curve, t);
  const second = secondDerivativeAt(curve, t);
  const square = dot(first, first);
  const turning =
    cross(first, thirdDerivative(curve)) - (3 * cross(first, second) * dot(first, second)) / square;
  return turning / (square * Math.sqrt(square));
}

function thirdDerivative({ from, handle1, handle2, to }: Cubic): Vector {
  return {
    x: 6 * (to.x - from.x + 3 * (handle1.x - handle2.x)),
    y: 6 * (to.y - from.y + 3 * (handle1.y - handle2.y)),
  };
}

/**
 * The unit heading of a curve as it leaves its start or arrives at its end. Where a handle has no length the next
 * control point gives the direction, which is the limit of the tangent. Zero for a curve without extent.
 */
export function directionAt(curve: Curve, end: 'start' | 'end'): Vector {
  if (curve.kind === 'line') return headed(curve.from, curve.to, 1);
  const { from, handle1, handle2, to } = curve;
  return end === 'start'
    ? firstDirection(from, handle1, handle2, to, 1)
    : firstDirection(to, handle2, handle1, from, -1);
}

/** The unit heading of a curve at t; at the ends and at points of no speed the limit from inside the curve. */
export function headingAt(curve: Curve, t: number): Vector {
  if (t <= 0) return directionAt(curve, 'start');
  if (t >= 1) return directionAt(curve, 'end');
  if (curve.kind === 'line') return headed(curve.from, curve.to, 1);
  const { from, handle1, handle2, to } = curve;
  const u = 1 - t;
  const a = 3 * u * u;
  const b = 6 * u * t;
  const c = 3 * t * t;
  const x = a * (handle1.x - from.x) + b * (handle2.x - handle1.x) + c * (to.x - handle2.x);
  const y = a * (handle1.y - from.y) + b * (handle2.y - handle1.y) + c * (to.y - handle2.y);
  if (x === 0 && y === 0) return unit(secondDerivativeAt(curve, t));
  const speed = Math.sqrt(x * x + y * y);
  return { x: x / speed, y: y / speed };
}

/** `pointAt` of a cubic as plain numbers in a list, x and y from place `at` on. */
export function writePointAt(
  { from, handle1, handle2, to }: Cubic,
  t: number,
  into: number[],
  at: number,
): void {
  const u = 1 - t;
  const a = u * u * u;
  const b = 3 * u * u * t;
  const c = 3 * u * t * t;
  const d = t * t * t;
  into[at] = a * from.x + b * handle1.x + c * handle2.x + d * to.x;
  into[at + 1] = a * from.y + b * handle1.y + c * handle2.y + d * to.y;
}

/**
 * `pointAt` and `headingAt` in one, as plain numbers in a list from place `at` on: x and y of the point, x and y of the heading. For
 * what looks at curves in thousands of places, and keeps none of them.
 */
export function writePlaceAt(curve: Curve, t: number, into: number[], at: number): void {
  if (curve.kind === 'line' || t <= 0 || t >= 1) {
    writePoint(pointAt(curve, t), into, at);
    writePoint(headingAt(curve, t), into, at + 2);
    return;
  }
  writePointAt(curve, t, into, at);
  const { from, handle1, handle2, to } = curve;
  const u = 1 - t;
  const e = 3 * u * u;
  const f = 6 * u * t;
  const g = 3 * t * t;
  const x = e * (handle1.x - from.x) + f * (handle2.x - handle1.x) + g * (to.x - handle2.x);
  const y = e * (handle1.y - from.y) + f * (handle2.y - handle1.y) + g * (to.y - handle2.y);
  const speed = Math.sqrt(x * x + y * y);
  if (speed === 0) {
    writePoint(headingAt(curve, t), into, at + 2);
    return;
  }
  into[at + 2] = x / speed;
  into[at + 3] = y / speed;
}

function writePoint({ x, y }: Point | Vector, into: number[], at: number): void {
  into[at] = x;
  into[at + 1] = y;
}

/** From the start of a curve, or, with `sense` -1, from its end back along it. */
function firstDirection(start: Point, next: Point, nextButOne: Point, end: Point, sense: 1 | -1): Vector {
  if (distance(start, next) > COINCIDENCE) return headed(start, next, sense);
  if (distance(start, nextButOne) > COINCIDENCE) return headed(start, nextButOne, sense);
  return distance(start, end) > COINCIDENCE ? headed(start, end, sense) : { x: sense * 0, y: sense * 0 };
}

/** The unit heading from one point to another, or against it; no vector is made on the way, for headings are asked by the thousand. */
function headed(from: Point, to: Point, sense: 1 | -1): Vector {
  const x = to.x - from.x;
  const y = to.y - from.y;
  const far = Math.sqrt(x * x + y * y);
  return far === 0 ? { x: sense * x, y: sense * y } : { x: sense * (x / far), y: sense * (y / far) };
}

/** A straight line as a cubic with its handles at thirds, so that t runs evenly. */
export function asCubic(curve: Curve): Cubic {
  if (curve.kind === 'cubic') return curve;
  const { from, to } = curve;
  return { kind: 'cubic', from, handle1: between(from, to, 1 / 3), handle2: between(from, to, 2 / 3), to };
}

import { flatMapped } from '../flat-mapped.ts';
import { bernsteinProduct } from './bernstein.ts';
import type { Cubic, Curve } from './curve.ts';
import { curvatureAt, writePlaceAt } from './evaluate.ts';
import { fitWritten, type WritesSample } from './fit.ts';
import { type Point, vectorBetween } from './point.ts';
import { rootsBetween01 } from './roots.ts';
import { BESIDE_END, ROUNDING } from './tolerance.ts';
import { movedBy, transformedCurve } from './transform.ts';
import { cross, dot, outward, scaled, unit, type Vector } from './vector.ts';

/** A chain of curves at a distance from another one, and how far it strays from the true parallel (mm). */
export interface Parallel {
  readonly curves: readonly Curve[];
  readonly deviation: number;
}

/**
 * The curve that runs `distance` (mm) to the left of a curve as drawn (outward of an outline; a negative distance is
 * inward), refitted with cubics to within `tolerance` (mm). The parallel of a line is a line, that of a straight
 * cubic the same cubic moved aside.
 *
 * It is the whole true parallel: where a curve bends to the side of the parallel with a radius below the distance,
 * the parallel has two cusps and runs backward between them. Curves are split there, so the fit is G1 elsewhere.
 */
export function parallelCurve(curve: Curve, distance: number, tolerance: number): Parallel {
  const pieces = parallelPieces(curve, distance, tolerance);
  // Most parallels have no cusp.
  const [only] = pieces;
  if (only && pieces.length === 1) return { curves: only.curves, deviation: only.deviation };
  return {
    curves: flatMapped(pieces, (piece) => piece.curves),
    deviation: Math.max(...pieces.map((piece) => piece.deviation)),
  };
}

/** A part of a parallel without cusps inside it. */
export interface ParallelPiece extends Parallel {
  /** False between two cusps, where the parallel runs against the curve. */
  readonly runsOn: boolean;
}

/** The parallel of a curve as `parallelCurve` makes it, in parts from cusp to cusp. */
export function parallelPieces(curve: Curve, distance: number, tolerance: number): readonly ParallelPiece[] {
  if (curve.kind === 'line' || runsStraight(curve)) {
    const aside = scaled(outward(unit(vectorBetween(curve.from, curve.to))), distance);
    const deviation = curve.kind === 'line' ? 0 : ROUNDING;
    return [{ curves: [transformedCurve(curve, movedBy(aside))], deviation, runsOn: true }];
  }
  const stops = [0, ...cusps(curve, distance), 1];
  return stops.slice(1).map((end, i) => {
    const start = stops[i] ?? 0;
    const runsOn = 1 + distance * curvatureAt(curve, (start + end) / 2) >= 0;
    const write: WritesSample = (t, into, at) => writeParallel(curve, t, distance, runsOn, into, at);
    const { curves, deviation } = fitWritten(write, start, end, tolerance);
    return { curves, deviation, runsOn };
  });
}

/**
 * Whether a cubic is straight to rounding and nowhere runs back. Where such a one stands nearly still, its headings
 * and curvatures are those of the rounding, and no parallel could be fitted to them.
 */
function runsStraight({ from, handle1, handle2, to }: Cubic): boolean {
  const x = to.x - from.x;
  const y = to.y - from.y;
  // The handles' distances from the chord, times its length: most curves are told by the first.
  const off = ROUNDING * Math.sqrt(x * x + y * y);
  if (Math.abs(x * (handle1.y - from.y) - y * (handle1.x - from.x)) > off) return false;
  if (Math.abs(x * (handle2.y - to.y) - y * (handle2.x - to.x)) > off) return false;
  const chord = unit(vectorBetween(from, to));
  // Its speed along the chord, a quadratic with these Bernstein coefficients, is positive if b > -sqrt(a c).
  const along = (p: Point, q: Point): number => dot(vectorBetween(p, q), chord);
  const [a, b, c] = [along(from, handle1), along(handle1, handle2), along(handle2, to)];
  return Math.min(a, c, b + Math.sqrt(Math.max(0, a * c))) >= -ROUNDING && a + b + c > ROUNDING;
}

/** Writes a point of the true parallel with the heading of the parallel there. */
function writeParallel(
  curve: Cubic,
  t: number,
  distance: number,
  runsOn: boolean,
  into: number[],
  at: number,
): void {
  writePlaceAt(curve, t, into, at);
  const headingX = into[at + 2] as number;
  const headingY = into[at + 3] as number;
  into[at] = (into[at] as number) + distance * headingY;
  into[at + 1] = (into[at + 1] as number) - distance * headingX;
  if (runsOn) return;
  into[at + 2] = -headingX;
  into[at + 3] = -headingY;
}

/**
 * Where the parallel at `distance` has its cusps: where the radius of curvature equals the distance on its side,
 * |B'|^3 + distance (x'y" - y'x") = 0. Squared this is a polynomial of degree 12, of which the roots with the right
 * sign count. Most curves are far from it, which their control polygons show at once.
 */
export function cusps(cubic: Cubic, distance: number): number[] {
  const a = vectorBetween(cubic.from, cubic.handle1);
  const b = vectorBetween(cubic.handle1, cubic.handle2);
  const c = vectorBetween(cubic.handle2, cubic.to);
  // In units of the sides: B' = 3 (...), x'y" - y'x" = 18 (...), so the equation is 27 speed^3 + 18 distance turn.
  const turning = (2 / 3) * distance;
  const [first, middle, last] = [turning * cross(a, b), turning * (cross(a, c) / 2), turning * cross(b, c)];
  const hollow = -Math.min(first, middle, last);
  if (hollow <= 0) return [];
  const chord = unit(vectorBetween(cubic.from, cubic.to));
  const slowest = Math.min(dot(a, chord), dot(b, chord), dot(c, chord));
  if (slowest > 0 && slowest * slowest * slowest > hollow) return [];
  const turn = [first, middle, last];
  const speed2 = squared(a, b, c);
  const speed6 = bernsteinProduct(bernsteinProduct(speed2, speed2), speed2);
  const turn2 = raised(bernsteinProduct(turn, turn), 12);
  const difference = speed6.map((value, i) => value - (turn2[i] ?? 0));
  return rootsBetween01(difference).filter(
    (t) => t > BESIDE_END && t < 1 - BESIDE_END && distance * curvatureAt(cubic, t) < 0,
  );
}

/** Bernstein coefficients of the squared size of the quadratic vector polynomial a, b, c. */
function squared(a: Vector, b: Vector, c: Vector): number[] {
  const x = bernsteinProduct([a.x, b.x, c.x], [a.x, b.x, c.x]);
  const y = bernsteinProduct([a.y, b.y, c.y], [a.y, b.y, c.y]);
  return x.map((value, i) => value + (y[i] ?? 0));
}

/** The same polynomial with the Bernstein coefficients of a higher degree: it is multiplied by one. */
const raised = (b: readonly number[], degree: number): number[] =>
  bernsteinProduct(b, new Array<number>(degree + 2 - b.length).fill(1));

import { roomForNumbers } from '../room-for-numbers.ts';
import type { Cubic } from './curve.ts';
import {
  type FlatSamples,
  fitOneCubic,
  flatSamples,
  type HermiteFit,
  SAMPLE,
  type Sample,
  writeSample,
} from './fit-one-cubic.ts';
import { distance, type Point, vectorBetween } from './point.ts';
import { ROUNDING } from './tolerance.ts';
import { plus, unit, type Vector } from './vector.ts';

/** A chain of cubics that runs smoothly (G1) along a given curve, and how far it strays from it (mm). */
export interface Fit {
  readonly curves: readonly Cubic[];
  readonly deviation: number;
}

/** Points of the given curve that one cubic is fitted to, its ends among them. */
const SAMPLES = 13;

/** The deviation between two samples can be this much larger than at the samples: each of its bulges has three or four of them. */
const BETWEEN_SAMPLES = 1.15;

/** Halving a smooth curve this often makes it shorter than the rounding of its coordinates. */
const MOST_HALVINGS = 24;

/**
 * Fits a G1 chain of cubics to a smooth curve given as a function from t in [t0, t1] to its point and unit tangent,
 * to within `tolerance` (mm). Each cubic takes its ends and end tangents from the curve; its two handle lengths are
 * fitted by least squares. The error falls with the sixth power of a piece's length (C. de Boor, K. Hollig and
 * M. Sabin, "High accuracy geometric Hermite interpolation", 1987), so the number of pieces is known from the first
 * fit. The deviation reached is returned: it can stay above the tolerance only where the curve has a corner between
 * t0 and t1, or the tolerance is below the rounding of coordinates.
 */
export const fitCurve = (curveAt: (t: number) => Sample, t0: number, t1: number, tolerance: number): Fit =>
  fitWritten((t, into, at) => writeSample(curveAt(t), into, at), t0, t1, tolerance);

/** Writes the sample of a curve at t into a list, from place `at` on. */
export type WritesSample = (t: number, into: number[], at: number) => void;

/** The same for a curve that writes its samples as plain numbers. */
export function fitWritten(write: WritesSample, t0: number, t1: number, tolerance: number): Fit {
  const curves: Cubic[] = [];
  const deviation = fitInto(curves, write, t0, t1, tolerance, MOST_HALVINGS);
  return { curves, deviation };
}

function fitInto(
  curves: Cubic[],
  write: WritesSample,
  t0: number,
  t1: number,
  tolerance: number,
  halvings: number,
): number {
  const samples = roomForNumbers(SAMPLE * SAMPLES);
  for (let i = 0; i < SAMPLES; i++) write(t0 + ((t1 - t0) * i) / (SAMPLES - 1), samples, SAMPLE * i);
  const fit = fitOneCubic(samples, tolerance / BETWEEN_SAMPLES);
  const deviation = fit.deviation * BETWEEN_SAMPLES;
  if (deviation <= Math.max(tolerance, ROUNDING) || halvings === 0) {
    curves.push(fit.cubic);
    return deviation;
  }
  const wanted = Math.ceil((deviation / tolerance) ** (1 / 6));
  const pieces = Math.min(4, Math.max(2, Number.isFinite(wanted) ? wanted : 2));
  let worst = 0;
  for (let i = 0; i < pieces; i++) {
    const start = t0 + ((t1 - t0) * i) / pieces;
    const end = t0 + ((t1 - t0) * (i + 1)) / pieces;
    worst = Math.max(worst, fitInto(curves, write, start, end, tolerance, halvings - 1));
  }
  return worst;
}

/** The headings wanted at the ends of a fit through points. */
export interface EndDirections {
  readonly start?: Vector;
  readonly end?: Vector;
}

/**
 * Fits a G1 chain of cubics to points in order along a smooth curve, to within `tolerance` (mm) at the points.
 * Tangents are those of the circle through each point and its neighbours; the ends take the given headings, or
 * those of the circle through the last three points. Two points give a straight cubic. Throws a RangeError for
 * fewer than two.
 */
export function fitPoints(points: readonly Point[], tolerance: number, ends: EndDirections = {}): Fit {
  const samples = flatSamples(withTangents(points, ends));
  if (samples.length < 2 * SAMPLE)
    throw new RangeError('A curve can be fitted to two different points or more.');
  const curves: Cubic[] = [];
  const deviation = fitSpan(curves, samples, 0, samples.length / SAMPLE - 1, tolerance);
  return { curves, deviation };
}

function fitSpan(
  curves: Cubic[],
  samples: FlatSamples,
  first: number,
  last: number,
  tolerance: number,
): number {
  const fit: HermiteFit = fitOneCubic(samples.slice(SAMPLE * first, SAMPLE * (last + 1)), tolerance);
  if (fit.deviation <= tolerance || last - first < 2) {
    curves.push(fit.cubic);
    return fit.deviation;
  }
  const middle = (first + last) >> 1;
  return Math.max(
    fitSpan(curves, samples, first, middle, tolerance),
    fitSpan(curves, samples, middle, last, tolerance),
  );
}

/** Points with the tangents of the circles through them; points that repeat the one before are left out. */
function withTangents(given: readonly Point[], ends: EndDirections): Sample[] {
  const points = given.filter((p, i) => {
    const before = given[i - 1];
    return before === undefined || distance(before, p) > 0;
  });
  return points.map((point, i) => {
    const before = points[i - 1];
    const after = points[i + 1];
    if (before && after) return { point, tangent: circleTangent(before, point, after) };
    const near = before ?? after ?? point;
    const far = before ? points[i - 2] : points[i + 2];
    const chord = before ? unit(vectorBetween(near, point)) : unit(vectorBetween(point, near));
    const wanted = before ? ends.end : ends.start;
    if (wanted) return { point, tangent: unit(wanted) };
    if (!far) return { point, tangent: chord };
    // The chord halves the angle between the tangents at its ends: mirror the neighbour's tangent in it.
    const neighbour = before ? circleTangent(far, near, point) : circleTangent(point, near, far);
    const along = 2 * (neighbour.x * chord.x + neighbour.y * chord.y);
    return { point, tangent: { x: along * chord.x - neighbour.x, y: along * chord.y - neighbour.y } };
  });
}

/** The tangent at b of the circle through a, b and c: the unit chords weighted by the length of the other. */
function circleTangent(a: Point, b: Point, c: Point): Vector {
  const into = vectorBetween(a, b);
  const outOf = vectorBetween(b, c);
  const p = distance(a, b);
  const q = distance(b, c);
  return unit(
    plus({ x: (into.x * q) / p, y: (into.y * q) / p }, { x: (outOf.x * p) / q, y: (outOf.y * p) / q }),
  );
}

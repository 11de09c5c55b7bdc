import { roomForNumbers } from '../room-for-numbers.ts';
import type { Cubic } from './curve.ts';
import type { Point } from './point.ts';
import { UNIT_ROUNDING } from './tolerance.ts';
import type { Vector } from './vector.ts';

/** A point of a curve with its unit tangent in the direction of travel. */
export interface Sample {
  readonly point: Point;
  readonly tangent: Vector;
}

/** Samples one after the other as plain numbers, for every parallel takes dozens: x and y of the point, x and y of the tangent. */
export type FlatSamples = readonly number[];

/** Numbers of one sample. */
export const SAMPLE = 4;

/** Writes a sample into a list, from place `at` on. */
export function writeSample({ point, tangent }: Sample, into: number[], at: number): void {
  into[at] = point.x;
  into[at + 1] = point.y;
  into[at + 2] = tangent.x;
  into[at + 3] = tangent.y;
}

/** The same samples as plain numbers. */
export function flatSamples(samples: readonly Sample[]): FlatSamples {
  const flat = roomForNumbers(SAMPLE * samples.length);
  for (let i = 0; i < samples.length; i++) writeSample(samples[i] as Sample, flat, SAMPLE * i);
  return flat;
}

/** One cubic and its largest distance from the samples, measured along their normals (mm). */
export interface HermiteFit {
  readonly cubic: Cubic;
  readonly deviation: number;
}

const MOST_STEPS = 12;

/**
 * The cubic that has the ends and end tangents of the samples and the handle lengths that make the squared distances
 * to the samples least. Gauss-Newton steps in the two lengths; before each, every sample finds the place where the
 * cubic crosses its normal by a Newton step (the separable scheme of L. Piegl and W. Tiller, "The NURBS Book", 1997,
 * section 9.4, with the parameters along the normals). Stops early once the deviation is below `enough` (mm) and no
 * longer falls, or stays hopelessly above it.
 */
export function fitOneCubic(samples: FlatSamples, enough: number): HermiteFit {
  if (samples.length === 0) throw new RangeError('A cubic cannot be fitted to nothing.');
  const last = samples.length - SAMPLE;
  const p = pointOf(samples, 0);
  const q = pointOf(samples, last);
  const s = tangentOf(samples, 0);
  const e = tangentOf(samples, last);
  const chord = Math.hypot(q.x - p.x, q.y - p.y);
  let { start, end } = firstHandles(chord, q.x - p.x, q.y - p.y, s, e);
  const places = chordPlaces(samples);
  let deviation = Infinity;
  for (let step = 0; step < MOST_STEPS; step++) {
    const x1 = p.x + start * s.x;
    const y1 = p.y + start * s.y;
    const x2 = q.x - end * e.x;
    const y2 = q.y - end * e.y;
    // Normal equations of the residual r + ds * a + de * b = 0 along each sample's normal.
    let aa = 0;
    let ab = 0;
    let bb = 0;
    let ar = 0;
    let br = 0;
    let worst = 0;
    for (let i = 1, at = SAMPLE; at < last; i++, at += SAMPLE) {
      const pointX = samples[at] as number;
      const pointY = samples[at + 1] as number;
      const tangentX = samples[at + 2] as number;
      const tangentY = samples[at + 3] as number;
      let t = places[i] as number;
      let u = 1 - t;
      for (let newton = 0; newton < 2; newton++) {
        const dx = u * u * (x1 - p.x) + 2 * u * t * (x2 - x1) + t * t * (q.x - x2);
        const dy = u * u * (y1 - p.y) + 2 * u * t * (y2 - y1) + t * t * (q.y - y2);
        const x = u * u * u * p.x + 3 * u * t * (u * x1 + t * x2) + t * t * t * q.x;
        const y = u * u * u * p.y + 3 * u * t * (u * y1 + t * y2) + t * t * t * q.y;
        const ahead = (pointX - x) * tangentX + (pointY - y) * tangentY;
        const speed = 3 * (dx * tangentX + dy * tangentY);
        if (speed > 0) t = Math.min(1, Math.max(0, t + ahead / speed));
        u = 1 - t;
      }
      places[i] = t;
      const x = u * u * u * p.x + 3 * u * t * (u * x1 + t * x2) + t * t * t * q.x - pointX;
      const y = u * u * u * p.y + 3 * u * t * (u * y1 + t * y2) + t * t * t * q.y - pointY;
      worst = Math.max(worst, x * x + y * y);
      const r = tangentX * y - tangentY * x;
      const a = 3 * u * u * t * (tangentX * s.y - tangentY * s.x);
      const b = -3 * u * t * t * (tangentX * e.y - tangentY * e.x);
      aa += a * a;
      ab += a * b;
      bb += b * b;
      ar += a * r;
      br += b * r;
    }
    const before = deviation;
    deviation = Math.sqrt(worst);
    if (deviation <= 0.25 * enough || (deviation <= enough && deviation > 0.7 * before)) break;
    if (step > 2 && deviation > 0.9 * before && deviation > 1.5 * enough) break;
    if (step + 1 === MOST_STEPS) break;
    // Handles that move no sample sideways, as on a straight line, stay as they are.
    const det = aa * bb - ab * ab;
    if (!(det > UNIT_ROUNDING * aa * bb)) continue;
    start = Math.max(0, Math.min(start + (ab * br - bb * ar) / det, 4 * chord));
    end = Math.max(0, Math.min(end + (ab * ar - aa * br) / det, 4 * chord));
  }
  return {
    cubic: {
      kind: 'cubic',
      from: p,
      handle1: { x: p.x + start * s.x, y: p.y + start * s.y },
      handle2: { x: q.x - end * e.x, y: q.y - end * e.y },
      to: q,
    },
    deviation,
  };
}

/** Handle lengths of a circular arc with this chord that turns half as far at each end as the tangents do. */
function firstHandles(
  chord: number,
  x: number,
  y: number,
  s: Vector,
  e: Vector,
): { start: number; end: number } {
  if (chord === 0) return { start: 0, end: 0 };
  const length = (cos: number): number => (2 * chord) / (3 * (1 + Math.max(0, cos)));
  const startCos = (s.x * x + s.y * y) / chord;
  const endCos = (e.x * x + e.y * y) / chord;
  const both = length((startCos + endCos) / 2);
  return { start: both, end: both };
}

/** First guess of each sample's parameter: its share of the way along the chords. */
function chordPlaces(samples: FlatSamples): number[] {
  const count = samples.length / SAMPLE;
  const places = roomForNumbers(count);
  places[0] = 0;
  let sum = 0;
  for (let i = 1, at = SAMPLE; i < count; i++, at += SAMPLE) {
    const x = (samples[at] as number) - (samples[at - SAMPLE] as number);
    const y = (samples[at + 1] as number) - (samples[at + 1 - SAMPLE] as number);
    sum += Math.sqrt(x * x + y * y);
    places[i] = sum;
  }
  if (sum > 0) for (let i = 1; i < count; i++) places[i] = (places[i] as number) / sum;
  return places;
}

const pointOf = (samples: FlatSamples, at: number): Point => ({
  x: samples[at] as number,
  y: samples[at + 1] as number,
});

const tangentOf = (samples: FlatSamples, at: number): Vector => ({
  x: samples[at + 2] as number,
  y: samples[at + 3] as number,
});

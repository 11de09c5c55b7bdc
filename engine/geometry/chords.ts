import { roomForNumbers } from '../room-for-numbers.ts';
import type { Curve } from './curve.ts';
import { asCubic, secondDerivativeAt, writePointAt } from './evaluate.ts';
import { magnitude } from './vector.ts';

/**
 * The ends of a chain of chords that stay within `flatness` (mm) of a curve, at even steps of its parameter, flat: x,
 * y, x, y ..., since the cutting lines of one garment have some ten thousand of them; not a Float64Array, which takes ten
 * times as long to come by. A chord over a step h of the parameter strays by at most max |B"| h^2 / 8 (Taylor's theorem),
 * and |B"| of a cubic is greatest at one of its ends.
 */
export const chordPoints = (curve: Curve, flatness: number): readonly number[] =>
  evenPoints(curve, chordsWithin(curve, flatness));

/** So many chords over even steps of its parameter stay within `flatness` (mm) of a curve. */
export function chordsWithin(curve: Curve, flatness: number): number {
  if (curve.kind === 'line') return 1;
  const bend = Math.max(magnitude(secondDerivativeAt(curve, 0)), magnitude(secondDerivativeAt(curve, 1)));
  return Math.max(1, Math.ceil(Math.sqrt(bend / (8 * flatness))));
}

/** The places of a curve at so many even steps of its parameter, both ends counted, flat: x, y, x, y ... */
export function evenPoints(curve: Curve, steps: number): readonly number[] {
  const points = roomForNumbers(2 * (steps + 1));
  writeEvenPoints(curve, steps, points, 0);
  return points;
}

/** Writes them into a list, from place `first` on. */
export function writeEvenPoints(curve: Curve, steps: number, into: number[], first: number): void {
  const cubic = asCubic(curve);
  for (let i = 0; i <= steps; i++) writePointAt(cubic, i / steps, into, first + 2 * i);
}

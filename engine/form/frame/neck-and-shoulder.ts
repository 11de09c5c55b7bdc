import type { FormGiven, Unknowns } from '../unknowns.ts';
import type { Depths } from './depths.ts';

/** Where neck and shoulders lie, mm: heights, z of the neck and of the shoulder point, and half the breadth over the shoulders. */
export interface NeckAndShoulder {
  readonly neckHeight: number;
  readonly frontNeckHeight: number;
  readonly sideNeckHeight: number;
  readonly shoulderHeight: number;
  readonly backNeck: number;
  readonly frontNeck: number;
  readonly sideNeck: number;
  readonly shoulderSide: number;
  readonly shoulderHalf: number;
}

/** Neck and shoulders of a body: the shoulder falls by its slope over its length, and lies forward by what is given. */
export function neckAndShoulderOf(
  { size, frontNeckBelow, shoulderForward }: FormGiven,
  u: Unknowns,
  { blades }: Depths,
): NeckAndShoulder {
  const neckHeight = u.backNeckHeight;
  const backNeck = blades + u.napeForward;
  const neckDepth = 1.72 * u.neckHalfBreadth;
  const sideNeck = backNeck + 0.36 * neckDepth;
  const sideNeckHeight = neckHeight - u.sideNeckBelow;
  const fall = size.shoulderLength * Math.sin(size.shoulderSlope);
  const across = Math.sqrt(Math.max(0, size.shoulderLength ** 2 - fall ** 2 - shoulderForward ** 2));
  return {
    neckHeight,
    frontNeckHeight: neckHeight - frontNeckBelow,
    sideNeckHeight,
    shoulderHeight: sideNeckHeight - fall,
    backNeck,
    frontNeck: backNeck + neckDepth,
    sideNeck,
    shoulderSide: sideNeck + shoulderForward,
    shoulderHalf: u.neckHalfBreadth + across,
  };
}

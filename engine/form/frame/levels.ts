import type { FormGiven, Unknowns } from '../unknowns.ts';
import type { NeckAndShoulder } from './neck-and-shoulder.ts';

/** Places of the levels, mm: heights up to the underarm, and running on from there over the shoulder and up the neck. */
export interface FrameLevels {
  /** Where the torso begins to close and the thighs take over. */
  readonly base: number;
  readonly hip: number;
  readonly waist: number;
  readonly underBust: number;
  readonly bust: number;
  readonly underarm: number;
  readonly shoulder: number;
  readonly neck: number;
  readonly top: number;
}

/** The levels of a torso, in order whatever is tried: a form that needs more misses its tapes and says so. */
export function levelsOf(
  { size, underBustBelow, crotchHeight }: FormGiven,
  u: Unknowns,
  { neckHeight, shoulderHeight }: NeckAndShoulder,
): FrameLevels {
  const waist = size.waistHeight;
  const hip = waist - u.hipFall;
  const base = hip - 0.3 * (hip - crotchBelow(hip, crotchHeight));
  const bust = waist + u.bustRise;
  const underarm = Math.max(neckHeight - u.underarmFall, waist + 40);
  const underBust = Math.max(Math.min(bust - underBustBelow, underarm - 25), waist + 12);
  const shoulder = underarm + Math.max(20, shoulderHeight - underarm);
  const neck = shoulder + size.shoulderLength;
  return { base, hip, waist, underBust, bust, underarm, shoulder, neck, top: neck + 78 };
}

/** The crotch lies where it was measured, and below the hip. */
export const crotchBelow = (hip: number, measured: number): number => Math.min(measured, hip - 30);

/** Places between the levels where the outlines are held too, mm. */
export const heldBetween = ({ hip, waist, underarm, shoulder, neck }: FrameLevels) => ({
  belly: (waist + hip) / 2,
  plate: partWay(underarm, shoulder, 0.55),
  ridge: [0.75, 0.5, 0.25].map((share) => ({ share, place: neck + share * (shoulder - neck) })),
  middle: neck + 38,
});

/** What lies a share of the way from one value to another. */
export const partWay = (from: number, to: number, share: number): number => from + share * (to - from);

import type { Body } from '../body/body.ts';
import type { Frame } from './frame/frame.ts';
import { type Limb, lengthOf, roundEnd } from './limbs.ts';
import { at, profileThrough } from './profile.ts';

/** Girths of the leg as shares of the hip girth, and heights as shares of the crotch's; judged, for no seam rests on them. */
const shares = { knee: 0.385, calf: 0.37, ankle: 0.235, kneeAt: 0.58, calfAt: 0.42, ankleAt: 0.1 } as const;

/** The left leg from inside the hip to the floor: only what a hem swings about. */
export function legOf(size: Body['size'], frame: Frame): Limb {
  const { crotch, levels } = frame;
  const { base } = levels;
  const half = at(frame.halfBreadth, base);
  const [back, front] = [at(frame.back, base), at(frame.front, base)];
  const thigh = { half: (half - 5) / 2, depth: 0.47 * (front - back) };
  const top = base + 0.75 * thigh.half;
  const radius = (share: number): number => (share * size.hipGirth) / (2 * Math.PI);
  const knee = radius(shares.knee);
  const calf = radius(shares.calf);
  const ankle = radius(shares.ankle);
  const centre = (front + back) / 2;
  const joints = [
    [3 + thigh.half, top, centre],
    [14 + knee, shares.kneeAt * crotch, centre + 6],
    [22 + ankle, 0, centre - 22],
  ] as const;
  const length = lengthOf(joints);
  const along = (height: number): number => top - height;
  const profile = (full: number, flat: number) =>
    profileThrough([
      ...roundEnd(0.7 * thigh.half, full),
      [0.75 * thigh.half, full],
      [along(0.8 * crotch), full + 0.48 * (flat * knee - full)],
      [along(shares.kneeAt * crotch), flat * knee],
      [along(shares.calfAt * crotch), flat * calf],
      [along(shares.ankleAt * crotch), flat * ankle],
      [length - 14, flat * ankle * 1.05],
      ...roundEnd(12, flat * ankle)
        .toReversed()
        .map(([place, value]) => [length - place, value] as const),
    ]);
  return {
    joints,
    halfBreadth: profile(thigh.half, 0.97),
    halfDepth: profile(thigh.depth, 1.03),
    roundness: 2.25,
    length,
  };
}

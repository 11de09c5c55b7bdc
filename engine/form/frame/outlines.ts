import { type Profile, profileThrough } from '../profile.ts';
import type { Unknowns } from '../unknowns.ts';
import type { Depths } from './depths.ts';
import { type FrameLevels, heldBetween, partWay } from './levels.ts';
import type { NeckAndShoulder } from './neck-and-shoulder.ts';

/** How wide, how far forward and back, and how squarely round the torso is along its places; mm and exponents. */
export interface Outlines {
  readonly halfBreadth: Profile;
  readonly front: Profile;
  readonly back: Profile;
  /** z of the widest points. */
  readonly side: Profile;
  readonly frontRoundness: Profile;
  readonly backRoundness: Profile;
}

/**
 * A belly stands out in front of a waist that is widest where hip and chest are: so much of the way from the middle of its
 * depth to the line between those; judged.
 */
const sideUpright = 0.25;

/** The outlines through what is known at the levels, and between them as a torso usually goes (judged). */
export function outlinesOf(
  u: Unknowns,
  levels: FrameLevels,
  depths: Depths,
  shoulders: NeckAndShoulder,
): Outlines {
  return {
    halfBreadth: breadthOf(u, levels, shoulders),
    front: frontOf(levels, depths, shoulders),
    back: backOf(levels, depths, shoulders),
    side: sideOf(u, levels, depths, shoulders),
    frontRoundness: roundnessOf(levels, [2.75, 2.4, 2.35, 2.4, 1.62]),
    backRoundness: roundnessOf(levels, [2.7, 2.55, 2.55, 2.7, 2.2]),
  };
}

function breadthOf(u: Unknowns, levels: FrameLevels, { shoulderHalf }: NeckAndShoulder): Profile {
  const { base, hip, waist, underBust, underarm, shoulder, neck, top } = levels;
  const { belly, plate, ridge, middle } = heldBetween(levels);
  return profileThrough([
    [base, 0.985 * u.hipHalfBreadth],
    [hip, u.hipHalfBreadth],
    [belly, partWay(u.waistHalfBreadth, u.hipHalfBreadth, 0.64)],
    [waist, u.waistHalfBreadth],
    [underBust, u.ribHalfBreadth],
    [underarm, u.chestHalfBreadth],
    [plate, u.plateHalfBreadth],
    [shoulder, shoulderHalf],
    ...ridge.map(({ place, share }) => [place, partWay(u.neckHalfBreadth, shoulderHalf, share)] as const),
    [neck, u.neckHalfBreadth],
    [middle, 0.9 * u.neckHalfBreadth],
    [top, 0.87 * u.neckHalfBreadth],
  ]);
}

function frontOf(levels: FrameLevels, depths: Depths, { frontNeck }: NeckAndShoulder): Profile {
  const { base, hip, waist, underBust, underarm, shoulder, neck, top } = levels;
  const { hipFront, waistFront, ribFront, chestFront } = depths;
  const { belly, middle } = heldBetween(levels);
  return profileThrough([
    [base, hipFront - 0.25 * (hip - base)],
    [hip, hipFront],
    [belly, partWay(waistFront, hipFront, 0.55) + 6],
    [waist, waistFront],
    [underBust, ribFront],
    [underarm, chestFront],
    [shoulder, partWay(frontNeck, chestFront, 0.57)],
    [neck, frontNeck],
    [middle, frontNeck + 4],
    [top, frontNeck + 14],
  ]);
}

function backOf(levels: FrameLevels, depths: Depths, { backNeck }: NeckAndShoulder): Profile {
  const { base, hip, waist, underBust, underarm, shoulder, neck, top } = levels;
  const { plumb, waistBack, ribBack, blades } = depths;
  const { belly, middle } = heldBetween(levels);
  return profileThrough([
    [base, plumb + 0.25 * (hip - base)],
    [hip, plumb],
    [belly, partWay(waistBack, plumb, 0.62)],
    [waist, waistBack],
    [underBust, ribBack],
    [underarm, blades],
    [shoulder, partWay(backNeck, blades, 0.82)],
    [neck, backNeck],
    [middle, backNeck + 10],
    [top, backNeck + 20],
  ]);
}

function sideOf(
  { armForward }: Unknowns,
  levels: FrameLevels,
  depths: Depths,
  { shoulderSide, sideNeck }: NeckAndShoulder,
): Profile {
  const { base, hip, waist, underBust, underarm, shoulder, neck, top } = levels;
  const { plumb, hipFront, waistBack, waistFront, ribBack, ribFront, blades, chestFront } = depths;
  const hipSide = partWay(plumb, hipFront, 0.48);
  const underarmSide = partWay(blades + armForward, partWay(blades, chestFront, 0.48), 0.5);
  const upright = partWay(hipSide, underarmSide, (waist - hip) / (underarm - hip));
  return profileThrough([
    [base, hipSide],
    [hip, hipSide],
    [waist, partWay(partWay(waistBack, waistFront, 0.5), upright, sideUpright)],
    [underBust, partWay(ribBack, ribFront, 0.48)],
    [underarm, underarmSide],
    [heldBetween(levels).plate, blades + armForward],
    [shoulder, shoulderSide],
    [neck, sideNeck],
    [top, sideNeck + 17],
  ]);
}

/** Exponents of the sections' curves: 2 is an ellipse, more is squarer. */
function roundnessOf(
  levels: FrameLevels,
  [atHip, atWaist, atRibs, atPlate, atShoulder]: readonly [number, number, number, number, number],
): Profile {
  const { hip, waist, underBust, shoulder, neck } = levels;
  return profileThrough([
    [hip, atHip],
    [waist, atWaist],
    [underBust, atRibs],
    [heldBetween(levels).plate, atPlate],
    [shoulder, atShoulder],
    [neck, 2],
  ]);
}

import { at, type Profile, profileThrough } from './profile.ts';
import type { Given, Unknowns } from './unknowns.ts';

/**
 * The torso as profiles over `place`, which is the height wherever the sections lie level (below the underarm) and runs on
 * from there over the shoulder and up the neck, where sections rise from front to back and dip from the shoulders. mm; x to
 * the wearer's left, y up, z forward.
 */
export interface Frame {
  /** The places of the levels. */
  readonly levels: Levels;
  readonly halfBreadth: Profile;
  readonly front: Profile;
  readonly back: Profile;
  /** z of the widest points. */
  readonly side: Profile;
  readonly frontRoundness: Profile;
  readonly backRoundness: Profile;
  readonly frontHeight: Profile;
  readonly backHeight: Profile;
  readonly sideHeight: Profile;
  readonly breast: Breast;
}

export interface Levels {
  readonly crotch: number;
  readonly hip: number;
  readonly waist: number;
  readonly underBust: number;
  readonly bust: number;
  readonly underarm: number;
  readonly shoulder: number;
  readonly neck: number;
  readonly top: number;
}

/** One breast, the left; the right is its mirror image. Lengths in mm along the ribs, angles in radians. */
export interface Breast {
  readonly prominence: number;
  /** Where on the section the bust point sits: a quarter turn is the centre front, 0 the side. */
  readonly apex: number;
  readonly height: number;
  /** mm along the ribs for each radian of the section. */
  readonly turn: number;
  readonly inward: number;
  readonly outward: number;
  readonly up: number;
  readonly down: number;
  /** Which way it points, from straight ahead. */
  readonly outwardAngle: number;
}

/** The tip points outward by so much; judged from views from above. */
const outwardAngle = (13 * Math.PI) / 180;

/** How much of the way from the front neck point to the underarm level the shoulder's section lies down the front and back. */
const shoulderDown = 0.4;

/** The frame of a body; everything about it follows from what is given and from the unknowns. */
export function frameOf(given: Given, unknowns: Unknowns): Frame {
  const { size, frontNeckBelow, shoulderForward, crotchHeight } = given;
  const u = unknowns;
  const plumb = -u.hipDepth / 2;
  const waist = size.waistHeight;
  const hip = waist - u.hipFall;
  const crotch = Math.min(crotchHeight, hip - 30);
  const belly = (waist + hip) / 2;
  const bust = waist + u.bustRise;
  const neckHeight = u.backNeckHeight;
  // Whatever is tried, the levels stay in order; a form that needs more misses its tapes and says so.
  const underarm = Math.max(neckHeight - u.underarmFall, waist + 40);
  const underBust = Math.max(Math.min(bust - given.underBustBelow, underarm - 25), waist + 12);

  const backNeck = plumb + u.lean + u.napeForward;
  const frontNeckHeight = neckHeight - frontNeckBelow;
  const neckDepth = 1.72 * u.neckHalfBreadth;
  const sideNeck = backNeck + 0.36 * neckDepth;
  const sideNeckHeight = neckHeight - u.sideNeckBelow;
  const fall = size.shoulderLength * Math.sin(size.shoulderSlope);
  const across = Math.sqrt(Math.max(0, size.shoulderLength ** 2 - fall ** 2 - shoulderForward ** 2));
  const shoulderHalf = u.neckHalfBreadth + across;
  const shoulderHeight = sideNeckHeight - fall;
  const shoulderSide = sideNeck + shoulderForward;

  const shoulder = underarm + Math.max(20, shoulderHeight - underarm);
  const neck = shoulder + size.shoulderLength;
  const middle = neck + 38;
  const top = neck + 78;

  const waistBack = plumb + u.backHollow;
  const blades = plumb + u.lean;
  const ribBack = blades + 0.3 * (waistBack - blades);
  const chestFront = blades + u.chestDepth;
  const ribFront = ribBack + u.ribDepth;
  const waistFront = waistBack + u.waistDepth;
  const hipFront = plumb + u.hipDepth;
  const frontNeck = backNeck + neckDepth;
  const between = (from: number, to: number, share: number): number => from + share * (to - from);
  const frontAtShoulder = between(frontNeck, chestFront, 0.56);
  const backAtShoulder = between(backNeck, blades, 0.74);
  const ridge = (share: number) => neck + share * (shoulder - neck);
  const alongRidge = (from: number, to: number) =>
    [0.75, 0.5, 0.25].map((share) => [ridge(share), between(from, to, share)] as const);

  const halfBreadth = profileThrough([
    [crotch, 0.97 * u.hipHalfBreadth],
    [hip, u.hipHalfBreadth],
    [belly, between(u.waistHalfBreadth, u.hipHalfBreadth, 0.64)],
    [waist, u.waistHalfBreadth],
    [underBust, u.ribHalfBreadth],
    [underarm, u.chestHalfBreadth],
    [between(underarm, shoulder, 0.55), u.plateHalfBreadth],
    [shoulder, shoulderHalf],
    ...alongRidge(u.neckHalfBreadth, shoulderHalf),
    [neck, u.neckHalfBreadth],
    [middle, 0.9 * u.neckHalfBreadth],
    [top, 0.87 * u.neckHalfBreadth],
  ]);
  const front = profileThrough([
    [crotch, between(hipFront, plumb, 0.06)],
    [hip, hipFront],
    [belly, between(waistFront, hipFront, 0.55) + 6],
    [waist, waistFront],
    [underBust, ribFront],
    [underarm, chestFront],
    [shoulder, frontAtShoulder],
    [neck, frontNeck],
    [middle, frontNeck + 4],
    [top, frontNeck + 14],
  ]);
  const back = profileThrough([
    [crotch, plumb + 20],
    [hip, plumb],
    [belly, between(waistBack, plumb, 0.62)],
    [waist, waistBack],
    [underBust, ribBack],
    [underarm, blades],
    [shoulder, backAtShoulder],
    [neck, backNeck],
    [middle, backNeck + 10],
    [top, backNeck + 20],
  ]);
  const side = profileThrough([
    [crotch, between(plumb, hipFront, 0.48)],
    [hip, between(plumb, hipFront, 0.48)],
    [waist, between(waistBack, waistFront, 0.5)],
    [underBust, between(ribBack, ribFront, 0.48)],
    [underarm, between(blades + u.armForward, between(blades, chestFront, 0.46), 0.5)],
    [between(underarm, shoulder, 0.55), blades + u.armForward],
    [shoulder, shoulderSide],
    [neck, sideNeck],
    [top, sideNeck + 17],
  ]);
  const roundness = (values: readonly [number, number, number, number, number, number]): Profile =>
    profileThrough([
      [hip, values[0]],
      [waist, values[1]],
      [underBust, values[2]],
      [underarm, values[3]],
      [shoulder, values[4]],
      [neck, values[5]],
    ]);

  const sideHeight = profileThrough([
    [underarm, underarm],
    [shoulder, shoulderHeight],
    ...alongRidge(sideNeckHeight, shoulderHeight).map(
      // The line of the shoulder is a little hollow; the tape lies straight over it.
      ([place, height], i) => [place, height - (i === 1 ? 2.5 : 1.8)] as const,
    ),
    [neck, sideNeckHeight],
    [middle, sideNeckHeight + 40],
    [top, sideNeckHeight + 78],
  ], { first: 1 });
  const frontHeight = profileThrough([
    [underarm, underarm],
    [shoulder, between(frontNeckHeight, underarm, shoulderDown)],
    [neck, frontNeckHeight],
    [middle, frontNeckHeight + 62],
    [top, frontNeckHeight + 106],
  ], { first: 1 });
  const backHeight = profileThrough([
    [underarm, underarm],
    [shoulder, between(neckHeight, underarm, shoulderDown)],
    [neck, neckHeight],
    [middle, neckHeight + 34],
    [top, neckHeight + 66],
  ], { first: 1 });

  const ribsAtBust = [at(halfBreadth, bust), (at(front, bust) - at(back, bust)) / 2] as const;
  const turn = Math.hypot(...ribsAtBust) / Math.SQRT2;
  const breast: Breast = {
    prominence: u.prominence,
    apex: u.apex,
    height: bust,
    turn,
    inward: Math.max(30, (Math.PI / 2 - u.apex) * turn - 5),
    outward: (u.apex + 0.12) * turn,
    up: Math.max(60, Math.min(frontNeckHeight - bust - 10, 92 + 0.3 * u.prominence)),
    down: bust - underBust,
    outwardAngle,
  };
  return {
    levels: { crotch, hip, waist, underBust, bust, underarm, shoulder, neck, top },
    halfBreadth,
    front,
    back,
    side,
    frontRoundness: roundness([2.75, 2.4, 2.35, 2.3, 2.35, 2.0]),
    backRoundness: roundness([2.85, 2.6, 2.6, 2.7, 2.4, 2.0]),
    frontHeight,
    backHeight,
    sideHeight,
    breast,
  };
}

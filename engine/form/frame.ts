import { at, type Profile, profileThrough } from './profile.ts';
import type { FormGiven, Unknowns } from './unknowns.ts';

/**
 * The torso as profiles over `place`, which is the height wherever the sections lie level (below the underarm) and runs on
 * from there over the shoulder and up the neck, where sections rise from front to back and dip from the shoulders. mm; x to
 * the wearer's left, y up, z forward.
 */
export interface Frame {
  /** The places of the levels. */
  readonly levels: FrameLevels;
  readonly crotch: number;
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
  readonly breast: Swelling;
  /** Seat and shoulder blades. */
  readonly behind: readonly Swelling[];
}

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

/**
 * Something that stands out from the section on the left side; the right is its mirror image. Lengths in mm, `turn` of them
 * for each radian of the section, angles in radians.
 */
export interface Swelling {
  readonly prominence: number;
  /** Where on the section it stands out most: a quarter turn is the centre front, 0 the side. */
  readonly apex: number;
  readonly height: number;
  readonly turn: number;
  /** How far it reaches toward the centre, toward the side, up and down. */
  readonly inward: number;
  readonly outward: number;
  readonly up: number;
  readonly down: number;
  /** How it falls off toward its edge: 1 round with a crease, 2 and more soft. */
  readonly fall: { readonly above: number; readonly below: number; readonly aside: number };
  /** The way it stands out: to the wearer's left, and forward. */
  readonly left: number;
  readonly forward: number;
}

/** The tip points outward by so much; judged from views from above. */
const outwardAngle = (13 * Math.PI) / 180;

/**
 * How a breast falls off above, below and aside: the first of each pair where it hardly stands out, the second where it
 * stands out by `full` mm and is rounder everywhere. Judged by eye.
 */
const falls = { above: [2.2, 1.35], below: [1.4, 0.85], aside: [1.7, 0.95] } as const;
const full = 110;

/** Seat and shoulder blades stand out by shares of the depths there; judged by eye. */
const [seatShare, bladeShare] = [0.07, 0.035];

/**
 * A belly stands out in front of a waist that is widest where hip and chest are: so much of the way from the middle of its
 * depth to the line between those; judged.
 */
const sideUpright = 0.25;

/** How much of the way from the front neck point to the underarm level the shoulder's section lies down the front and back. */
const shoulderDown = { front: 0.45, back: 0.5 } as const;

/** The frame of a body; everything about it follows from what is given and from the unknowns. */
export function frameOf(given: FormGiven, unknowns: Unknowns): Frame {
  const { size, frontNeckBelow, shoulderForward, crotchHeight } = given;
  const u = unknowns;
  const plumb = -u.hipDepth / 2;
  const waist = size.waistHeight;
  const hip = waist - u.hipFall;
  const crotch = Math.min(crotchHeight, hip - 30);
  const base = hip - 0.3 * (hip - crotch);
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
  const frontAtShoulder = between(frontNeck, chestFront, 0.57);
  const backAtShoulder = between(backNeck, blades, 0.82);
  const ridge = (share: number) => neck + share * (shoulder - neck);
  const alongRidge = (from: number, to: number) =>
    [0.75, 0.5, 0.25].map((share) => [ridge(share), between(from, to, share)] as const);

  const halfBreadth = profileThrough([
    [base, 0.985 * u.hipHalfBreadth],
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
    [base, hipFront - 0.25 * (hip - base)],
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
    [base, plumb + 0.25 * (hip - base)],
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
  const hipSide = between(plumb, hipFront, 0.48);
  const underarmSide = between(blades + u.armForward, between(blades, chestFront, 0.48), 0.5);
  const upright = between(hipSide, underarmSide, (waist - hip) / (underarm - hip));
  const side = profileThrough([
    [base, hipSide],
    [hip, hipSide],
    [waist, between(between(waistBack, waistFront, 0.5), upright, sideUpright)],
    [underBust, between(ribBack, ribFront, 0.48)],
    [underarm, underarmSide],
    [between(underarm, shoulder, 0.55), blades + u.armForward],
    [shoulder, shoulderSide],
    [neck, sideNeck],
    [top, sideNeck + 17],
  ]);
  const plate = between(underarm, shoulder, 0.55);
  const roundness = (
    atHip: number,
    atWaist: number,
    atRibs: number,
    atPlate: number,
    atShoulder: number,
  ): Profile =>
    profileThrough([
      [hip, atHip],
      [waist, atWaist],
      [underBust, atRibs],
      [plate, atPlate],
      [shoulder, atShoulder],
      [neck, 2],
    ]);

  const sideHeight = profileThrough(
    [
      [underarm, underarm],
      [shoulder, shoulderHeight],
      ...alongRidge(sideNeckHeight, shoulderHeight).map(
        // The line of the shoulder is a little hollow; the tape lies straight over it.
        ([place, height], i) => [place, height - (i === 1 ? 2.5 : 1.8)] as const,
      ),
      [neck, sideNeckHeight],
      [middle, sideNeckHeight + 40],
      [top, sideNeckHeight + 78],
    ],
    { first: 1 },
  );
  const frontHeight = profileThrough(
    [
      [underarm, underarm],
      [shoulder, between(frontNeckHeight, underarm, shoulderDown.front)],
      [neck, frontNeckHeight],
      [middle, frontNeckHeight + 68],
      [top, frontNeckHeight + 122],
    ],
    { first: 1 },
  );
  const backHeight = profileThrough(
    [
      [underarm, underarm],
      [shoulder, between(neckHeight, underarm, shoulderDown.back)],
      [neck, neckHeight],
      [middle, neckHeight + 34],
      [top, neckHeight + 66],
    ],
    { first: 1 },
  );

  /** mm for each radian of the section at a place. */
  const turnAt = (place: number): number =>
    Math.hypot(at(halfBreadth, place), (at(front, place) - at(back, place)) / 2) / Math.SQRT2;
  const turn = turnAt(bust);
  const fullness = Math.min(1, u.prominence / full);
  const rounded = ([slight, round]: readonly [number, number]): number =>
    slight + fullness * (round - slight);
  const breast: Swelling = {
    prominence: u.prominence,
    apex: u.apex,
    height: bust,
    turn,
    inward: Math.max(30, (Math.PI / 2 - u.apex) * turn - 5),
    outward: (u.apex + 0.12) * turn,
    up: Math.max(60, Math.min(frontNeckHeight - bust - 10, 92 + 0.3 * u.prominence)),
    down: bust - underBust,
    fall: { above: rounded(falls.above), below: rounded(falls.below), aside: rounded(falls.aside) },
    left: Math.sin(outwardAngle),
    forward: Math.cos(outwardAngle),
  };
  const soft = { above: 2, below: 2, aside: 1.6 };
  const seatTurn = turnAt(hip);
  const seat: Swelling = {
    prominence: seatShare * u.hipDepth,
    apex: -0.98,
    height: hip - 6,
    turn: seatTurn,
    inward: (Math.PI / 2 - 0.98) * seatTurn - 2,
    outward: 0.95 * seatTurn,
    up: Math.max(40, 0.62 * u.hipFall),
    down: hip - crotch + 45,
    fall: { ...soft, below: 1.5 },
    left: 0.1,
    forward: -1,
  };
  const bladeTurn = turnAt(underarm);
  const bladeHeight = underarm + 0.12 * (neckHeight - underarm);
  const blade: Swelling = {
    prominence: bladeShare * u.chestDepth,
    apex: -1.0,
    height: bladeHeight,
    turn: bladeTurn,
    inward: (Math.PI / 2 - 1.0) * bladeTurn - 2,
    outward: 0.8 * bladeTurn,
    up: 0.6 * (neckHeight - bladeHeight),
    down: Math.max(40, 0.55 * (bladeHeight - waist)),
    fall: soft,
    left: 0.15,
    forward: -1,
  };
  return {
    crotch,
    levels: { base, hip, waist, underBust, bust, underarm, shoulder, neck, top },
    halfBreadth,
    front,
    back,
    side,
    frontRoundness: roundness(2.75, 2.4, 2.35, 2.4, 1.62),
    backRoundness: roundness(2.7, 2.55, 2.55, 2.7, 2.2),
    frontHeight,
    backHeight,
    sideHeight,
    breast,
    behind: [seat, blade],
  };
}

import type { Body } from '../body/body.ts';
import { type BodyPosture, type FormChoiceName, formChoices } from './choices.ts';
import type { LikelyShape } from './likely.ts';

/** What is found so that the tapes give back the measurements; mm, but `apex` radians and shares. */
export const unknownNames = [
  'backNeckHeight',
  'underarmFall',
  'bustRise',
  'hipFall',
  'hipHalfBreadth',
  'hipDepth',
  'waistHalfBreadth',
  'waistDepth',
  'ribHalfBreadth',
  'ribDepth',
  'chestHalfBreadth',
  'chestDepth',
  'prominence',
  'apex',
  'neckHalfBreadth',
  'plateHalfBreadth',
  'armForward',
  'backHollow',
  'lean',
  'napeForward',
  'sideNeckBelow',
] as const;

export type UnknownName = (typeof unknownNames)[number];

export type Unknowns = Readonly<Record<UnknownName, number>>;

/** Where each unknown begins, the unit it is changed by, and between what it may lie. */
export interface Start {
  readonly from: number;
  readonly scale: number;
  readonly least: number;
  readonly most: number;
}

/** What of the form is said beforehand: measurements, choices, what follows from either. */
export interface FormGiven {
  readonly size: Body['size'];
  readonly likely: LikelyShape;
  readonly posture: BodyPosture;
  readonly frontNeckBelow: number;
  readonly shoulderForward: number;
  readonly underBustBelow: number;
  readonly usualUnderBustBelow: number;
  /** How far the shoulder blades of so deep a hip stand in front of the seat: the middles lie above each other. */
  readonly usualLean: number;
  /** How far the neck of one so deep lies in front of the blades, on which there is flesh. */
  readonly usualNape: number;
  readonly crotchHeight: number;
}

/** The hip depth of a woman whose blades stand where they usually do, mm, and what a deeper one adds; judged. */
const [usualHipDepth, deeper, fleshBehind] = [225, 0.3, 0.1];

export function givenOf({ size }: Pick<Body, 'size'>, likely: LikelyShape, posture: BodyPosture): FormGiven {
  const cup = size.bustGirth - size.underBustGirth;
  const bustToWaist = Math.max(60, size.neckShoulderPointToWaist - size.neckShoulderPointToBustPoint);
  // A short waist has no room for a low edge.
  const below = Math.min(Math.max(50, 44 + 0.17 * cup), 0.62 * bustToWaist);
  return {
    size,
    likely,
    posture,
    frontNeckBelow: posture.frontNeckBelow ?? likely.frontNeckBelow.mean,
    shoulderForward: posture.shoulderForward ?? formChoices.shoulderForward.usual,
    underBustBelow: posture.underBustBelow ?? below,
    usualUnderBustBelow: below,
    usualLean: formChoices.lean.usual + deeper * (likely.hipDepth.mean - usualHipDepth),
    usualNape: formChoices.napeForward.usual + fleshBehind * (likely.hipDepth.mean - usualHipDepth),
    crotchHeight: Math.min(likely.crotchHeight.mean, size.waistHeight - size.waistToHip - 35),
  };
}

export function starts({ size, likely, posture }: FormGiven): Readonly<Record<UnknownName, Start>> {
  const around = (from: number, scale: number, least: number, most: number): Start => ({
    from: Math.min(Math.max(from, least), most),
    scale,
    least,
    most,
  });
  const chosen = (name: 'backHollow' | 'lean' | 'napeForward' | 'sideNeckBelow'): Start => {
    const { usual, spread, least, most } = formChoices[name];
    const value = posture[name];
    return value === undefined
      ? around(usual, spread, least, most)
      : { from: value, scale: spread, least: value, most: value };
  };
  const back = size.backNeckPointToWaist;
  const girth = (of: number, low: number, high: number): readonly [number, number] => [low * of, high * of];
  const breadth = (mean: number, of: number): Start => around(mean, 10, ...girth(of, 0.1, 0.24));
  const depth = (mean: number, of: number): Start => around(mean, 10, ...girth(of, 0.14, 0.4));
  const rib = size.underBustGirth;
  const ribBreadth = 0.35 * rib;
  return {
    backNeckHeight: around(
      likely.backNeckPointHeight,
      10,
      size.waistHeight + 0.7 * back,
      size.waistHeight + back,
    ),
    underarmFall: around(0.95 * size.scyeDepth, 10, 0.5 * size.scyeDepth, size.scyeDepth),
    bustRise: around(
      0.97 * (size.neckShoulderPointToWaist - size.neckShoulderPointToBustPoint),
      10,
      0.1 * back,
      0.75 * back,
    ),
    hipFall: around(0.98 * size.waistToHip, 10, 0.5 * size.waistToHip, size.waistToHip),
    hipHalfBreadth: breadth(likely.hipBreadth.mean / 2, size.hipGirth),
    hipDepth: depth(likely.hipDepth.mean, size.hipGirth),
    waistHalfBreadth: breadth(likely.waistBreadth.mean / 2, size.waistGirth),
    waistDepth: depth(likely.waistDepth.mean, size.waistGirth),
    ribHalfBreadth: breadth(ribBreadth / 2, rib),
    ribDepth: depth(formChoices.ribDepth.usual * ribBreadth, rib),
    chestHalfBreadth: breadth((1.06 * ribBreadth) / 2, rib),
    chestDepth: depth(formChoices.ribDepth.usual * ribBreadth, rib),
    prominence: around(0.25 * (size.bustGirth - size.underBustGirth), 10, 0, 260),
    apex: around(0.8, 0.1, 0.25, 1.35),
    neckHalfBreadth: around(size.neckBaseGirth / 6.2, 5, size.neckBaseGirth / 9, size.neckBaseGirth / 4.5),
    plateHalfBreadth: around(
      size.acrossBackWidth / 2 - 12,
      10,
      0.3 * size.acrossBackWidth,
      0.6 * size.acrossBackWidth,
    ),
    armForward: around(75, 10, 20, 220),
    backHollow: chosen('backHollow'),
    lean: chosen('lean'),
    napeForward: chosen('napeForward'),
    sideNeckBelow: chosen('sideNeckBelow'),
  };
}

/** A thing that is likely of a form, as far as the tapes leave it open: its value, what is likely, one standard deviation. */
export interface Leaning {
  readonly name:
    | FormChoiceName
    | keyof LikelyShape
    | 'chestDepth'
    | 'chestBreadth'
    | 'armForward'
    | 'plate'
    | 'plumb';
  readonly value: number;
  readonly mean: number;
  readonly spread: number;
}

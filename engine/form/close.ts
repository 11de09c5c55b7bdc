import type { Body } from '../body/body.ts';
import { leastSquares } from '../numeric/least-squares.ts';
import { type BodyPosture, formChoices } from './choices.ts';
import { type Frame, frameOf } from './frame/frame.ts';
import { likelyShape } from './likely.ts';
import { at } from './profile.ts';
import { type Rings, tapeRings } from './rings.ts';
import {
  across,
  alongShoulder,
  bustPoint,
  bustToWaist,
  downTheBack,
  downTheSide,
  girthAt,
  neckBase,
  neckToBust,
  upperChest,
} from './tapes.ts';
import type { Path } from './taut.ts';
import {
  type FormGiven,
  givenOf,
  type Leaning,
  starts,
  type UnknownName,
  type Unknowns,
  unknownNames,
} from './unknowns.ts';

/** The measurements that a tape is laid for on the form, and within what they must be given back, mm. */
export const tapeBounds = {
  bustGirth: 0.5,
  underBustGirth: 0.5,
  upperChestGirth: 0.5,
  waistGirth: 0.5,
  hipGirth: 0.5,
  neckBaseGirth: 0.5,
  backNeckPointToWaist: 2,
  scyeDepth: 2,
  neckShoulderPointToBustPoint: 2,
  neckShoulderPointToWaist: 2,
  bustPointWidth: 2,
  acrossBackWidth: 2,
  acrossFrontWidth: 2,
  shoulderLength: 2,
  waistToHip: 2,
} as const;

export type TapeName = keyof typeof tapeBounds;

export const tapeNames = Object.keys(tapeBounds) as readonly TapeName[];

/** Every tape laid on a form. A width between points is straight through the air. */
export function layTapes(frame: Frame, rings: Rings): Readonly<Record<TapeName, Path>> {
  const { index } = rings;
  const [xb, yb, zb] = bustPoint(frame);
  const widths = across(frame, rings);
  const toBust = neckToBust(frame, rings);
  const toWaist = bustToWaist(frame, rings);
  return {
    bustGirth: girthAt(rings, index.bust),
    underBustGirth: girthAt(rings, index.underBust),
    upperChestGirth: upperChest(frame, rings),
    waistGirth: girthAt(rings, index.waist),
    hipGirth: girthAt(rings, index.hip),
    neckBaseGirth: neckBase(rings),
    backNeckPointToWaist: downTheBack(rings, frame.levels.waist),
    scyeDepth: downTheBack(rings, frame.levels.underarm),
    neckShoulderPointToBustPoint: toBust,
    neckShoulderPointToWaist: {
      points: [...toBust.points, ...toWaist.points.slice(3)],
      length: toBust.length + toWaist.length,
      round: false,
    },
    bustPointWidth: { points: [-xb, yb, zb, xb, yb, zb], length: 2 * xb, round: false },
    acrossBackWidth: widths.back,
    acrossFrontWidth: widths.front,
    shoulderLength: alongShoulder(rings),
    waistToHip: downTheSide(frame, rings),
  };
}

/**
 * Tapes weigh as if they were known to this, mm: at first loosely, so that the form finds the neighbourhood; at last far
 * better than anything likely is known. Where that misses a tape it is tried once more from there.
 */
const tapeErrors = [2, 0.05];
const againErrors = [0.5, 0.05, 0.2, 0.02];

/** What is likely of the form besides, for the tapes leave it open. */
function leaningsOf(frame: Frame, u: Unknowns, given: FormGiven): readonly Leaning[] {
  const { likely, posture } = given;
  const { levels, halfBreadth, back, side } = frame;
  const breadthAtBust = 2 * at(halfBreadth, levels.bust);
  const [, , tip] = bustPoint(frame);
  const ribDepth = posture.ribDepth ?? formChoices.ribDepth.usual;
  const own = (name: 'backHollow' | 'lean' | 'napeForward' | 'sideNeckBelow'): Leaning => ({
    name,
    value: u[name],
    mean: formChoices[name].usual,
    spread: formChoices[name].spread,
  });
  const measured = (
    name: 'hipBreadth' | 'hipDepth' | 'waistBreadth' | 'waistDepth' | 'bustBreadth' | 'bustDepth',
    value: number,
  ): Leaning => ({
    name,
    value,
    mean: likely[name].mean,
    spread: likely[name].spread,
  });
  return [
    measured('hipBreadth', 2 * u.hipHalfBreadth),
    measured('hipDepth', u.hipDepth + (frame.behind[0]?.prominence ?? 0)),
    measured('waistBreadth', 2 * u.waistHalfBreadth),
    measured('waistDepth', u.waistDepth),
    measured('bustBreadth', breadthAtBust),
    measured('bustDepth', tip - at(back, levels.bust) + 0.5 * (frame.behind[1]?.prominence ?? 0)),
    {
      name: 'ribDepth',
      value: u.ribDepth / (2 * u.ribHalfBreadth),
      mean: ribDepth,
      spread: posture.ribDepth === undefined ? formChoices.ribDepth.spread : 0.001,
    },
    { name: 'chestDepth', value: u.chestDepth / u.ribDepth, mean: 0.96, spread: 0.05 },
    { name: 'chestBreadth', value: u.chestHalfBreadth / u.ribHalfBreadth, mean: 1.06, spread: 0.05 },
    // A plumb line by the shoulder joint passes midway through the trunk and by the hip joint (F. P. Kendall et al., Muscles:
    // Testing and Function, ideal alignment; from memory; spread judged).
    { name: 'plumb', value: at(side, levels.underarm) - at(side, levels.hip), mean: 0, spread: 30 },
    { name: 'armForward', value: u.armForward / u.chestDepth, mean: 0.42, spread: 0.06 },
    { name: 'plate', value: u.plateHalfBreadth / u.chestHalfBreadth, mean: 1.1, spread: 0.08 },
    own('backHollow'),
    { ...own('lean'), mean: given.usualLean },
    { ...own('napeForward'), mean: given.usualNape },
    own('sideNeckBelow'),
  ];
}

/** A frame that gives back its measurements as nearly as a likely one can. */
export interface Closed {
  readonly given: FormGiven;
  readonly unknowns: Unknowns;
  readonly frame: Frame;
  readonly leanings: readonly Leaning[];
  readonly steps: number;
}

const named = (values: ArrayLike<number>): Unknowns =>
  Object.fromEntries(unknownNames.map((name, i) => [name, values[i] as number])) as Record<
    UnknownName,
    number
  >;

/** More steps than any body tried has needed. */
const mostSteps = 25;

/**
 * The likeliest frame of those whose tapes give back the measurements: least squares of what the tapes miss, weighed as
 * good as exact, and of how far the form lies from what is likely, in standard deviations. Where no frame can do it, what
 * is missed is shared out. Pure and deterministic.
 */
export function closed(body: Pick<Body, 'size' | 'known'>, posture: BodyPosture): Closed {
  const { size } = body;
  const likely = likelyShape(body);
  const given = givenOf(body, likely, posture);
  const at0 = starts(given);
  const column = (of: 'from' | 'scale' | 'least' | 'most'): Float64Array =>
    Float64Array.from(unknownNames, (name) => at0[name][of]);
  const leaningCount = 16;
  let unknowns = column('from');
  let steps = 0;
  const approach = (tapeError: number): void => {
    const answer = leastSquares(
      {
        start: unknowns,
        scale: column('scale'),
        least: column('least'),
        most: column('most'),
        residuals: tapeNames.length + leaningCount,
        evaluate: (values, into) => {
          const tried = named(values);
          const frame = frameOf(given, tried);
          const tapes = layTapes(frame, tapeRings(frame));
          let i = 0;
          for (const name of tapeNames) into[i++] = (tapes[name].length - size[name]) / tapeError;
          for (const { value, mean, spread } of leaningsOf(frame, tried, given))
            into[i++] = (value - mean) / spread;
        },
      },
      mostSteps,
    );
    unknowns = answer.unknowns;
    steps += answer.steps;
  };
  const misses = (): boolean => {
    const frame = frameOf(given, named(unknowns));
    const tapes = layTapes(frame, tapeRings(frame));
    return tapeNames.some((name) => Math.abs(tapes[name].length - size[name]) > tapeBounds[name]);
  };
  for (const tapeError of tapeErrors) approach(tapeError);
  for (const tapeError of againErrors) if (misses()) approach(tapeError);
  const found = named(unknowns);
  const frame = frameOf(given, found);
  return { given, unknowns: found, frame, leanings: leaningsOf(frame, found, given), steps };
}

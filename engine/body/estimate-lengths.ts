import { expectedFrontExcess } from './bust.ts';
import type { Expected } from './conditional.ts';
import { type Essential, estimated, type FoundSize, type FoundSizes } from './found.ts';
import { backNeckRise } from './neck.ts';
import { statisticsOf } from './survey.ts';
import type { AskedSurvey } from './survey-knowledge.ts';

/** Lengths up and down the body, which must come in the right order. */
interface Lengths {
  readonly shoulderSlope: FoundSize;
  readonly scyeDepth: FoundSize;
  readonly neckShoulderPointToWaist: FoundSize;
  readonly neckShoulderPointToBustPoint: FoundSize;
  readonly waistHeight: FoundSize;
  readonly waistToHip: FoundSize;
}

/** What the lengths are estimated from, given or estimated before. */
type Before = FoundSizes &
  Essential & {
    readonly stature: FoundSize;
    readonly neckBaseGirth: FoundSize;
    readonly shoulderLength: FoundSize;
    readonly underBustGirth: FoundSize;
    readonly bustPointWidth: FoundSize;
  };

/**
 * Estimates lengths from the survey's heights, each length fitting those that were given: underarm above bust
 * level above waist, and the front as much longer than the back as the cup asks.
 */
export function estimateLengths(given: FoundSizes, before: Before, { expect, basis }: AskedSurvey): Lengths {
  const fallTo = (height: 'acromionHeight' | 'axillaHeight' | 'bustPointHeight'): Expected =>
    expect([
      ['backNeckPointHeight', 1],
      [height, -1],
    ]);
  const scyeDepth = estimateScyeDepth(given, before, fallTo('axillaHeight'), basis);
  const bustFall = fallTo('bustPointHeight');
  const neckHeight = expect([['backNeckPointHeight', 1]]);
  const waistHeight = given.waistHeight ?? estimateWaistHeight(before, neckHeight, basis);
  return {
    shoulderSlope: estimateSlope(before, fallTo('acromionHeight'), basis),
    scyeDepth,
    ...estimateFront(given, before, scyeDepth.value, bustFall, basis),
    waistHeight,
    waistToHip: estimateWaistToHip(waistHeight.value, expect([['hipHeight', 1]]), basis),
  };
}

/** The side neck lies this far below the back neck point, as heights go: 140.80 less 139.65 cm (1988 means). */
const sideNeckBelow = 11.5;

const [leastSlope, greatestSlope] = [8, 35].map((degrees) => (degrees * Math.PI) / 180) as [number, number];

function estimateSlope({ shoulderLength }: Before, fall: Expected, basis: string): FoundSize {
  const sine = (fall.mean - sideNeckBelow) / shoulderLength.value;
  const slope = Math.asin(clamp(sine, Math.sin(leastSlope), Math.sin(greatestSlope)));
  return estimated(slope, `${basis}; heights of shoulder point and neck`, fall.spread / shoulderLength.value);
}

/** Down the surface the mean scye depth is this (NATICK/TR-89/044, 1988), mm: longer than the fall in height. */
export const meanScyeDepth = 185.7;
export const meanScyeFall = statisticsOf('backNeckPointHeight').mean - statisticsOf('axillaHeight').mean;

/** The most an estimated scye depth takes of the back length; 0.506 in the 1988 means. */
const scyeShareLimit = 0.62;

function estimateScyeDepth(given: FoundSizes, before: Before, fall: Expected, basis: string): FoundSize {
  if (given.scyeDepth) return given.scyeDepth;
  const back = before.backNeckPointToWaist.value;
  const bustLevel = measuredBustLevel(given, back);
  const limit = Math.min(scyeShareLimit * back, bustLevel === undefined ? back : bustLevel - aboveBust(back));
  const depth = meanScyeDepth + fall.mean - meanScyeFall;
  return estimated(Math.min(depth, limit), `${basis}; level of the 1988 survey`, fall.spread);
}

/** The bust level lies at least this far below the underarm and above the waist, for a back length, mm. */
const aboveBust = (back: number): number => Math.min(25, 0.07 * back);
const belowBust = (back: number): number => Math.min(60, 0.17 * back);

/** A length over the shoulder blade is this much longer than the fall in height (judged from the 1988 means). */
export const overBlade = 1.02;

/** How well practice foretells the front length from the cup, mm; judged. */
export const frontSpread = 20;

/** How far below the back neck point the bust level lies, where both front lengths were measured, mm. */
function measuredBustLevel(given: FoundSizes, back: number): number | undefined {
  const { neckShoulderPointToWaist: toWaist, neckShoulderPointToBustPoint: toBust } = given;
  return toWaist && toBust ? back - (toWaist.value - toBust.value) : undefined;
}

/**
 * The two front lengths. The bust level they give is the survey's; the length to the waist is what the cup asks.
 * Where only the length to the bust point is known, it says their sum: what it says otherwise is shared equally.
 */
function estimateFront(
  given: FoundSizes,
  before: Before,
  scyeDepth: number,
  bustFall: Expected,
  basis: string,
): Pick<Lengths, 'neckShoulderPointToWaist' | 'neckShoulderPointToBustPoint'> {
  const { bustGirth, underBustGirth, bustPointWidth, neckBaseGirth } = before;
  const back = before.backNeckPointToWaist.value;
  const withinLevels = (level: number): number =>
    clamp(level, scyeDepth + aboveBust(back), back - belowBust(back));
  const levelExpected = withinLevels(overBlade * bustFall.mean);
  const excess = expectedFrontExcess(
    bustGirth.value,
    bustGirth.value - underBustGirth.value,
    bustPointWidth.value,
  );
  const toWaistExpected = back + backNeckRise(neckBaseGirth.value) + excess;

  const toBustGiven = given.neckShoulderPointToBustPoint?.value;
  const surplus = toBustGiven === undefined ? 0 : toBustGiven - (toWaistExpected - back + levelExpected);
  const level = withinLevels(levelExpected + surplus / 2);
  const toWaist =
    given.neckShoulderPointToWaist?.value ??
    (toBustGiven === undefined ? toWaistExpected : toBustGiven + back - level);
  return {
    neckShoulderPointToWaist: estimated(
      toWaist,
      toBustGiven === undefined
        ? 'from back neck point to waist, neck base girth and cup: common practice'
        : `from neck shoulder point to bust point; bust level ${basis}`,
      frontSpread,
    ),
    neckShoulderPointToBustPoint: estimated(
      toWaist - back + level,
      `from neck shoulder point to waist; bust level ${basis}`,
      given.neckShoulderPointToWaist ? bustFall.spread : Math.hypot(bustFall.spread, frontSpread),
    ),
  };
}

/** The back length is this much longer than its fall in height: 36.73 by 35.15 cm in 1988, 42.54 by 41.55 in 2012. */
export const overBack = 1.035;

/** The waist lies no higher than this share of the stature; 0.648 in the 1988 means. */
const waistShareLimit = 0.72;

function estimateWaistHeight(
  { stature, backNeckPointToWaist }: Before,
  neck: Expected,
  basis: string,
): FoundSize {
  const height = neck.mean - backNeckPointToWaist.value / overBack;
  return estimated(
    Math.min(height, waistShareLimit * stature.value),
    `from back neck point to waist, and ${basis}`,
    neck.spread,
  );
}

function estimateWaistToHip(waistHeight: number, hip: Expected, basis: string): FoundSize {
  const fall = overBlade * (waistHeight - hip.mean);
  return estimated(clamp(fall, 100, 320), `from waist height, and ${basis}`, hip.spread);
}

const clamp = (value: number, least: number, most: number): number => Math.min(Math.max(value, least), most);

import type { MeasurementName } from './body.ts';

/** Between which values a measurement is likely, and between which it is possible at all. mm, radians. */
export interface Limits {
  readonly likely: readonly [number, number];
  readonly possible: readonly [number, number];
}

const mm = (likely: readonly [number, number], possible: readonly [number, number]): Limits => ({
  likely,
  possible,
});

const degrees = (likely: readonly [number, number], possible: readonly [number, number]): Limits => {
  const radians = ([least, most]: readonly [number, number]) =>
    [(least * Math.PI) / 180, (most * Math.PI) / 180] as const;
  return { likely: radians(likely), possible: radians(possible) };
};

/**
 * Both columns are judgement, not published: likely reaches well beyond the 1st and 99th percentiles of three
 * surveys (NATICK/TR-89/044, 1988; NATICK/TR-15/007, 2014; 600 women of the Spanish survey, 2008), possible
 * beyond anyone who is known to have been measured.
 */
export const limitsOf: Readonly<Record<MeasurementName, Limits>> = {
  bustGirth: mm([650, 1700], [500, 2200]),
  underBustGirth: mm([550, 1500], [420, 2000]),
  upperChestGirth: mm([620, 1600], [480, 2100]),
  waistGirth: mm([500, 1650], [400, 2200]),
  hipGirth: mm([700, 1750], [550, 2400]),
  neckBaseGirth: mm([280, 550], [220, 750]),
  upperArmGirth: mm([180, 600], [130, 850]),
  armscyeGirth: mm([280, 700], [200, 950]),
  wristGirth: mm([115, 230], [80, 320]),
  shoulderLength: mm([80, 200], [50, 260]),
  shoulderSlope: degrees([5, 40], [0, 50]),
  backNeckPointToWaist: mm([280, 550], [220, 700]),
  neckShoulderPointToBustPoint: mm([180, 420], [120, 600]),
  neckShoulderPointToWaist: mm([300, 650], [220, 850]),
  bustPointWidth: mm([130, 320], [80, 450]),
  acrossBackWidth: mm([250, 520], [180, 700]),
  acrossFrontWidth: mm([230, 500], [160, 650]),
  scyeDepth: mm([130, 300], [90, 400]),
  waistToHip: mm([100, 320], [50, 450]),
  waistHeight: mm([750, 1300], [500, 1600]),
  stature: mm([1350, 2000], [800, 2400]),
};

/** A child's measurements may be as small as this share of what is possible for a woman; judgement. */
export const childShare = 0.5;

export const isWithin = (value: number, [least, most]: readonly [number, number]): boolean =>
  value >= least && value <= most;

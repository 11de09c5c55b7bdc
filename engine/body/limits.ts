import type { MeasurementName } from './body.ts';

export type Span = readonly [least: number, most: number];

/** Where a measurement lies, mm or radians: for nearly all women, for hardly any, for nobody. */
export interface MeasurementLimits {
  /** From about the 5th to the 95th percentile, rounded outward. Missing where no survey was read. */
  readonly usual?: Span;
  readonly likely: Span;
  readonly possible: Span;
}

const radians = (degrees: number): number => (degrees * Math.PI) / 180;

/**
 * The usual spans come from the percentiles of three surveys (NATICK/TR-89/044, 1988; NATICK/TR-15/007, 2014; 600
 * women of the Spanish survey, R package Anthropometry 1.20), but for the slope, which is judgement. So are the
 * likely ones, well beyond the 1st and 99th percentiles, and the possible ones, beyond anyone known.
 */
export const limitsOf: Readonly<Record<MeasurementName, MeasurementLimits>> = {
  bustGirth: { usual: [780, 1220], likely: [650, 1700], possible: [400, 2500] },
  underBustGirth: { usual: [660, 1050], likely: [550, 1500], possible: [340, 2300] },
  upperChestGirth: { likely: [620, 1600], possible: [380, 2400] },
  waistGirth: { usual: [600, 1150], likely: [500, 1650], possible: [330, 2500] },
  hipGirth: { usual: [840, 1280], likely: [700, 1750], possible: [430, 2700] },
  neckBaseGirth: { usual: [320, 420], likely: [280, 550], possible: [200, 800] },
  upperArmGirth: { usual: [240, 370], likely: [180, 600], possible: [110, 950] },
  armscyeGirth: { likely: [280, 700], possible: [180, 1100] },
  elbowGirth: { likely: [170, 420], possible: [105, 650] },
  wristGirth: { likely: [115, 230], possible: [75, 350] },
  shoulderLength: { usual: [110, 165], likely: [80, 200], possible: [50, 280] },
  shoulderSlope: {
    usual: [radians(15), radians(30)],
    likely: [radians(5), radians(40)],
    possible: [0, radians(50)],
  },
  outerArmLength: { likely: [440, 740], possible: [260, 950] },
  backNeckPointToWaist: { usual: [320, 470], likely: [280, 550], possible: [210, 750] },
  neckShoulderPointToBustPoint: { usual: [230, 310], likely: [180, 420], possible: [120, 650] },
  neckShoulderPointToWaist: { likely: [300, 650], possible: [210, 950] },
  bustPointWidth: { likely: [130, 320], possible: [70, 480] },
  acrossBackWidth: { likely: [250, 520], possible: [160, 750] },
  acrossFrontWidth: { likely: [230, 500], possible: [150, 700] },
  scyeDepth: { usual: [160, 220], likely: [130, 300], possible: [90, 420] },
  waistToHip: { likely: [100, 320], possible: [50, 480] },
  waistHeight: { likely: [750, 1300], possible: [500, 1650] },
  stature: { usual: [1500, 1760], likely: [1350, 2000], possible: [800, 2500] },
};

/** A child's measurements may be as small as this share of what is possible for a woman; judgement. */
export const childShare = 0.6;

export const isWithin = (value: number, [least, most]: Span): boolean => value >= least && value <= most;

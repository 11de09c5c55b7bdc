import type { MeasurementName } from '../body.ts';

/**
 * How far off one reading of a tape usually is: one standard deviation, mm; the slope's in radians. A centimetre for
 * most girths and lengths, less where the tape is short or the bone is near, more where it must be held level or the
 * place is soft. Common practice, no source.
 */
export const usualError: Readonly<Record<MeasurementName, number>> = {
  bustGirth: 12,
  underBustGirth: 10,
  upperChestGirth: 12,
  waistGirth: 10,
  hipGirth: 12,
  neckBaseGirth: 8,
  upperArmGirth: 7,
  armscyeGirth: 10,
  elbowGirth: 6,
  wristGirth: 4,
  shoulderLength: 7,
  shoulderSlope: (3 * Math.PI) / 180,
  outerArmLength: 10,
  backNeckPointToWaist: 10,
  neckShoulderPointToBustPoint: 10,
  neckShoulderPointToWaist: 12,
  bustPointWidth: 8,
  acrossBackWidth: 10,
  acrossFrontWidth: 10,
  scyeDepth: 10,
  waistToHip: 12,
  waistHeight: 12,
  stature: 10,
};

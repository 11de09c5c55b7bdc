import type { MeasurementName } from '../engine/body/body.ts';

/**
 * The measurements that shape each part of a garment, in one styling or another: moved alone, such a measurement
 * changes a piece or what is bought for it. Held to the drafted pieces by a test.
 */

export const trialShapedBy = [
  'bustGirth',
  'underBustGirth',
  'upperChestGirth',
  'waistGirth',
  'neckBaseGirth',
  'armscyeGirth',
  'shoulderLength',
  'shoulderSlope',
  'backNeckPointToWaist',
  'neckShoulderPointToBustPoint',
  'neckShoulderPointToWaist',
  'bustPointWidth',
  'acrossBackWidth',
  'acrossFrontWidth',
  'scyeDepth',
] as const satisfies readonly MeasurementName[];

/** A bodice is drawn on the same foundation, and its style on that. */
export const bodiceShapedBy = trialShapedBy;

export const sleeveShapedBy = [
  'upperArmGirth',
  'elbowGirth',
  'wristGirth',
  'outerArmLength',
] as const satisfies readonly MeasurementName[];

export const skirtShapedBy = [
  'waistGirth',
  'hipGirth',
  'waistToHip',
  'waistHeight',
  'stature',
] as const satisfies readonly MeasurementName[];

import type { MeasurementName } from '../engine/body/body.ts';

/**
 * The measurements that shape each part of a garment, in one styling or another: moved alone, such a measurement
 * changes a piece or what is bought for it. Held to the drafted pieces by a test.
 */

export const bodiceShapedBy = [
  'bustGirth',
  'underBustGirth',
  'waistGirth',
  'neckBaseGirth',
  'shoulderSlope',
  'backNeckPointToWaist',
  'neckShoulderPointToBustPoint',
  'neckShoulderPointToWaist',
  'bustPointWidth',
  'scyeDepth',
] as const satisfies readonly MeasurementName[];

export const sleeveShapedBy = ['upperArmGirth', 'elbowGirth'] as const satisfies readonly MeasurementName[];

export const skirtShapedBy = [
  'waistGirth',
  'hipGirth',
  'waistToHip',
  'waistHeight',
  'stature',
] as const satisfies readonly MeasurementName[];

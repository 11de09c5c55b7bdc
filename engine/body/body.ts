import type { FittingChange } from './fitting.ts';

/**
 * The measurements of a body, in the terms of ISO 8559-1:2017 written as one word. Girths, widths and lengths
 * are in millimetres, the shoulder slope in radians below the horizontal.
 */
export const measurementNames = [
  'bustGirth',
  'underBustGirth',
  'upperChestGirth',
  'waistGirth',
  'hipGirth',
  'neckBaseGirth',
  'upperArmGirth',
  'armscyeGirth',
  'elbowGirth',
  'wristGirth',
  'shoulderLength',
  'shoulderSlope',
  'outerArmLength',
  'backNeckPointToWaist',
  'neckShoulderPointToBustPoint',
  'neckShoulderPointToWaist',
  'bustPointWidth',
  'acrossBackWidth',
  'acrossFrontWidth',
  'scyeDepth',
  'waistToHip',
  'waistHeight',
  'stature',
] as const;

export type MeasurementName = (typeof measurementNames)[number];

/** Those measurements that are known, as numbers: lengths in mm where nothing else is said. */
export type Sizes = Readonly<Partial<Record<MeasurementName, number>>>;

/** Where a number came from. A spread is one standard deviation of the likely error, in the number's unit. */
export type Provenance =
  | { readonly from: 'measured' }
  /** Measured, and moved to the most likely body behind numbers that contradict each other. */
  | {
      readonly from: 'reconciled';
      readonly written: number;
      readonly usualError: number;
      readonly suspicion: 'misread' | 'first to blame' | 'one of two' | 'none';
      readonly orElse: readonly MeasurementName[];
    }
  | { readonly from: 'derived'; readonly basis: string }
  | { readonly from: 'estimated'; readonly basis: string; readonly spread: number };

/** One person, validated and complete: every measurement has a number and says where it came from. */
export interface Body {
  readonly name: string;
  /** A child's clothes carry no drawstring (EN 14682, 16 CFR 1120). */
  readonly wearer: 'adult' | 'child';
  readonly size: Readonly<Record<MeasurementName, number>>;
  readonly known: Readonly<Record<MeasurementName, Provenance>>;
  /** What was found at a fitting; the sizes are as they were measured before it. */
  readonly fitting: readonly FittingChange[];
}

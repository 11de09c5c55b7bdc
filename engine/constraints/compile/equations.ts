/** What a residual is measured in. */
export type ResidualUnit = 'mm' | 'rad' | '1/mm';

/**
 * A relation or wish made ready for computing: some residuals, each the sum of what its elements give, with exact
 * derivatives.
 */
export interface Equations {
  /** The relation or wish this came from. */
  readonly name: string;
  /** `zero`: every residual must vanish. `not negative`: none may be below zero. `least`: squares are made least. */
  readonly goal: 'zero' | 'not negative' | 'least';
  readonly unit: ResidualUnit;
  /** The factor that makes a residual comparable with millimetres. */
  readonly scale: number;
  readonly rows: number;
  readonly elements: readonly Element[];
}

/** A function of a few slots of the vector of values: a part of some residuals that depends on no other slot. */
export interface Element {
  /** Slots the element depends on. The same slot may come twice; its derivatives then add. */
  readonly slots: readonly number[];
  /** Whether the derivatives are the same everywhere. */
  readonly linear: boolean;
  /**
   * Writes the values at `x` into `values`, and their derivatives into `jacobian`, row by row: the derivative of
   * value r by slots[k] stands at r * slots.length + k. Both are overwritten.
   */
  readonly evaluate: (x: Float64Array, values: Float64Array, jacobian: Float64Array) => void;
  /**
   * Writes the second derivatives at `x` of the sum of the values times `weights`: by slots[k] and slots[m], m <= k,
   * at k * slots.length + m. May be left out: they are then taken as differences of the first ones, which takes some
   * five times as long.
   */
  readonly curve?: (x: Float64Array, weights: Float64Array, into: Float64Array) => void;
}

/** Angles are compared with lengths by the move of the end of an arm this long (mm): about a handle's length. */
export const ARM = 100;

/**
 * The factor from a unit to millimetres at arm's length. A curvature counts by how far it bows an arm off its chord:
 * arm squared over eight.
 */
export const SCALE: Readonly<Record<ResidualUnit, number>> = { mm: 1, rad: ARM, '1/mm': (ARM * ARM) / 8 };

/** No curvature counts for less than this (mm squared), however tight: it could not be told from rounding. */
export const LEAST_CURVATURE_SCALE = 100;

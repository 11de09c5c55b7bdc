import type { Curve } from '../geometry/curve.ts';
import type { Point } from '../geometry/point.ts';

/** Where the unknowns of a sketch lie, by the names it gives them. */
export interface Found {
  readonly points: Readonly<Record<string, Point>>;
  readonly scalars: Readonly<Record<string, number>>;
}

/** The engine's answer. Names are those of the sketch. */
export interface Solution extends Found {
  /** `solved`: every relation holds. `conflict`: some relations contradict each other. `stalled`: neither shown. */
  readonly status: 'solved' | 'conflict' | 'stalled';
  readonly curves: Readonly<Record<string, Curve>>;
  /** How far each relation is from holding, in its own unit; bounds of scalars appear as `bounds of <scalar>`. */
  readonly residuals: readonly Residual[];
  /** Steps taken, summed over the independent parts of the sketch. */
  readonly iterations: number;
}

export interface Residual {
  readonly relation: string;
  readonly unit: 'mm' | 'rad' | '1/mm';
  readonly error: number;
}

/** What can be said of a sketch's relations at a solution, by rank of their Jacobian. */
export interface Diagnosis {
  /** Unknowns left free by the relations. */
  readonly degreesOfFreedom: number;
  /** Relations that say nothing new and agree with the others. */
  readonly redundant: readonly string[];
  /** A smallest set of relations that cannot all hold. Empty when all do. */
  readonly conflicting: readonly string[];
  /** Points and scalars that the relations do not fix. */
  readonly free: readonly string[];
  /** Those of them that no wish holds either: they stay where they were guessed. */
  readonly adrift: readonly string[];
}

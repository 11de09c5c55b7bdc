import type { Point } from '../geometry/point.ts';
import type { Relation, Wish } from './relations.ts';

/**
 * What a draft hands to the constraint engine: unknowns, what must hold between them, and what would be nice.
 * Plain data joined by names, so that every answer can speak in the draft's own words.
 */
export interface Sketch {
  readonly points: ReadonlyMap<string, SketchPoint>;
  readonly scalars: ReadonlyMap<string, SketchScalar>;
  readonly curves: ReadonlyMap<string, SketchCurve>;
  /** Must hold, to 1e-6 mm and 1e-8 rad. */
  readonly relations: readonly Relation[];
  /** Fulfilled as well as the relations allow: the weighted sum of squares is made least. */
  readonly wishes: readonly Wish[];
}

/** A point with its first guess. `free` names the coordinates the engine may change. */
export interface SketchPoint {
  readonly at: Point;
  readonly free: 'both' | 'x' | 'y' | 'none';
}

/** A length (mm) or an angle (radians) with its first guess and, where it has them, its bounds. */
export interface SketchScalar {
  readonly at: number;
  readonly unit: 'mm' | 'rad';
  readonly free: boolean;
  readonly min?: number;
  readonly max?: number;
}

/** A line between two named points, or a cubic whose handles are given by named angles and lengths. */
export type SketchCurve = SketchLine | SketchCubic;

export interface SketchLine {
  readonly kind: 'line';
  readonly from: string;
  readonly to: string;
}

/**
 * handle1 = from + startLength * heading(startAngle); handle2 = to - endLength * heading(endAngle).
 * Both angles are those of the direction of travel, so two curves that share the angle's name where they
 * meet are tangent-continuous by construction.
 */
export interface SketchCubic {
  readonly kind: 'cubic';
  readonly from: string;
  readonly to: string;
  readonly startAngle: string;
  readonly startLength: string;
  readonly endAngle: string;
  readonly endLength: string;
}

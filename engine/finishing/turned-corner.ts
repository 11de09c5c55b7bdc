import type { Curve } from '../geometry/curve.ts';
import type { Point } from '../geometry/point.ts';
import type { Vector } from '../geometry/vector.ts';
import type { EdgeAllowance } from './edge-allowance.ts';

/** A corner turned: what is left of the two parallels, and the corners of the cutting line between them. */
export interface TurnedCorner {
  readonly before: readonly Curve[];
  readonly between: readonly Point[];
  readonly after: readonly Curve[];
  /** How far the allowance of the edge that runs through reaches beyond the seam's end, mm, if it ends square. */
  readonly reach?: number;
}

/** The edge that runs through a corner, heading beyond it, and its outward normal there. */
export interface Through {
  readonly along: Vector;
  readonly outward: Vector;
  readonly edge: EdgeAllowance;
}

/** The edge that crosses it, heading away from the corner. */
export interface Across {
  readonly along: Vector;
  readonly edge: EdgeAllowance;
}

import type { Point } from './point.ts';

/** A straight line from one point to another. */
export interface Line {
  readonly kind: 'line';
  readonly from: Point;
  readonly to: Point;
}

/** A cubic Bezier curve with its two handles. */
export interface Cubic {
  readonly kind: 'cubic';
  readonly from: Point;
  readonly handle1: Point;
  readonly handle2: Point;
  readonly to: Point;
}

/** Every drawn line of a pattern is one of these two. */
export type Curve = Line | Cubic;

/** A chain of curves, each starting where the last one ended, known by a name such as `armhole`. */
export interface Edge {
  readonly name: string;
  readonly curves: readonly Curve[];
}

/** A closed chain of edges. Outlines run clockwise as drawn, so the cloth lies on the right of the pen. */
export type Outline = readonly Edge[];

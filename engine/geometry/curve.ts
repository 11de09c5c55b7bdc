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

/**
 * A curve with other ends, its handles where they were. Copies made by spreading are objects of another kind to V8, however
 * alike: with more than four kinds of curves about, all that reads one would have to look its fields up.
 */
export const withEnds = (curve: Curve, from: Point, to: Point): Curve =>
  curve.kind === 'line'
    ? { kind: 'line', from, to }
    : { kind: 'cubic', from, handle1: curve.handle1, handle2: curve.handle2, to };

/** A chain of curves, each starting where the last one ended, known by a name such as `armhole`. */
export interface Edge {
  readonly name: string;
  readonly curves: readonly Curve[];
}

/** A closed chain of edges. Outlines run clockwise as drawn, so the cloth lies on the right of the pen. */
export type Outline = readonly Edge[];

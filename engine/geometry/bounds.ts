import { Bezier } from 'bezier-js';
import type { Curve } from './curve.ts';
import { rootsBetween01 } from './roots.ts';

/** An upright rectangle (mm). */
export interface Bounds {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/** The smallest upright rectangle about some curves. Exact. Empty (left = Infinity) for no curves. */
export function boundingBox(curves: readonly Curve[]): Bounds {
  let left = Infinity;
  let right = -Infinity;
  let top = Infinity;
  let bottom = -Infinity;
  const take = (x: number, y: number): void => {
    left = Math.min(left, x);
    right = Math.max(right, x);
    top = Math.min(top, y);
    bottom = Math.max(bottom, y);
  };
  for (const curve of curves) {
    take(curve.from.x, curve.from.y);
    take(curve.to.x, curve.to.y);
    if (curve.kind === 'line') continue;
    const { x, y } = new Bezier([curve.from, curve.handle1, curve.handle2, curve.to]).bbox();
    take(x.min, y.min);
    take(x.max, y.max);
  }
  return { left, right, top, bottom };
}

/** The upright rectangle about a curve's control points: it holds the curve, with room to spare, and costs little. */
export function controlBox(curve: Curve): Bounds {
  const { from, to } = curve;
  const handle1 = curve.kind === 'line' ? from : curve.handle1;
  const handle2 = curve.kind === 'line' ? to : curve.handle2;
  return {
    left: Math.min(from.x, handle1.x, handle2.x, to.x),
    right: Math.max(from.x, handle1.x, handle2.x, to.x),
    top: Math.min(from.y, handle1.y, handle2.y, to.y),
    bottom: Math.max(from.y, handle1.y, handle2.y, to.y),
  };
}

/** The smallest upright rectangle about some others; empty (left = Infinity) for none. */
export function boundsAbout(all: readonly Bounds[]): Bounds {
  let [left, right, top, bottom] = [Infinity, -Infinity, Infinity, -Infinity];
  for (const bounds of all) {
    left = Math.min(left, bounds.left);
    right = Math.max(right, bounds.right);
    top = Math.min(top, bounds.top);
    bottom = Math.max(bottom, bounds.bottom);
  }
  return { left, right, top, bottom };
}

/** A rectangle with a margin added all round (mm). */
export const grown = ({ left, right, top, bottom }: Bounds, margin: number): Bounds => ({
  left: left - margin,
  right: right + margin,
  top: top - margin,
  bottom: bottom + margin,
});

type Coordinates = { readonly x: number; readonly y: number };

/** Where a cubic is farthest along one axis between its ends; none when its handles lie between its ends. */
export function turningParameters(
  from: Coordinates,
  handle1: Coordinates,
  handle2: Coordinates,
  to: Coordinates,
  axis: 'x' | 'y',
): number[] {
  return rootsBetween01([
    handle1[axis] - from[axis],
    handle2[axis] - handle1[axis],
    to[axis] - handle2[axis],
  ]);
}

/** Whether two rectangles share a point, their edges counted. */
export const boundsMeet = (a: Bounds, b: Bounds): boolean =>
  a.left <= b.right && b.left <= a.right && a.top <= b.bottom && b.top <= a.bottom;

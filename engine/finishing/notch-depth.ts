import type { Curve } from '../geometry/curve.ts';
import { edgeLength } from '../geometry/edge.ts';

/**
 * How deep a notch is cut into the allowance, mm: the length of its deepest slit, which begins at the cutting line. A
 * wedge is a chain of several lines that stands beyond the cutting line, and cuts nothing.
 */
export const notchDepth = (strokes: readonly (readonly Curve[])[]): number =>
  Math.max(0, ...strokes.map((curves) => (curves.length === 1 ? edgeLength({ name: 'slit', curves }) : 0)));

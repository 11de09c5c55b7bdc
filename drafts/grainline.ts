import { between, type Point } from '../engine/geometry/point.ts';
import type { Piece } from '../engine/pattern/piece.ts';

/** A grainline leaves this share of the way free at either end, so that it is clear of the allowances. */
const FREE_ENDS = 0.15;

/** The grainline on the way from `top` to `bottom`. */
export const grainline = (top: Point, bottom: Point): Piece['grain'] => ({
  from: between(top, bottom, FREE_ENDS),
  to: between(top, bottom, 1 - FREE_ENDS),
});

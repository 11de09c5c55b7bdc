import type { Edge } from '../engine/geometry/curve.ts';
import { outlineCrossings } from '../engine/geometry/intersect.ts';
import { between, moved, type Point } from '../engine/geometry/point.ts';
import { scaled, type Vector } from '../engine/geometry/vector.ts';
import type { Piece } from '../engine/pattern/piece.ts';

/** A grainline leaves this share of the way free at either end, so that it is clear of the allowances. */
const FREE_ENDS = 0.15;

/** The grainline on the way from `top` to `bottom`. */
export const grainline = (top: Point, bottom: Point): Piece['grain'] => ({
  from: between(top, bottom, FREE_ENDS),
  to: between(top, bottom, 1 - FREE_ENDS),
});

/** The grainline through a place inside a piece, along a heading of length one, from edge to edge. */
export function grainThrough(edges: readonly Edge[], through: Point, heading: Vector): Piece['grain'] {
  const along = outlineCrossings(edges, { through, heading }).map((crossing) => crossing.along);
  const from = Math.max(...along.filter((at) => at <= 0));
  const to = Math.min(...along.filter((at) => at >= 0));
  return grainline(moved(through, scaled(heading, from)), moved(through, scaled(heading, to)));
}

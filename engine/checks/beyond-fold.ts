import { flatMapped } from '../flat-mapped.ts';
import type { Curve, Edge } from '../geometry/curve.ts';
import { type Point, vectorBetween } from '../geometry/point.ts';
import { unit, type Vector } from '../geometry/vector.ts';
import type { Issue } from '../issue.ts';
import type { Piece } from '../pattern/piece.ts';
import { inMm } from '../text/figure.ts';

/** Beyond a fold there is no cloth: a cutting line that goes on there, by more than `bound` (mm), cannot be cut. */
export const beyondFoldFaults = (piece: Piece, cut: Edge, bound: number): Issue[] =>
  flatMapped(piece.edges, ({ name, turn, curves }): Issue[] => {
    const [first, last] = [curves[0], curves.at(-1)];
    if (turn !== 'fold' || !first || !last) return [];
    const along = unit(vectorBetween(first.from, last.to));
    let past = Number.NEGATIVE_INFINITY;
    for (const curve of cut.curves) past = Math.max(past, pastLine(curve, first.from, along));
    return past <= bound
      ? []
      : [
          {
            code: 'cut-beyond-fold',
            severity: 'error',
            path: `${piece.name}/${name}`,
            message: `The cutting line of ${piece.name} goes ${inMm(past)} beyond its fold "${name}", where there is no cloth.`,
            value: past,
            limits: { max: bound, unit: 'mm' },
          },
        ];
  });

/** How far a curve goes beyond a line at the most, mm: it never leaves the polygon of its control points. */
function pastLine(curve: Curve, through: Point, along: Vector): number {
  // The cloth lies to the right of an outline that runs clockwise as drawn.
  const past = ({ x, y }: Point): number => -(along.x * (y - through.y) - along.y * (x - through.x));
  const ends = Math.max(past(curve.from), past(curve.to));
  return curve.kind === 'line' ? ends : Math.max(ends, past(curve.handle1), past(curve.handle2));
}

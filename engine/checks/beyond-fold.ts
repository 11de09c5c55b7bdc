import type { Curve, Edge } from '../geometry/curve.ts';
import { vectorBetween } from '../geometry/point.ts';
import { cross, unit } from '../geometry/vector.ts';
import type { Issue } from '../issue.ts';
import type { Piece } from '../pattern/piece.ts';
import { inMm } from '../text/figure.ts';

/** Beyond a fold there is no cloth: a cutting line that goes on there, by more than `bound` (mm), cannot be cut. */
export const beyondFoldFaults = (piece: Piece, cut: Edge, bound: number): Issue[] =>
  piece.edges
    .filter(({ turn }) => turn === 'fold')
    .flatMap(({ name, curves }): Issue[] => {
      const [first, last] = [curves[0], curves.at(-1)];
      if (!first || !last) return [];
      const along = unit(vectorBetween(first.from, last.to));
      // The cloth lies to the right of an outline that runs clockwise as drawn.
      const past = Math.max(
        ...cut.curves.flatMap(cornersOf).map((corner) => -cross(along, vectorBetween(first.from, corner))),
      );
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

/** A curve never leaves the polygon of its control points. */
const cornersOf = (curve: Curve) =>
  curve.kind === 'line' ? [curve.from, curve.to] : [curve.from, curve.handle1, curve.handle2, curve.to];

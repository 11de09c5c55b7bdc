import type { Curve } from '../geometry/curve.ts';
import { nearestOnEdge } from '../geometry/nearest.ts';
import { between, moved, type Point, vectorBetween } from '../geometry/point.ts';
import { outward, scaled, unit, type Vector } from '../geometry/vector.ts';
import type { Mark, Piece } from '../pattern/piece.ts';

/** How far inside the fold its sign stands, and how far it keeps from marks, mm. */
const inset = 8;
const clearance = 4;

/** The stretches of a fold along which its sign may stand, as shares of the fold, best first. */
const stretches = [
  [0.2, 0.8],
  [0.1, 0.4],
  [0.6, 0.9],
] as const;

/** The trade's sign for a fold: a bracket along it whose ends point at the fold. */
export interface FoldSign {
  readonly curves: readonly Curve[];
  /** Where the bracket meets the fold. */
  readonly tips: readonly Point[];
  /** The heading from the cloth to the fold. */
  readonly towards: Vector;
}

/** The signs of the edges that lie on a fold of the cloth, where they cross no mark if that can be. */
export const foldSigns = ({ edges, marks }: Piece): readonly FoldSign[] =>
  edges.flatMap(({ turn, curves }) => {
    const from = curves[0]?.from;
    const to = curves.at(-1)?.to;
    if (turn !== 'fold' || !from || !to) return [];
    const signs = stretches.map(([start, end]) =>
      signAlong(between(from, to, start), between(from, to, end)),
    );
    return signs.find((sign) => isClear(sign, marks)) ?? signs[0] ?? [];
  });

const isClear = ({ curves }: FoldSign, marks: readonly Mark[]): boolean =>
  marks.every(({ at, length }) => nearestOnEdge({ curves }, at).distance > length / 2 + clearance);

function signAlong(start: Point, end: Point): FoldSign {
  const towards = outward(unit(vectorBetween(start, end)));
  const inwards = (p: Point): Point => moved(p, scaled(towards, -inset));
  return {
    curves: [
      { kind: 'line', from: start, to: inwards(start) },
      { kind: 'line', from: inwards(start), to: inwards(end) },
      { kind: 'line', from: inwards(end), to: end },
    ],
    tips: [start, end],
    towards,
  };
}

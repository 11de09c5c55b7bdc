import type { Curve } from '../geometry/curve.ts';
import { moved, type Point, vectorBetween } from '../geometry/point.ts';
import { outward, scaled, unit, type Vector } from '../geometry/vector.ts';
import type { PieceEdge } from '../pattern/piece.ts';

/** How far inside the fold its sign stands (mm), and what share of the fold it leaves free at either end. */
const inset = 8;
const freeEnds = 0.2;

/** The trade's sign for a fold: a bracket along it whose ends point at the fold. */
export interface FoldSign {
  readonly curves: readonly Curve[];
  /** Where the bracket meets the fold. */
  readonly tips: readonly Point[];
  /** The heading from the cloth to the fold. */
  readonly towards: Vector;
}

/** The signs of the edges that lie on a fold of the cloth. */
export const foldSigns = (edges: readonly PieceEdge[]): readonly FoldSign[] =>
  edges.flatMap(({ turn, curves }) => {
    const from = curves[0]?.from;
    const to = curves.at(-1)?.to;
    return turn === 'fold' && from && to ? [signAlong(from, to)] : [];
  });

function signAlong(from: Point, to: Point): FoldSign {
  const whole = vectorBetween(from, to);
  const towards = outward(unit(whole));
  const start = moved(from, scaled(whole, freeEnds));
  const end = moved(from, scaled(whole, 1 - freeEnds));
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

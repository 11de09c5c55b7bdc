import type { Solution } from '../engine/constraints/solution.ts';
import type { Curve } from '../engine/geometry/curve.ts';
import type { Point } from '../engine/geometry/point.ts';
import type { CutCount, InsideLine, PieceEdge } from '../engine/pattern/piece.ts';

/** The curves that the solved sketch gives these names, in order. A name it does not know is a draft's mistake. */
export function solvedCurves(solution: Solution, names: readonly string[]): readonly Curve[] {
  return names.map((name) => {
    const curve = solution.curves[name];
    if (!curve) throw new Error(`The sketch has no curve called "${name}".`);
    return curve;
  });
}

/** The point that the solved sketch gives this name. A name it does not know is a draft's mistake. */
export function solvedPoint(solution: Solution, name: string): Point {
  const at = solution.points[name];
  if (!at) throw new Error(`The sketch has no point called "${name}".`);
  return at;
}

/** A straight line as the only curve of an edge. */
export const straight = (from: Point, to: Point): readonly Curve[] => [{ kind: 'line', from, to }];

/** An edge that is sewn to another. */
export const seamEdge = (
  name: string,
  curves: readonly Curve[],
  allowance: number,
  rank: number,
  inflections = 0,
): PieceEdge => ({ name, curves, turn: 'seam', allowance, rank, inflections });

/** A level line across a piece, with what it has to say. */
export const levelLine = (name: string, from: Point, to: Point, text: string): InsideLine => ({
  name,
  kind: 'level',
  curves: straight(from, to),
  text,
});

/** A bodice panel is cut alike in self cloth and in lining. */
export const bodiceCut = (count: Omit<CutCount, 'cloth'>): readonly CutCount[] => [
  { cloth: 'self', ...count },
  { cloth: 'lining', ...count },
];

import type { Curve, Edge } from '../geometry/curve.ts';
import { edgeEnd, endDirection, startDirection } from '../geometry/edge.ts';
import { parallelCurve } from '../geometry/parallel-curve.ts';
import { distance, type Point } from '../geometry/point.ts';
import { COINCIDENCE } from '../geometry/tolerance.ts';
import type { Piece, PieceEdge } from '../pattern/piece.ts';
import { type AllowanceCorner, type EdgeAllowance, turnCorner } from './turn-corner.ts';
import { untangled } from './untangle.ts';

/** How far allowance ends must reach beyond the seam's end at least, mm, by the place of the edge that ends there. */
export type Reaches = ReadonlyMap<number, number>;

/**
 * The cutting line of a piece: every edge's true parallel at its own allowance, to `tolerance` (mm), with the
 * corners turned as `turnCorner` says and the loops that hollow curves and inward corners leave cut away. One
 * closed edge, clockwise like the stitching line. Folds are cut as they lie: the allowances of their neighbours
 * end on the fold, prolonged. `reaches` lengthens the ends of allowances for a neighbour's sake; see
 * `cuttingLines`.
 */
export const cuttingLine = (piece: Piece, tolerance: number, reaches: Reaches = new Map()): Edge =>
  aroundCorners(piece, allowancesOf(piece, tolerance), reaches);

/** The allowance of every edge of a piece, in order. */
export const allowancesOf = (piece: Piece, tolerance: number): readonly EdgeAllowance[] =>
  piece.edges.map((edge) => ({
    width: edge.allowance,
    rank: rankOf(edge),
    parallel: parallelOf(edge, tolerance),
  }));

/** The rank of an edge at its corners: a fold runs through whatever meets it. */
export const rankOf = (edge: PieceEdge): number =>
  edge.turn === 'fold' ? Number.NEGATIVE_INFINITY : edge.rank;

const parallelOf = (edge: PieceEdge, tolerance: number): readonly Curve[] =>
  edge.allowance === 0
    ? edge.curves
    : edge.curves.flatMap((curve) => parallelCurve(curve, edge.allowance, tolerance).curves);

/** The corner at the end of the edge at place `i`, undefined when there is no such edge. */
export function cornerAfter(
  piece: Piece,
  allowances: readonly EdgeAllowance[],
  i: number,
): AllowanceCorner | undefined {
  const next = (i + 1) % piece.edges.length;
  const [edge, follower] = [piece.edges[i], piece.edges[next]];
  const [before, after] = [allowances[i], allowances[next]];
  if (!edge || !follower || !before || !after) return undefined;
  return { at: edgeEnd(edge), into: endDirection(edge), outOf: startDirection(follower), before, after };
}

/** The cutting line from the allowances of a piece's edges. */
export function aroundCorners(piece: Piece, allowances: readonly EdgeAllowance[], reaches: Reaches): Edge {
  const sides = [...allowances];
  const between: (readonly Point[])[] = [];
  for (const [i] of piece.edges.entries()) {
    const corner = cornerAfter(piece, sides, i);
    if (!corner) continue;
    const turned = turnCorner(corner, reaches.get(i));
    sides[i] = { ...corner.before, parallel: turned.before };
    sides[(i + 1) % sides.length] = { ...corner.after, parallel: turned.after };
    between[i] = turned.between;
  }
  const stops = sides.flatMap(({ parallel }, i) => [...parallel, ...(between[i] ?? [])]);
  return { name: 'cutting line', curves: untangled(linked(stops)) };
}

/** Curves and points linked up to one closed chain, by straight lines wherever they do not touch. */
function linked(stops: readonly (Curve | Point)[]): readonly Curve[] {
  const chain: Curve[] = [];
  const go = (to: Point): void => {
    const from = chain.at(-1)?.to ?? start;
    if (distance(from, to) > COINCIDENCE) chain.push({ kind: 'line', from, to });
  };
  const first = stops[0];
  if (!first) return [];
  const start = 'kind' in first ? first.from : first;
  for (const stop of stops) {
    if (!('kind' in stop)) go(stop);
    else {
      go(stop.from);
      if (distance(stop.from, stop.to) > COINCIDENCE)
        chain.push({ ...stop, from: chain.at(-1)?.to ?? start });
    }
  }
  go(start);
  return chain.map((curve, i) => (i === chain.length - 1 ? { ...curve, to: start } : curve));
}

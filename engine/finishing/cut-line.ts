import type { Curve, Edge, Line } from '../geometry/curve.ts';
import { edgeEnd, endDirection, startDirection } from '../geometry/edge.ts';
import { parallelCurve } from '../geometry/parallel-curve.ts';
import { distance, type Point, vectorBetween } from '../geometry/point.ts';
import { COINCIDENCE } from '../geometry/tolerance.ts';
import { cross, dot, unit } from '../geometry/vector.ts';
import type { Piece, PieceEdge } from '../pattern/piece.ts';
import type { EdgeAllowance } from './edge-allowance.ts';
import { type AllowanceCorner, FOLD, turnCorner } from './turn-corner.ts';
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
    curves: edge.curves,
    ...parallelOf(edge, tolerance),
  }));

/** The rank of an edge at its corners: a fold runs through whatever meets it. */
export const rankOf = (edge: PieceEdge): number => (edge.turn === 'fold' ? FOLD : edge.rank);

function parallelOf(edge: PieceEdge, tolerance: number): Pick<EdgeAllowance, 'parallel' | 'deviation'> {
  if (edge.allowance === 0) return { parallel: edge.curves, deviation: 0 };
  const parallels = edge.curves.map((curve) => parallelCurve(curve, edge.allowance, tolerance));
  return {
    parallel: parallels.flatMap(({ curves }) => curves),
    deviation: Math.max(0, ...parallels.map(({ deviation }) => deviation)),
  };
}

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
  const first = stops[0];
  if (!first) return [];
  const start = 'kind' in first ? first.from : first;
  const chain: Curve[] = [];
  const here = (): Point => chain.at(-1)?.to ?? start;
  const go = (to: Point): void => {
    if (distance(here(), to) <= COINCIDENCE) return;
    const last = chain.at(-1);
    if (last?.kind === 'line' && runsOn(last, to)) chain[chain.length - 1] = { ...last, to };
    else chain.push({ kind: 'line', from: here(), to });
  };
  for (const stop of stops) {
    if (!('kind' in stop)) go(stop);
    else {
      go(stop.from);
      if (stop.kind === 'line') go(stop.to);
      else if (distance(stop.from, stop.to) > COINCIDENCE) chain.push({ ...stop, from: here() });
    }
  }
  go(start);
  const [head, last] = [chain[0], chain.at(-1)];
  if (!head || !last) return [];
  if (head !== last && head.kind === 'line' && last.kind === 'line' && runsOn(last, head.to)) {
    return [{ ...head, from: last.from }, ...chain.slice(1, -1)];
  }
  return [...chain.slice(0, -1), { ...last, to: start }];
}

/** Whether a line would go on straight to a place. */
function runsOn(line: Line, to: Point): boolean {
  const along = unit(vectorBetween(line.from, line.to));
  const on = vectorBetween(line.to, to);
  return dot(along, on) > 0 && Math.abs(cross(along, on)) <= COINCIDENCE;
}

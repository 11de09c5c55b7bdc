import { flatMapped } from '../flat-mapped.ts';
import type { Curve, Edge } from '../geometry/curve.ts';
import { edgeEnd, endDirection, startDirection } from '../geometry/edge.ts';
import { parallelCurve } from '../geometry/parallel-curve.ts';
import type { Point } from '../geometry/point.ts';
import { split } from '../geometry/split.ts';
import { untangled } from '../geometry/untangle.ts';
import { pressedOver, type SewnDart, sewnDarts } from '../pattern/dart.ts';
import type { Piece, PieceEdge } from '../pattern/piece.ts';
import { dartCap, turnedOverMouth } from './dart-cap.ts';
import type { EdgeAllowance } from './edge-allowance.ts';
import { hemSide } from './hem-side.ts';
import { linked, linkedRound } from './link.ts';
import { around, isOneLine, linesAt } from './one-line.ts';
import { type AllowanceCorner, FOLD, HEM, turnCorner } from './turn-corner.ts';
import type { TurnedCorner } from './turned-corner.ts';

/** How far allowance ends must reach beyond the seam's end at least, mm, by the place of the edge that ends there. */
export type Reaches = ReadonlyMap<number, number>;

/**
 * The cutting line of a piece: every edge's true parallel at its own allowance, to `tolerance` (mm), with the
 * corners turned as `turnCorner` says and the loops that hollow curves and inward corners leave cut away. One
 * closed edge, clockwise like the stitching line. Folds are cut as they lie: the allowances of their neighbours
 * end on the fold, prolonged. Darts are cut as if sewn and pressed to one side (`dartCap`). `reaches` lengthens the ends of allowances for a neighbour's sake; see
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

/** The rank of an edge at its corners: a fold runs through whatever meets it, and so does a dart's leg; a hem comes last. */
export const rankOf = ({ turn, rank }: PieceEdge): number =>
  turn === 'fold' || turn === 'dart' ? FOLD : turn === 'hem' ? HEM : rank;

function parallelOf(edge: PieceEdge, tolerance: number): Pick<EdgeAllowance, 'parallel' | 'deviation'> {
  if (edge.allowance === 0) return { parallel: edge.curves, deviation: 0 };
  const parallels = edge.curves.map((curve) => parallelCurve(curve, edge.allowance, tolerance));
  return {
    parallel: flatMapped(parallels, ({ curves }) => curves),
    deviation: Math.max(0, ...parallels.map(({ deviation }) => deviation)),
  };
}

/**
 * The corner at the end of the edge at place `i`, undefined when there is no such edge. Edges that run on into each other
 * at one allowance come to it as one: a notch in an armhole does not end its allowance.
 */
export function cornerAfter(
  piece: Piece,
  allowances: readonly EdgeAllowance[],
  i: number,
): AllowanceCorner | undefined {
  const { before, after } = linesAt(piece, i);
  const [edge, follower] = [piece.edges[i], piece.edges[around(i + 1, piece.edges.length)]];
  const [arriving, leaving] = [asOne(allowances, before, i), asOne(allowances, after, after[0])];
  if (!edge || !follower || !arriving || !leaving) return undefined;
  const beyond = hemSide(piece, i);
  return {
    at: edgeEnd(edge),
    into: endDirection(edge),
    outOf: startDirection(follower),
    before: arriving,
    after: leaving,
    ...(beyond ? { beyond } : {}),
  };
}

/** The allowances at these places in order as one, with the rank of the one at `nearest` to the corner. */
function asOne(
  allowances: readonly EdgeAllowance[],
  places: readonly number[],
  nearest: number | undefined,
): EdgeAllowance | undefined {
  const own = nearest === undefined ? undefined : allowances[nearest];
  if (places.length === 1) return own;
  const all = flatMapped(places, (place) => allowances[place] ?? []);
  return (
    own && {
      ...own,
      curves: flatMapped(all, ({ curves }) => curves),
      parallel: flatMapped(all, ({ parallel }) => parallel),
      deviation: Math.max(...all.map(({ deviation }) => deviation)),
    }
  );
}

/** The cutting line from the allowances of a piece's edges. */
export function aroundCorners(piece: Piece, allowances: readonly EdgeAllowance[], reaches: Reaches): Edge {
  const count = piece.edges.length;
  const sides = [...allowances];
  const between: (readonly Point[])[] = [];
  const hold = (places: readonly number[], all: number, parallel: readonly Curve[]): void => {
    for (const place of places) {
      const side = sides[place];
      if (side) sides[place] = { ...side, parallel: place === all ? parallel : [] };
    }
  };
  const turn = (i: number, next: number, how: (corner: AllowanceCorner) => TurnedCorner): void => {
    const corner = cornerAfter(piece, sides, i);
    const lines = linesAt(piece, i);
    const follower = next === around(i + 1, count) ? corner?.after : sides[next];
    if (!corner || !follower) return;
    // One edge all round meets itself at its corner, or at the mouth of its dart.
    const [after, before] = next === i ? halved(corner.before) : [follower, corner.before];
    const turned = how({ ...corner, before, after });
    hold(next === lines.after[0] ? lines.after : [next], next, turned.after);
    hold(lines.before, i, next === i ? [...turned.after, ...turned.before] : turned.before);
    between[i] = turned.between;
  };
  const darts = sewnDarts(piece.edges);
  const atDarts = new Set(
    flatMapped(darts, ({ place }) => [place - 1, place, place + 1].map((i) => around(i, count))),
  );
  for (const [i] of piece.edges.entries())
    if (!atDarts.has(i) && !isOneLine(piece, i))
      turn(i, around(i + 1, count), (corner) => turnCorner(corner, reaches.get(i)));
  for (const dart of darts) {
    const [before, after] = [around(dart.place - 1, count), around(dart.place + 2, count)];
    // Near a corner of the piece, the seam of the dart may meet the cutting line only beyond that corner.
    for (const i of [before, after]) {
      const [side, start] = [sides[i], around(i - 1, count)];
      if (!side) continue;
      const parallel = linked([...(between[start] ?? []), ...side.parallel, ...(between[i] ?? [])]);
      sides[i] = { ...side, parallel };
      between[start] = between[i] = [];
    }
    turn(before, after, (corner) => turnedOverMouth(dart, corner.before, corner.after));
  }
  const stops = (i: number): readonly (Curve | Point)[] => [
    ...(sides[i]?.parallel ?? []),
    ...(between[i] ?? []),
  ];
  return { name: 'cutting line', curves: untangled(capped(piece, darts, stops)) };
}

/** An allowance in two, its first half and the rest. */
function halved(whole: EdgeAllowance): readonly [EdgeAllowance, EdgeAllowance] {
  const pieces =
    whole.parallel.length > 1 ? whole.parallel : flatMapped(whole.parallel, (curve) => split(curve, 0.5));
  const half = Math.ceil(pieces.length / 2);
  return [
    { ...whole, parallel: pieces.slice(0, half) },
    { ...whole, parallel: pieces.slice(half) },
  ];
}

/** The stretches from dart to dart, and the caps between them. */
function capped(
  piece: Piece,
  darts: readonly SewnDart[],
  stops: (edge: number) => readonly (Curve | Point)[],
): readonly Curve[] {
  const count = piece.edges.length;
  const [first] = darts;
  if (!first) return linkedRound(flatMapped(piece.edges, (_, i) => stops(i)));
  const stretches = darts.map(({ place }, i) => {
    const end = darts[(i + 1) % darts.length]?.place ?? place;
    const length = ((end - place - 3 + 2 * count) % count) + 1;
    return linked(Array.from({ length }, (_, j) => stops((place + 2 + j) % count)).flat());
  });
  const ownLine = (place: number): readonly Curve[] => linked(stops(around(place, count)));
  return linkedRound(
    flatMapped(darts, (dart, i) => [
      ...dartCap(dart, pressedOver(dart, piece), {
        before: ownLine(dart.place - 1),
        after: ownLine(dart.place + 2),
      }),
      ...(stretches[i] ?? []),
    ]),
  );
}

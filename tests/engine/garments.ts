import type { Curve, Line } from '../../engine/geometry/curve.ts';
import { type Point, point } from '../../engine/geometry/point.ts';
import type { Garment } from '../../engine/pattern/garment.ts';
import type { Notch, Piece, PieceEdge } from '../../engine/pattern/piece.ts';

/** Hand-made pieces with known answers, for the tests of finishing and checks. */

export const line = (from: Point, to: Point): Line => ({ kind: 'line', from, to });

export const cubic = (from: Point, handle1: Point, handle2: Point, to: Point): Curve => ({
  kind: 'cubic',
  from,
  handle1,
  handle2,
  to,
});

export const edge = (
  name: string,
  curves: readonly Curve[],
  rest: Partial<Omit<PieceEdge, 'name' | 'curves'>> = {},
): PieceEdge => ({ name, curves, turn: 'seam', allowance: 10, rank: 1, inflections: 0, open: true, ...rest });

/** A piece from the corners of a polygon, each side an edge with its name and what becomes of it. */
export function polygon(
  name: string,
  corners: readonly (readonly [number, number])[],
  sides: readonly (readonly [string, Partial<Omit<PieceEdge, 'name' | 'curves'>>])[],
): Piece {
  const points = corners.map(([x, y]) => point(x, y));
  const at = (i: number): Point => points[i % points.length] ?? point(0, 0);
  return piece(
    name,
    sides.map(([side, rest], i) => edge(side, [line(at(i), at(i + 1))], rest)),
  );
}

export function piece(name: string, edges: readonly PieceEdge[], rest: Partial<Piece> = {}): Piece {
  const points = edges.flatMap((e) => e.curves.map((curve) => curve.from));
  const middle = point(
    points.reduce((sum, p) => sum + p.x, 0) / points.length,
    points.reduce((sum, p) => sum + p.y, 0) / points.length,
  );
  return {
    name,
    number: 1,
    edges,
    grain: { from: point(middle.x, middle.y - 10), to: point(middle.x, middle.y + 10) },
    notches: [],
    lines: [],
    marks: [],
    cut: [{ cloth: 'self', count: 1, onFold: edges.some(({ turn }) => turn === 'fold'), pair: false }],
    ...rest,
  };
}

export const notch = (name: string, on: string, at: number, mark: Notch['mark'] = 'single'): Notch => ({
  name,
  edge: on,
  at,
  mark,
});

export const garment = (pieces: readonly Piece[], rest: Partial<Garment> = {}): Garment => ({
  name: 'sample',
  body: 'the understudy',
  pieces: pieces.map((each, i) => ({ ...each, number: i + 1 })),
  seams: [],
  joins: [],
  girths: [],
  shapes: [],
  notions: [],
  steps: [],
  issues: [],
  ...rest,
});

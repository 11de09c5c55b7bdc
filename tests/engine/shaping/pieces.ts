import fc from 'fast-check';
import type { Curve } from '../../../engine/geometry/curve.ts';
import { inflectionCount } from '../../../engine/geometry/inflections.ts';
import { point } from '../../../engine/geometry/point.ts';
import type { Result } from '../../../engine/issue.ts';
import type { Notch, Piece, PieceEdge } from '../../../engine/pattern/piece.ts';
import { uniform } from '../../uniform.ts';
import { cubic, line } from '../geometry/generators.ts';

/** The edge of a piece, sewn, with half an inch of allowance. */
export const edge = (name: string, ...curves: readonly Curve[]): PieceEdge => ({
  name,
  curves,
  turn: 'seam',
  allowance: 12.7,
  rank: 1,
  inflections: inflectionCount({ name, curves }),
  open: true,
});

/** A piece of these edges with an upright grainline at x from y 20 to 60. */
export const pieceOf = (edges: readonly PieceEdge[], notches: readonly Notch[] = [], x = 20): Piece => ({
  name: 'panel',
  number: 1,
  edges,
  grain: { from: point(x, 20), to: point(x, 60) },
  notches,
  lines: [],
  marks: [],
  cut: [{ cloth: 'self', count: 2, onFold: false, pair: true }],
});

/** A rectangle, its top left corner at the origin. */
export const rectangle = (width: number, height: number, notches: readonly Notch[] = []): Piece =>
  pieceOf(
    [
      edge('top', line(0, 0, width, 0)),
      edge('side', line(width, 0, width, height)),
      edge('hem', line(width, height, 0, height)),
      edge('front', line(0, height, 0, 0)),
    ],
    notches,
  );

/** What a panel is drawn from, mm. */
export interface PanelShape {
  readonly width: number;
  readonly height: number;
  readonly flare: number;
  readonly drop: number;
  readonly sag: number;
  readonly bow: number;
}

/** A panel with a straight level top, a bowed side, and a hem that sags or rises. */
export function panelOf({ width, height, flare, drop, sag, bow }: PanelShape): Piece {
  const [x, y] = [width + flare, height + drop];
  return pieceOf([
    edge('top', line(0, 0, width, 0)),
    edge('side', cubic(width, 0, width + bow, y / 3, x + bow, (2 * y) / 3, x, y)),
    edge('hem', cubic(x, y, (2 * x) / 3, y + sag, x / 3, height + sag, 0, height)),
    edge('front', line(0, height, 0, 0)),
  ]);
}

/** Any panel, narrow or wide, long or short, hollow or round. */
export const anyPanel: fc.Arbitrary<Piece> = fc
  .record({
    width: fc.double({ min: 120, max: 400, noNaN: true }),
    height: fc.double({ min: 120, max: 500, noNaN: true }),
    flare: uniform(-20, 60),
    drop: uniform(-30, 30),
    sag: uniform(-25, 25),
    bow: uniform(-12, 12),
  })
  .map(panelOf);

/** The value of a result that must be one. */
export function made<T>(result: Result<T>): T {
  if (!result.ok) throw new Error(result.issues.map(({ message }) => message).join('\n'));
  return result.value;
}

/** The codes of a refusal; none for a success. */
export const codesOf = (result: Result<unknown>): readonly string[] =>
  result.ok ? [] : result.issues.map(({ code }) => code);

/** The edge of a piece by its name. */
export function edgeNamed(piece: Piece, name: string): PieceEdge {
  const found = piece.edges.find((candidate) => candidate.name === name);
  if (!found) throw new Error(`no edge ${name}: ${piece.edges.map((each) => each.name).join(', ')}`);
  return found;
}

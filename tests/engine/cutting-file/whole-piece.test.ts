import { describe, expect, it } from 'vitest';
import { wholePiece } from '../../../engine/cutting-file/whole-piece.ts';
import { cuttingLines } from '../../../engine/finishing/cut-lines.ts';
import { edgeLength } from '../../../engine/geometry/edge.ts';
import { isSimple } from '../../../engine/geometry/inside.ts';
import { signedArea } from '../../../engine/geometry/outline.ts';
import { point } from '../../../engine/geometry/point.ts';
import { PARALLEL } from '../../../engine/geometry/tolerance.ts';
import type { Piece } from '../../../engine/pattern/piece.ts';
import { finishedPieces } from '../../../engine/render/finish.ts';
import type { FinishedPiece } from '../../../engine/render/finished-piece.ts';
import { line, notch, polygon } from '../garments.ts';
import { smallGarment } from '../render/small-garment.ts';

const finished = (piece: Piece): FinishedPiece => {
  const garment = { ...smallGarment, pieces: [piece], seams: [], joins: [], girths: [] };
  const [one] = finishedPieces(garment, cuttingLines(garment, PARALLEL), 'slit');
  if (!one) throw new Error('not there');
  return one;
};

const closed = ({ piece, cut }: FinishedPiece): readonly (readonly unknown[])[] =>
  [cut, piece.edges.flatMap(({ curves }) => curves)].map((curves) =>
    curves.flatMap(({ from }, i) => {
      const before = curves.at(i - 1)?.to;
      return before && Math.hypot(before.x - from.x, before.y - from.y) < 1e-9 ? [] : [i];
    }),
  );

/** Half an apron of 100 by 200 mm, its fold on the left. */
const half: Piece = {
  ...polygon(
    'apron',
    [
      [0, 0],
      [100, 0],
      [100, 200],
      [0, 200],
    ],
    [
      ['top', {}],
      ['side', {}],
      ['hem', { turn: 'hem', allowance: 30 }],
      ['centre', { turn: 'fold', allowance: 0 }],
    ],
  ),
  notches: [notch('balance', 'side', 80), notch('fold', 'hem', 100, 'fold')],
  lines: [
    {
      name: 'waist',
      kind: 'level',
      curves: [line(point(0, 60), point(100, 60))],
      text: 'waist 400 mm',
      fullness: 5,
    },
    { name: 'row', kind: 'gathering', curves: [line(point(10, 6), point(90, 6))] },
  ],
  marks: [
    { name: 'pocket', kind: 'drill', at: point(50, 100), angle: 0, length: 0 },
    { name: 'eyelet', kind: 'drill', at: point(0, 20), angle: 0, length: 0 },
    { name: 'tie', kind: 'buttonhole', at: point(40, 30), angle: 0.3, length: 14 },
  ],
};

describe('a piece on the fold, unfolded', () => {
  const drawn = finished(half);
  const whole = wholePiece(drawn);

  it('has twice the area, by its cutting line and by its stitching line, and both are closed', () => {
    expect(signedArea([{ name: 'cut', curves: whole.cut }])).toBeCloseTo(
      2 * signedArea([{ name: 'cut', curves: drawn.cut }]),
      6,
    );
    expect(signedArea(whole.piece.edges)).toBeCloseTo(2 * 100 * 200, 6);
    expect(closed(whole)).toEqual([[], []]);
  });

  it('has every edge twice and the fold as a line across', () => {
    expect(whole.piece.edges.map(({ name }) => name)).toEqual([
      ...['top', 'side', 'hem'],
      ...['hem (other half)', 'side (other half)', 'top (other half)'],
    ]);
    expect(whole.piece.lines.find(({ kind }) => kind === 'fold')?.name).toBe('centre');
  });

  it('is cut as often, but on no fold', () => {
    expect(whole.piece.cut).toEqual([{ cloth: 'self', count: 1, onFold: false, pair: false }]);
  });

  it('has levels that run on across the fold, other lines twice, and marks twice but for one on the fold', () => {
    const lengths = whole.piece.lines.map(({ name, curves }) => [name, edgeLength({ name, curves })]);
    expect(lengths).toEqual([
      ['waist', 200],
      ['row', 80],
      ['row (other half)', 80],
      ['centre', 200],
    ]);
    expect(whole.piece.lines[0]?.fullness).toBe(10);
    expect(whole.piece.marks.map(({ name, at, angle }) => [name, at.x, angle])).toEqual([
      ['pocket', 50, 0],
      ['pocket (other half)', -50, expect.any(Number)],
      ['eyelet', 0, 0],
      ['tie', 40, 0.3],
      ['tie (other half)', -40, expect.any(Number)],
    ]);
    // A buttonhole that falls to the side falls to the other side over there.
    const other = whole.piece.marks.at(-1)?.angle ?? 0;
    expect(Math.tan(other)).toBeCloseTo(-Math.tan(0.3), 9);
  });

  it('has notches on both halves, and one where the fold ends', () => {
    expect(whole.notches.map(({ notch: { name } }) => name)).toEqual([
      'balance',
      'fold',
      'balance (other half)',
    ]);
  });
});

it('at a point on the fold both halves end in a corner, where their allowances meet', () => {
  const pointed: Piece = {
    ...half,
    edges: polygon(
      'apron',
      [
        [0, 100],
        [100, 0],
        [100, 200],
        [0, 200],
      ],
      [
        ['top', {}],
        ['side', {}],
        ['hem', { turn: 'hem', allowance: 30 }],
        ['centre', { turn: 'fold', allowance: 0 }],
      ],
    ).edges,
    lines: [],
  };
  const { cut } = wholePiece(finished(pointed));
  expect(isSimple([{ name: 'cut', curves: cut }])).toBe(true);
  // The parallels of two lines at 45 degrees, 10 mm away, meet 10 times the root of two above their point.
  const corner = cut.map(({ from }) => from).find(({ x, y }) => Math.abs(x) < 1e-6 && y < 100);
  expect(corner?.y).toBeCloseTo(100 - 10 * Math.SQRT2, 4);
});

it('folded across the grain a piece is laid double: lines and marks stay on the layer they are drawn on', () => {
  const across = { ...half, grain: { from: point(20, 100), to: point(80, 100) } };
  const { piece, notches } = wholePiece(finished(across));
  expect(piece.marks.map(({ name }) => name)).toEqual(['pocket', 'eyelet', 'tie']);
  expect(piece.lines.map(({ name }) => name)).toEqual(['waist', 'row', 'centre']);
  expect(notches).toHaveLength(3);
});

it('what is cut on no fold, or partly, is left as it is', () => {
  const [, side] = smallGarment.pieces;
  if (!side) throw new Error('not there');
  const open = finished(side);
  expect(wholePiece(open)).toBe(open);
  const both = finished({
    ...half,
    cut: [...half.cut, { cloth: 'lining', count: 2, onFold: false, pair: true }],
  });
  expect(wholePiece(both)).toBe(both);
});

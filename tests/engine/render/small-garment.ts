import { cuttingLines } from '../../../engine/finishing/cut-lines.ts';
import type { Cubic, Curve } from '../../../engine/geometry/curve.ts';
import { edgeLength, edgeOf } from '../../../engine/geometry/edge.ts';
import { type Point, point } from '../../../engine/geometry/point.ts';
import { reversed } from '../../../engine/geometry/split.ts';
import { PARALLEL } from '../../../engine/geometry/tolerance.ts';
import type { Garment } from '../../../engine/pattern/garment.ts';
import type { Piece, PieceEdge } from '../../../engine/pattern/piece.ts';
import type { Join } from '../../../engine/pattern/seam.ts';

const line = (from: Point, to: Point): Curve => ({ kind: 'line', from, to });

/** A princess line with a hollow and a round, from the neckline at `x` down to the waist. */
const princess = (x: number): Cubic => ({
  kind: 'cubic',
  from: point(x, 0),
  handle1: point(x + 14.1234567, 60.7654321),
  handle2: point(x - 21.9876543, 140.3),
  to: point(x - 8, 200),
});

const seam = (name: string, curves: readonly Curve[], rank: number, inflections = 0): PieceEdge => ({
  name,
  curves,
  turn: 'seam',
  allowance: 12.7,
  rank,
  inflections,
  ...(name !== 'princess' && { open: true }),
});

/** Length of the princess line, mm. */
export const princessLength = edgeLength(edgeOf('princess', [princess(90)]));

const centreFront: Piece = {
  name: 'centre front',
  number: 1,
  edges: [
    seam('neckline', [line(point(0, 0), point(90, 0))], 3),
    seam('princess', [princess(90)], 1, 1),
    seam('waist', [line(point(82, 200), point(0, 200))], 2),
    { ...seam('centre', [line(point(0, 200), point(0, 0))], 0), turn: 'fold', allowance: 0 },
  ],
  grain: { from: point(70, 40), to: point(70, 160) },
  notches: [
    { name: 'front balance', edge: 'princess', at: 80, mark: 'single' },
    { name: 'waist fold', edge: 'waist', at: 82, mark: 'fold' },
  ],
  lines: [
    { name: 'bust', kind: 'level', curves: [line(point(0, 70), point(92.4, 70))], text: 'bust level' },
    { name: 'top gathers', kind: 'gathering', curves: [line(point(10, 6), point(80, 6))] },
  ],
  marks: [
    { name: 'cord', kind: 'buttonhole', at: point(15, 30), angle: Math.PI / 2, length: 14 },
    { name: 'dart', kind: 'drill', at: point(40, 90), angle: 0, length: 0 },
  ],
  cut: [
    { cloth: 'self', count: 1, onFold: true, pair: false },
    { cloth: 'lining', count: 1, onFold: true, pair: false },
  ],
};

const sideFront: Piece = {
  name: 'side front',
  number: 2,
  edges: [
    seam('princess', [reversed(princess(20))], 1, 1),
    seam('neckline', [line(point(20, 0), point(110, 0))], 3),
    { ...seam('side', [line(point(110, 0), point(110, 200))], 0), turn: 'finished' },
    seam('waist', [line(point(110, 200), point(12, 200))], 2),
  ],
  grain: { from: point(90, 40), to: point(96, 160) },
  notches: [{ name: 'front balance', edge: 'princess', at: princessLength - 80, mark: 'single' }],
  lines: [],
  marks: [],
  cut: [{ cloth: 'self', count: 2, onFold: false, pair: true }],
};

/** Two pieces, one seam, one join and one girth, all true, with every kind of line that is drawn. */
export const smallGarment: Garment = {
  name: 'bib',
  body: 'stage manager',
  pieces: [centreFront, sideFront],
  seams: [
    {
      name: 'princess seam',
      a: [{ piece: 'centre front', edge: 'princess' }],
      b: [{ piece: 'side front', edge: 'princess', reversed: true }],
      ease: 0,
      gatherRatio: 1,
    },
  ],
  joins: [
    {
      kind: 'across',
      name: 'waist over princess',
      a: { piece: 'centre front', edge: 'waist', seam: 'princess' },
      b: { piece: 'side front', edge: 'waist', seam: 'princess' },
    },
    ...['waist', 'neckline'].map(
      (edge): Join => ({
        kind: 'mirror',
        name: `${edge} at the centre`,
        turns: true,
        a: { piece: 'centre front', edge, seam: 'centre' },
      }),
    ),
  ],
  shapes: [
    {
      kind: 'length',
      name: 'princess seam',
      parts: [{ kind: 'edge', piece: 'side front', edge: 'princess', times: 1 }],
      low: 150,
      high: 250,
      outside: 'a longer or a shorter body',
    },
    {
      kind: 'tightest bend',
      name: 'princess seam, tightest bend',
      of: { edges: [{ piece: 'centre front', edge: 'princess' }] },
      low: 1000,
      outside: 'a bust',
    },
  ],
  girths: [
    {
      level: 'waist',
      body: 340,
      ease: 20,
      parts: [
        { kind: 'edge', piece: 'centre front', edge: 'waist', times: 2 },
        { kind: 'edge', piece: 'side front', edge: 'waist', times: 2 },
      ],
    },
  ],
  notions: [],
  steps: [],
  issues: [],
};

/** Its cutting lines. */
export const smallCutLines = cuttingLines(smallGarment, PARALLEL);

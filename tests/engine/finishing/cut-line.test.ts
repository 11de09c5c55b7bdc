import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cutReady } from '../../../engine/checks/cut-ready.ts';
import { cuttingLine } from '../../../engine/finishing/cut-line.ts';
import type { Curve, Edge } from '../../../engine/geometry/curve.ts';
import { edgeLength, reversedEdge } from '../../../engine/geometry/edge.ts';
import { isSimple } from '../../../engine/geometry/inside.ts';
import { signedArea } from '../../../engine/geometry/outline.ts';
import { moved, type Point, point } from '../../../engine/geometry/point.ts';
import { PARALLEL } from '../../../engine/geometry/tolerance.ts';
import { mirroredIn, transformedEdge } from '../../../engine/geometry/transform.ts';
import { heading, outward, scaled } from '../../../engine/geometry/vector.ts';
import type { Piece, PieceEdge } from '../../../engine/pattern/piece.ts';
import { uniform } from '../../uniform.ts';
import { cubic, edge, garment, line, piece, polygon } from '../garments.ts';

const named = (names: string, rest: Partial<PieceEdge>) =>
  names.split(' ').map((name) => [name, rest] as const);

const corners = (cut: Edge): (readonly [number, number])[] =>
  cut.curves.map(({ from }) => [Math.round(from.x * 1e6) / 1e6 + 0, Math.round(from.y * 1e6) / 1e6 + 0]);

const faults = (made: Piece, cut: Edge) => cutReady(garment([made]), new Map([[made.name, cut]]), 0.05);

const square = (allowance: number): Piece =>
  polygon(
    'square',
    [
      [0, 0],
      [10, 0],
      [10, 10],
      [0, 10],
    ],
    named('top right bottom left', { allowance }),
  );

/** A circle of four cubic arcs, which stray at most 2.7253e-4 of its radius from the true one. */
function disc(radius: number, allowance: number): Piece {
  const k = 0.5522847498 * radius;
  const at = (x: number, y: number) => point(x, y);
  const r = radius;
  return piece('disc', [
    edge(
      'rim',
      [
        cubic(at(-r, 0), at(-r, -k), at(-k, -r), at(0, -r)),
        cubic(at(0, -r), at(k, -r), at(r, -k), at(r, 0)),
        cubic(at(r, 0), at(r, k), at(k, r), at(0, r)),
        cubic(at(0, r), at(-k, r), at(-r, k), at(-r, 0)),
      ],
      { allowance },
    ),
  ]);
}

describe('the cutting line of a piece', () => {
  it('of a mitred square grows by Steiner’s formulas: side 10 by 1 to length 48 and area 144', () => {
    const cut = cuttingLine(square(1), PARALLEL);
    expect(edgeLength(cut)).toBeCloseTo(48, 9);
    expect(signedArea([cut])).toBeCloseTo(144, 9);
  });

  it('of a mitred 3-4-5 triangle by 1 has area 24, but for the sharpest corner, which is squared off', () => {
    const triangle = polygon(
      'triangle',
      [
        [0, 0],
        [4, 0],
        [0, 3],
      ],
      named('a b c', { allowance: 1 }),
    );
    const cut = cuttingLine(triangle, PARALLEL);
    // The corner of 36.87 degrees would reach sqrt(10) allowances: cut off at 2.5 it loses a small triangle of
    // height sqrt(10) - 2.5 whose sides open by that angle, tan(36.87 / 2 degrees) = 1/3.
    expect(cut.curves).toHaveLength(4);
    expect(signedArea([cut])).toBeCloseTo(24 - (Math.sqrt(10) - 2.5) ** 2 / 3, 9);
  });

  it('of a smooth round piece follows Steiner’s formulas: L + 2 pi d and A + L d + pi d^2', () => {
    const whole = disc(200, 12.7);
    const cut = cuttingLine(whole, PARALLEL);
    const length = whole.edges.reduce((sum, e) => sum + edgeLength(e), 0);
    const d = 12.7;
    expect(Math.abs(edgeLength(cut) - (length + 2 * Math.PI * d))).toBeLessThan(0.05);
    const area = signedArea(whole.edges) + length * d + Math.PI * d * d;
    expect(Math.abs(signedArea([cut]) - area)).toBeLessThan(length * PARALLEL);
  });

  it('ends the first sewn allowance square and lets the other run over it', () => {
    const made = polygon(
      'front',
      [
        [0, 0],
        [100, 0],
        [100, 200],
        [0, 200],
      ],
      [
        ['neck', { allowance: 6, rank: 2 }],
        ['side', { allowance: 15, rank: 1 }],
        ['hem', { allowance: 40, rank: 3 }],
        ['centre', { allowance: 10, rank: 1 }],
      ],
    );
    expect(corners(cuttingLine(made, PARALLEL))).toEqual([
      [-10, -6],
      [115, -6],
      [115, 240],
      [-10, 240],
    ]);
  });

  it('leans the end of an allowance with the edge that crosses it', () => {
    // At 100, 0 the neck meets the side at 45 degrees inside the cloth, at 0, 0 at 135 degrees.
    const made = polygon(
      'front',
      [
        [0, 0],
        [100, 0],
        [0, 100],
        [-100, 100],
      ],
      [
        ['neck', { allowance: 10, rank: 2 }],
        ['side', { allowance: 10, rank: 1 }],
        ['hem', { allowance: 10, rank: 2 }],
        ['centre', { allowance: 10, rank: 1 }],
      ],
    );
    const cut = corners(cuttingLine(made, PARALLEL));
    const half = 10 / Math.SQRT2;
    for (const [x, y] of [
      [110, -10],
      [110 + half, -10 + half],
      [10, -10],
      [10 - half, -10 - half],
    ] as const) {
      expect(cut.some(([cx, cy]) => Math.hypot(cx - x, cy - y) < 1e-5)).toBe(true);
    }
    expect(faults(made, cuttingLine(made, PARALLEL))).toEqual([]);
  });

  it('has no allowance along a fold, and ends its neighbours on the fold', () => {
    const made = polygon(
      'front',
      [
        [0, 0],
        [100, 0],
        [100, 200],
        [0, 200],
      ],
      [
        ['neck', { rank: 5 }],
        ['side', { rank: 1 }],
        ['waist', { rank: 5 }],
        ['centre', { turn: 'fold', allowance: 0, rank: 9 }],
      ],
    );
    const cut = cuttingLine(made, PARALLEL);
    expect(Math.min(...corners(cut).map(([x]) => x))).toBe(0);
    expect(corners(cut)).toContainEqual([0, -10]);
    expect(corners(cut)).toContainEqual([0, 210]);
    expect(faults(made, cut)).toEqual([]);
  });

  it('turns an inward corner where the two parallels cross', () => {
    const made = polygon(
      'corner',
      [
        [0, 0],
        [100, 0],
        [100, 100],
        [200, 100],
        [200, 200],
        [0, 200],
      ],
      named('a b c d e f', { allowance: 10 }),
    );
    const cut = cuttingLine(made, PARALLEL);
    expect(corners(cut)).toContainEqual([110, 90]);
    expect(cut.curves).toHaveLength(6);
    expect(faults(made, cut)).toEqual([]);
  });

  it('steps square from a wide allowance to a narrow one where the edge runs straight on', () => {
    const made = polygon(
      'front',
      [
        [0, 0],
        [50, 0],
        [100, 0],
        [100, 100],
        [0, 100],
      ],
      [
        ['wide', { allowance: 20 }],
        ['narrow', { allowance: 5 }],
        ['side', {}],
        ['hem', {}],
        ['centre', {}],
      ],
    );
    const cut = cuttingLine(made, PARALLEL);
    expect(corners(cut)).toContainEqual([50, -20]);
    expect(corners(cut)).toContainEqual([50, -5]);
    expect(faults(made, cut)).toEqual([]);
  });

  it('keeps a slanted cubic that is quite straight in one', () => {
    const slanted = [point(254, 0), point(47.7, 146.8)] as const;
    const third = (t: number) => point(254 + t * (47.7 - 254), t * 146.8);
    const made = piece('front', [
      edge('side', [cubic(slanted[0], third(1 / 3), third(2 / 3), slanted[1])]),
      edge('top', [line(slanted[1], point(0, 0))]),
      edge('centre', [line(point(0, 0), slanted[0])]),
    ]);
    // Besides it: its two ends lengthened into their mitres, the parallels of the two lines, the sharpest corner cut off.
    const kinds = cuttingLine(made, PARALLEL).curves.map(({ kind }) => kind);
    expect(kinds.toSorted()).toEqual(['cubic', 'line', 'line', 'line', 'line', 'line']);
  });

  it('cuts away the loop of a curve that is hollower than the allowance', () => {
    // The hollow has a radius of about 6 mm at its foot; the allowance is 12.7 mm.
    const made = piece('hollow', [
      edge('notched', [cubic(point(0, 0), point(65, 60), point(35, 60), point(100, 0))], { allowance: 12.7 }),
      edge('side', [line(point(100, 0), point(100, 150))]),
      edge('hem', [line(point(100, 150), point(0, 150))]),
      edge('centre', [line(point(0, 150), point(0, 0))]),
    ]);
    const cut = cuttingLine(made, PARALLEL);
    expect(isSimple([cut])).toBe(true);
    expect(faults(made, cut)).toEqual([]);
  });

  it('of a mirrored piece is the mirror image', () => {
    fc.assert(
      fc.property(pieces, (made) => {
        const mirror = mirroredIn(point(10, 0), point(17, 31));
        const turned: Piece = {
          ...made,
          edges: made.edges.map((e) => reversedEdge(transformedEdge(e, mirror))).toReversed(),
        };
        const image = transformedEdge(cuttingLine(made, PARALLEL), mirror);
        const cut = cuttingLine(turned, PARALLEL);
        expect(signedArea([cut])).toBeCloseTo(-signedArea([image]), 3);
        expect(edgeLength(cut)).toBeCloseTo(edgeLength(image), 3);
      }),
      { numRuns: 50 },
    );
  });

  it('is simple, clockwise and one allowance away from any piece, round, hollow or cornered', () => {
    fc.assert(
      fc.property(pieces, (made) => {
        const cut = cuttingLine(made, PARALLEL);
        expect(isSimple([cut])).toBe(true);
        // A piece that has no allowance anywhere is cut on its stitching line.
        expect(signedArea([cut])).toBeGreaterThan(signedArea(made.edges) - 1e-6);
        expect(faults(made, cut)).toEqual([]);
      }),
      { numRuns: 200 },
    );
  });
});

/** Pieces around a middle: corners at growing angles and any distance, joined by lines and bows of any side. */
const pieces: fc.Arbitrary<Piece> = fc
  .array(
    fc.record({
      radius: fc.double({ min: 120, max: 300, noNaN: true }),
      bow: fc.oneof(fc.constant(0), uniform(-40, 40)),
      allowance: fc.constantFrom(0, 6.4, 12.7, 20),
      rank: fc.integer({ min: 1, max: 3 }),
    }),
    { minLength: 4, maxLength: 7 },
  )
  .map((spokes) => {
    const at = (i: number): Point => {
      const spoke = spokes[i % spokes.length];
      return moved(point(0, 0), scaled(heading((2 * Math.PI * i) / spokes.length), spoke?.radius ?? 200));
    };
    return piece(
      'sample',
      spokes.map(({ bow, allowance, rank }, i) =>
        edge(`edge ${i}`, [bowed(at(i), at(i + 1), bow)], { allowance, rank, inflections: 0 }),
      ),
    );
  });

function bowed(from: Point, to: Point, bow: number): Curve {
  if (bow === 0) return line(from, to);
  const along = { x: (to.x - from.x) / 3, y: (to.y - from.y) / 3 };
  const out = scaled(outward(along), bow / 75);
  const handle1 = moved(moved(from, along), out);
  const handle2 = moved(moved(to, scaled(along, -1)), out);
  return cubic(from, handle1, handle2, to);
}

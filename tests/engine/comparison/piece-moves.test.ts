import { describe, expect, test } from 'vitest';
import type { Side } from '../../../engine/body/side.ts';
import { movesBetween, type Redrawn } from '../../../engine/comparison/piece-moves.ts';
import { cuttingLines } from '../../../engine/finishing/cut-lines.ts';
import { point } from '../../../engine/geometry/point.ts';
import { PARALLEL } from '../../../engine/geometry/tolerance.ts';
import { movedBy, type Transform, transformedEdge, turnedBy } from '../../../engine/geometry/transform.ts';
import type { Garment } from '../../../engine/pattern/garment.ts';
import { mirrorImage } from '../../../engine/pattern/mirror-image.ts';
import type { Piece } from '../../../engine/pattern/piece.ts';
import { smallGarment } from '../render/small-garment.ts';

const [first, ...others] = smallGarment.pieces;
if (!first) throw new Error('The small garment has no pieces.');

const withFirst = (piece: Piece): Garment => ({ ...smallGarment, pieces: [piece, ...others] });

const sheetOf = (garment: Garment) => ({
  pieces: garment.pieces,
  cutLines: cuttingLines(garment, PARALLEL),
});

const moves = (before: Garment, after: Garment) => movesBetween(sheetOf(before), sheetOf(after));

/** What became of the first piece. */
function moveTo(piece: Piece): Redrawn {
  const [move] = moves(smallGarment, withFirst(piece));
  if (move?.kind !== 'redrawn') throw new Error('not redrawn');
  return move;
}

const carried = (piece: Piece, to: Transform): Piece => ({
  ...piece,
  edges: piece.edges.map((edge) => transformedEdge(edge, to)),
  grain: { from: to(piece.grain.from), to: to(piece.grain.to) },
  lines: piece.lines.map((line) => transformedEdge(line, to)),
  marks: piece.marks.map((mark) => ({ ...mark, at: to(mark.at) })),
});

/** Nothing of a piece moved by more than this, mm. */
function expectStill(move: Redrawn, within: number): void {
  expect(Math.max(move.stitchingLine, move.cuttingLine ?? Infinity)).toBeLessThan(within);
  for (const edge of move.edges) {
    if (edge.kind !== 'redrawn') throw new Error(`${edge.edge} is ${edge.kind}`);
    expect(edge.moved).toBeLessThan(within);
    expect(edge.after).toBeCloseTo(edge.before, 5);
  }
  for (const notch of move.notches) {
    if (notch.kind !== 'redrawn') throw new Error(`${notch.notch} is ${notch.kind}`);
    expect(notch.after).toBeCloseTo(notch.before, 5);
  }
  for (const inside of move.inside) {
    if (inside.kind !== 'redrawn') throw new Error(`${inside.name} is ${inside.kind}`);
    expect(inside.moved).toBeLessThan(within);
  }
}

describe('what moved between two drafts', () => {
  test('is nothing where a piece only lies elsewhere on the paper', () => {
    const elsewhere = moveTo(carried(first, movedBy({ x: 300, y: -40 })));
    expectStill(elsewhere, 1e-6);
    expect(elsewhere.grain).toBeCloseTo(0, 9);
    expect(elsewhere.laidBy).toBe('fold');
  });

  test('names pieces that came and went', () => {
    const without = { ...smallGarment, pieces: others };
    expect(moves(without, smallGarment)[0]).toEqual({ kind: 'new', piece: first.name });
    expect(moves(smallGarment, without).at(-1)).toEqual({ kind: 'gone', piece: first.name });
  });

  test.each([
    ['that says so', true],
    ['that was read from a file and has only its name', false],
  ])(
    'is nothing on a left and a right that only went apart or came together, one mirrored, %s',
    (_, says) => {
      const one = (side: Side, mirrored: boolean): Piece => ({
        ...(mirrored ? mirrorImage(first) : first),
        name: `${side} ${first.name}`,
        ...(says && { oneOf: { pair: first.name, side, mirrored } }),
      });
      const apart = { ...smallGarment, pieces: [one('right', false), one('left', true), ...others] };
      for (const found of [moves(smallGarment, apart), moves(apart, smallGarment)]) {
        expect(found.map(({ kind, piece }) => `${kind} ${piece}`)).toEqual(
          apart.pieces.map(({ name }) => `redrawn ${name}`),
        );
        for (const move of found) if (move.kind === 'redrawn') expectStill(move, 1e-6);
      }
    },
  );

  test('tells how far a notch moved along its edge, which came, which went, and which is of another kind', () => {
    const [balance, fold] = first.notches;
    if (!balance || !fold) throw new Error('no notches');
    const { notches } = moveTo({
      ...first,
      notches: [
        { ...balance, at: balance.at + 3, mark: 'double' },
        { ...fold, name: 'centre fold' },
      ],
    });
    expect(notches).toEqual([
      {
        kind: 'redrawn',
        notch: balance.name,
        edge: 'princess',
        before: 80,
        after: 83,
        mark: { before: 'single', after: 'double' },
      },
      { kind: 'new', notch: 'centre fold', edge: 'waist', at: 82 },
      { kind: 'gone', notch: 'waist fold', edge: 'waist', at: 82 },
    ]);
  });

  test('tells how much longer an edge got and how far its farthest place moved', () => {
    const longer = (p: { x: number; y: number }) => point(p.x, p.y * 1.1);
    const move = moveTo(carried(first, longer));
    const changed = move.edges.flatMap((edge) =>
      edge.kind === 'redrawn' && edge.after > edge.before + 1 ? [edge] : [],
    );
    expect(changed.length).toBeGreaterThan(0);
    for (const edge of changed)
      expect(edge.moved).toBeGreaterThanOrEqual((edge.after - edge.before) / 2 - 0.1);
  });

  // A cubic whose handles lie 16 mm beyond its chord bulges by three quarters of that.
  test('tells how far the outlines lie apart, and the cutting lines with them', () => {
    const edges = first.edges.map((edge) =>
      edge.name === 'waist'
        ? {
            ...edge,
            curves: [
              {
                kind: 'cubic' as const,
                from: point(82, 200),
                handle1: point(55, 216),
                handle2: point(27, 216),
                to: point(0, 200),
              },
            ],
          }
        : edge,
    );
    const move = moveTo({ ...first, edges });
    expect(move.stitchingLine).toBeCloseTo(12, 2);
    expect(move.cuttingLine).toBeCloseTo(12, 0);
  });

  test('tells an allowance, what becomes of an edge, a count and a number', () => {
    const edges = first.edges.map((edge) =>
      edge.name === 'waist' ? { ...edge, allowance: 20, turn: 'hem' as const } : edge,
    );
    const cut = [{ cloth: 'self' as const, count: 2, onFold: true, pair: false }];
    const move = moveTo({ ...first, edges, cut, number: 9 });
    expect(move.edges.find(({ edge }) => edge === 'waist')).toMatchObject({
      moved: 0,
      allowance: { before: 12.7, after: 20 },
      turn: { before: 'seam', after: 'hem' },
    });
    expect(move).toMatchObject({ number: { before: 1, after: 9 }, cut: { before: first.cut, after: cut } });
    expect(move.stitchingLine).toBeCloseTo(0, 9);
    // At the mitred corner a little more than 20 - 12.7 mm.
    expect(move.cuttingLine).toBeGreaterThan(7.29);
    expect(move.cuttingLine).toBeLessThan(10);
  });

  test('tells how far lines and marks inside moved, and how far the grain was turned', () => {
    const grain = {
      from: first.grain.from,
      to: turnedBy(first.grain.from, Math.PI / 60)(first.grain.to),
    };
    const lines = first.lines.map((line) => transformedEdge(line, movedBy({ x: 0, y: 4 })));
    const marks = first.marks.map((mark) => ({ ...mark, length: mark.length / 2 }));
    const move = moveTo({ ...first, grain, lines, marks });
    expect(move.grain).toBeCloseTo(3, 6);
    // 120 mm of grainline turned by 3 degrees about its upper end.
    expect(move.inside).toEqual([
      {
        kind: 'redrawn',
        what: 'line',
        name: 'grainline',
        moved: expect.closeTo(240 * Math.sin(Math.PI / 120), 6),
      },
      { kind: 'redrawn', what: 'level line', name: 'bust', moved: expect.closeTo(4, 6) },
      { kind: 'redrawn', what: 'gathering line', name: 'top gathers', moved: expect.closeTo(4, 6) },
      { kind: 'redrawn', what: 'buttonhole', name: 'cord', moved: expect.closeTo(3.5, 6) },
      { kind: 'redrawn', what: 'drill hole', name: 'dart', moved: expect.closeTo(0, 6) },
    ]);
  });

  test('knows an edge under a new name between the neighbours it had, and its notches with it', () => {
    const renamed: Piece = {
      ...first,
      edges: first.edges.map((edge) => (edge.name === 'waist' ? { ...edge, name: 'under bust' } : edge)),
      notches: first.notches.map((notch) =>
        notch.edge === 'waist' ? { ...notch, edge: 'under bust' } : notch,
      ),
    };
    const move = moveTo(renamed);
    expect(move.edges.find(({ edge }) => edge === 'under bust')).toMatchObject({
      kind: 'redrawn',
      was: 'waist',
      before: 82,
      after: 82,
      moved: 0,
    });
    expectStill(move, 1e-6);
  });

  test('names edges that came of a cut, and the one that is gone', () => {
    const [neckline, princess, , centre] = first.edges;
    if (!neckline || !princess || !centre) throw new Error('no edges');
    const half = (name: string, from: number, to: number) => ({
      ...neckline,
      name,
      curves: [{ kind: 'line' as const, from: point(from, 200), to: point(to, 200) }],
    });
    const edges = [neckline, princess, half('waist side', 82, 40), half('waist middle', 40, 0), centre];
    const move = moveTo({ ...first, edges });
    expect(move.edges.filter(({ kind }) => kind !== 'redrawn')).toEqual([
      { kind: 'new', edge: 'waist side', length: 42 },
      { kind: 'new', edge: 'waist middle', length: 40 },
      { kind: 'gone', edge: 'waist', length: 82 },
    ]);
    expect(move.stitchingLine).toBeCloseTo(0, 9);
  });

  // 10 mm more at the seam, and turned on the paper: the fold stays a fold.
  test('lays a fold on the fold, so that what lies beyond it has moved', () => {
    const wider: Transform = ({ x, y }) => point(x === 0 ? 0 : x + 10, y);
    const to = turnedBy(point(-40, 90), 0.4);
    const edges = first.edges.map((edge) => transformedEdge(transformedEdge(edge, wider), to));
    const move = moveTo({ ...first, edges });
    const centre = move.edges.find(({ edge }) => edge === 'centre');
    expect(centre).toMatchObject({ moved: expect.closeTo(0, 6) });
    expect(move.edges.find(({ edge }) => edge === 'princess')).toMatchObject({
      moved: expect.closeTo(10, 6),
    });
    expect(move.laidBy).toBe('fold');
  });

  test('tells no distance of cutting lines where only one draft has any', () => {
    const [move] = movesBetween({ pieces: [first], cutLines: new Map() }, sheetOf(smallGarment));
    expect(move).toMatchObject({ kind: 'redrawn', stitchingLine: expect.closeTo(0, 9) });
    expect(move).not.toHaveProperty('cuttingLine');
  });

  test('lays a piece by its grain and its middle where no edge has its old name', () => {
    const edges = first.edges.map((edge) => ({ ...edge, name: `${edge.name} 2` }));
    const turned = carried({ ...first, edges }, turnedBy(point(50, 50), 0.3));
    const move = moveTo(turned);
    expect(move.laidBy).toBe('grain');
    expect(move.stitchingLine).toBeLessThan(1e-6);
    expect(move.edges.map(({ kind }) => kind)).toEqual([...Array(4).fill('new'), ...Array(4).fill('gone')]);
  });
});

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { isClosed } from '../../../engine/checks/outlines.ts';
import { edgeLength } from '../../../engine/geometry/edge.ts';
import { joints } from '../../../engine/geometry/inflections.ts';
import { outlineBounds, signedArea } from '../../../engine/geometry/outline.ts';
import type { Piece } from '../../../engine/pattern/piece.ts';
import { lengthen } from '../../../engine/shaping/lengthen.ts';
import { widthAt } from '../../../engine/shaping/own-piece.ts';
import { uniform } from '../../uniform.ts';
import { line } from '../geometry/generators.ts';
import { anyPanel, codesOf, edge, edgeNamed, made, pieceOf, rectangle } from './pieces.ts';

const longer = (piece: Piece, amount: number, at: number): Piece =>
  made(lengthen(piece, { amount, at })).piece;

describe('lengthening at a level', () => {
  test.each([20, -20])('a rectangle becomes longer by exactly %d mm and no wider', (amount) => {
    const piece = longer(rectangle(200, 300), amount, 120);
    for (const name of ['side', 'front'])
      expect(edgeLength(edgeNamed(piece, name))).toBeCloseTo(300 + amount, 9);
    for (const name of ['top', 'hem']) expect(edgeLength(edgeNamed(piece, name))).toBe(200);
    expect(signedArea(piece.edges)).toBeCloseTo(200 * (300 + amount), 6);
  });

  test('any panel: the height grows by the amount, top and hem keep their length, sides run smoothly', () => {
    fc.assert(
      fc.property(anyPanel, uniform(-25, 80), (piece, amount) => {
        const after = longer(piece, amount, 60);
        const [was, is] = [outlineBounds(piece.edges), outlineBounds(after.edges)];
        expect(is.bottom - is.top).toBeCloseTo(was.bottom - was.top + amount, 6);
        for (const name of ['top', 'hem'])
          expect(edgeLength(edgeNamed(after, name))).toBeCloseTo(edgeLength(edgeNamed(piece, name)), 6);
        for (const { angle } of joints(edgeNamed(after, 'side'))) expect(Math.abs(angle)).toBeLessThan(1e-6);
        expect(isClosed(after.edges)).toBe(true);
      }),
      { numRuns: 60, endOnFailure: true },
    );
  });

  test('a straight slanting side stays straight', () => {
    const skirt = pieceOf([
      edge('waist', line(0, 0, 100, 0)),
      edge('side', line(100, 0, 160, 300)),
      edge('hem', line(160, 300, 0, 300)),
      edge('front', line(0, 300, 0, 0)),
    ]);
    const after = longer(skirt, 30, 150);
    expect(edgeNamed(after, 'side').curves).toEqual([line(100, 0, 160, 330)]);
    expect(widthAt(after, 330 - 1e-9)).toBeCloseTo(160, 6);
  });

  test('notches and the grainline below go down with the cloth, those above stay', () => {
    const piece = rectangle(200, 300, [
      { name: 'a', edge: 'side', at: 50, mark: 'single' },
      { name: 'b', edge: 'side', at: 200, mark: 'single' },
      { name: 'c', edge: 'front', at: 100, mark: 'single' },
    ]);
    const after = longer(piece, 20, 120);
    [50, 220, 100].map((at, i) => expect(after.notches[i]?.at).toBeCloseTo(at, 6));
    expect(after.grain).toEqual(piece.grain);
  });

  test('a level that runs through two legs of a piece lets both down', () => {
    const trousers = pieceOf([
      edge('waist', line(0, 0, 200, 0)),
      edge('outside', line(200, 0, 200, 300)),
      edge('hem 1', line(200, 300, 120, 300)),
      edge('inside 1', line(120, 300, 100, 100)),
      edge('inside 2', line(100, 100, 80, 300)),
      edge('hem 2', line(80, 300, 0, 300)),
      edge('other outside', line(0, 300, 0, 0)),
    ]);
    const after = longer(trousers, 40, 200);
    for (const name of ['outside', 'other outside'])
      expect(edgeLength(edgeNamed(after, name))).toBeCloseTo(340, 9);
    for (const name of ['hem 1', 'hem 2']) expect(edgeLength(edgeNamed(after, name))).toBeCloseTo(80, 9);
  });

  test.each<[string, number, number]>([
    ['level-misses-piece', 20, -5],
    ['level-misses-piece', 20, 400],
    ['shortened-away', -200, 120],
    ['level-at-corner', 20, 299.5],
  ])('is refused: %s', (code, amount, at) => {
    expect(codesOf(lengthen(rectangle(200, 300), { amount, at }))).toEqual([code]);
  });
});

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { cuttingLine } from '../../../engine/finishing/cut-line.ts';
import { edgeLength, edgeStart } from '../../../engine/geometry/edge.ts';
import { nearestOnEdge } from '../../../engine/geometry/nearest.ts';
import { outlineCurves } from '../../../engine/geometry/outline.ts';
import { distance } from '../../../engine/geometry/point.ts';
import type { Piece } from '../../../engine/pattern/piece.ts';
import { clockwise, edgesAtCorners } from '../../../engine/reading/traced-edges.ts';
import { ownPiece } from '../../../engine/shaping/own-piece.ts';
import { takeOffAllowance } from '../../../engine/shaping/take-off-allowance.ts';
import { line } from '../geometry/generators.ts';
import { anyPanel, codesOf, edge, edgeNamed, made, pieceOf, rectangle } from './pieces.ts';

/** A piece cut out, traced round its cutting line, with its edges named again and the same allowance. */
function cutAndTraced(piece: Piece, names: readonly string[]): Piece {
  const chain = clockwise(cuttingLine(piece, 0.001).curves);
  const edges = edgesAtCorners(chain, 0.4).map((each, i) => ({ ...each, name: names[i] ?? each.name }));
  const traced = { edges, notches: [], mmPerUnit: 1, scaleFrom: 'given' } as const;
  const allowance = Math.max(...piece.edges.map((each) => each.allowance));
  return made(ownPiece(traced, { name: piece.name, allowance, hem: allowance, folds: [], hems: [] }));
}

describe('taking the allowance off a cutting line', () => {
  test('a rectangle loses it on every side; notches go straight in', () => {
    const cut = rectangle(225.4, 325.4, [{ name: 'a', edge: 'side', at: 100, mark: 'single' }]);
    const sewn = made(takeOffAllowance(cut));
    const sides = [200, 300, 200, 300];
    expect(sewn.edges.map((each) => edgeLength(each))).toEqual(sides.map((side) => expect.closeTo(side, 9)));
    expect(edgeStart(edgeNamed(sewn, 'top'))).toMatchObject({
      x: expect.closeTo(12.7, 9),
      y: expect.closeTo(12.7, 9),
    });
    expect(sewn.notches[0]?.at).toBeCloseTo(87.3, 6);
  });

  test('a fold and a hem of another width lose their own', () => {
    const cut = rectangle(225.4, 325.4);
    const widths: Readonly<Record<string, number>> = { hem: 40, front: 0 };
    const edges = cut.edges.map((each) => ({ ...each, allowance: widths[each.name] ?? each.allowance }));
    const sewn = made(takeOffAllowance({ ...cut, edges }));
    const sides = [212.7, 272.7, 212.7, 272.7];
    expect(sewn.edges.map((each) => edgeLength(each))).toEqual(sides.map((side) => expect.closeTo(side, 9)));
    expect(edgeStart(edgeNamed(sewn, 'top')).x).toBeCloseTo(0, 9);
  });

  // The cutting line drawn by engine/finishing, which knows nothing of this, is the judge.
  test('any panel comes back from its cutting line to within 0.05 mm', () => {
    fc.assert(
      fc.property(anyPanel, (piece) => {
        const sewn = made(takeOffAllowance(cutAndTraced(piece, ['top', 'side', 'hem', 'front'])));
        expect(sewn.edges).toHaveLength(4);
        const was = { curves: outlineCurves(piece.edges) };
        for (const each of sewn.edges) {
          expect(nearestOnEdge(was, edgeStart(each)).distance).toBeLessThan(0.05);
          expect(distance(edgeStart(each), edgeStart(edgeNamed(piece, each.name)))).toBeLessThan(0.1);
          expect(Math.abs(edgeLength(each) - edgeLength(edgeNamed(piece, each.name)))).toBeLessThan(0.2);
        }
      }),
      { numRuns: 40, endOnFailure: true },
    );
  });

  test('an inward corner comes back too', () => {
    const shape = pieceOf([
      edge('top', line(0, 0, 200, 0)),
      edge('side', line(200, 0, 200, 300)),
      edge('hem', line(200, 300, 100, 300)),
      edge('slit', line(100, 300, 100, 150)),
      edge('step', line(100, 150, 0, 150)),
      edge('front', line(0, 150, 0, 0)),
    ]);
    const names = shape.edges.map(({ name }) => name);
    const sewn = made(takeOffAllowance(cutAndTraced(shape, names)));
    for (const each of shape.edges)
      expect(edgeLength(edgeNamed(sewn, each.name))).toBeCloseTo(edgeLength(each), 4);
  });

  test('without an allowance nothing changes', () => {
    const bare = {
      ...rectangle(200, 300),
      edges: rectangle(200, 300).edges.map((e) => ({ ...e, allowance: 0 })),
    };
    expect(made(takeOffAllowance(bare))).toBe(bare);
  });

  test.each([
    [20, 300],
    [25.4, 300],
    [300, 12],
  ])('a strip of %d by %d mm has not so much to lose', (width, height) => {
    expect(codesOf(takeOffAllowance(rectangle(width, height)))).toEqual(['allowance-too-wide']);
  });

  test('an edge shorter than its corners take is named', () => {
    const cut = pieceOf([
      edge('top', line(0, 0, 200, 0)),
      edge('side', line(200, 0, 200, 290)),
      edge('nick', line(200, 290, 190, 300)),
      edge('hem', line(190, 300, 0, 300)),
      edge('front', line(0, 300, 0, 0)),
    ]);
    const refusal = takeOffAllowance({
      ...cut,
      edges: cut.edges.map((each) => ({ ...each, allowance: each.name === 'nick' ? 1 : 12.7 })),
    });
    expect(refusal.ok ? '' : refusal.issues[0]?.path).toBe('nick');
  });
});

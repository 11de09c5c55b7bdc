import { describe, expect, test } from 'vitest';
import { point } from '../../../engine/geometry/point.ts';
import { laidPieces } from '../../../engine/lay-plan/laid-piece.ts';
import { rectangle } from '../shaping/pieces.ts';

const cloth = { width: 1400, folded: true, nap: false, selvedge: 10, gap: 0, shrink: 0, stripe: 0 };
const onFold = { cloth: 'self', count: 1, onFold: true, pair: false } as const;

describe('a piece cut on the fold', () => {
  const half = rectangle(200, 300);
  const edges = half.edges.map((edge) => ({
    ...edge,
    turn: edge.name === 'front' ? ('fold' as const) : edge.turn,
  }));
  const line = { name: 'panel', curves: edges.flatMap(({ curves }) => curves) };
  const laid = (x: number, y: number) =>
    laidPieces(
      { ...half, edges, grain: { from: point(50, 50), to: point(50 + x, 50 + y) } },
      line,
      onFold,
      cloth,
    );

  test('is laid where its fold runs along or across the grain', () => {
    for (const [x, y] of [
      [0, 100],
      [100, 0],
    ] as const) {
      expect(laid(x, y).issues).toEqual([]);
      expect(laid(x, y).laid.length).toBeGreaterThan(0);
    }
  });

  test('is refused by name where its fold lies on the bias', () => {
    const { laid: none, issues } = laid(100, 100);
    expect(none).toEqual([]);
    expect(issues).toEqual([
      expect.objectContaining({ code: 'piece-not-laid', severity: 'error', path: 'panel' }),
    ]);
  });
});

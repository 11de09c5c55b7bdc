import { describe, expect, test } from 'vitest';
import { cutUp } from '../../../engine/shaping/cut-up.ts';
import { mirror } from '../../../engine/shaping/mirror.ts';
import { ownPiece } from '../../../engine/shaping/own-piece.ts';
import { takeOffAllowance } from '../../../engine/shaping/take-off-allowance.ts';
import { line } from '../geometry/generators.ts';
import { codesOf, edge, pieceOf, rectangle } from './pieces.ts';

describe('an alteration that no piece allows is refused by name', () => {
  test('slash lines that cross each other', () => {
    const { edges } = rectangle(200, 300);
    const across = (from: number, to: number) => ({
      from: { edge: 'top', at: from },
      to: { edge: 'hem', at: to },
    });
    // The hem runs back, so that 150 along it lies below 50 of the top.
    expect(codesOf(cutUp(edges, [across(50, 50), across(150, 150)]))).toEqual(['slashes-cross']);
    expect(codesOf(cutUp(edges, [across(50, 150), across(150, 50)]))).toEqual([]);
  });

  test('the only edge that a piece has', () => {
    expect(codesOf(mirror(pieceOf([edge('front', line(0, 300, 0, 0))]), 'front'))).toEqual([
      'mirror-only-edge',
    ]);
  });

  test('neighbours that do not meet without their allowances: one straight line, sewn narrow, then wide', () => {
    const piece = pieceOf([
      { ...edge('neck', line(0, 0, 100, 0)), allowance: 5 },
      { ...edge('shoulder', line(100, 0, 200, 0)), allowance: 30 },
      edge('side', line(200, 0, 200, 300)),
      edge('hem', line(200, 300, 0, 300)),
      edge('front', line(0, 300, 0, 0)),
    ]);
    expect(codesOf(takeOffAllowance(piece))).toEqual(['allowance-no-corner']);
    const even = piece.edges.map((each) => ({ ...each, allowance: 12.7 }));
    expect(codesOf(takeOffAllowance({ ...piece, edges: even }))).toEqual([]);
  });
});

describe('a traced piece', () => {
  /** Its top traced in steps of a centimetre, turning once by so many degrees. */
  const traced = (degrees: number) => {
    const slope = Math.tan((degrees * Math.PI) / 180);
    const height = (x: number): number => Math.max(0, x - 100) * slope;
    const steps = Array.from({ length: 20 }, (_, i) => 10 * i);
    const side = height(200);
    return ownPiece(
      {
        edges: [
          { name: 'top', curves: steps.map((x) => line(x, height(x), x + 10, height(x + 10))) },
          { name: 'side', curves: [line(200, side, 200, 300)] },
          { name: 'hem', curves: [line(200, 300, 0, 300)] },
          { name: 'front', curves: [line(0, 300, 0, 0)] },
        ],
        notches: [],
        mmPerUnit: 1,
        scaleFrom: 'given',
      },
      { name: 'panel', allowance: 10, hem: 30, folds: [], hems: [] },
    );
  };

  test('has its kinks smoothed out, and is told so with how far its edge moved', () => {
    const { issues } = traced(3);
    expect(issues).toEqual([expect.objectContaining({ code: 'edge-faired', severity: 'note', path: 'top' })]);
    expect(issues[0]?.value).toBeGreaterThan(0);
    expect(issues[0]?.value).toBeLessThanOrEqual(0.25);
    expect(issues[0]?.message).not.toContain('--corner');
  });

  test('is asked whether a sharp one was a corner', () => {
    expect(traced(9.5).issues[0]?.message).toContain('if that is a corner, say --corner 8');
  });

  test('without kinks is told nothing', () => {
    expect(traced(0).issues).toEqual([]);
  });
});

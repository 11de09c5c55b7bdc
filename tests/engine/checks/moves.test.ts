import { describe, expect, test } from 'vitest';
import { movesBetween } from '../../../engine/checks/moves.ts';
import { point } from '../../../engine/geometry/point.ts';
import { movedBy, transformedEdge } from '../../../engine/geometry/transform.ts';
import type { Garment } from '../../../engine/pattern/garment.ts';
import { mirrorImage } from '../../../engine/pattern/mirror-image.ts';
import { smallGarment } from '../render/small-garment.ts';

const [first, ...others] = smallGarment.pieces;
if (!first) throw new Error('The small garment has no pieces.');

const withFirst = (piece: typeof first): Garment => ({ ...smallGarment, pieces: [piece, ...others] });

describe('what moved between two drafts', () => {
  test('is nothing where a piece only lies elsewhere on the paper', () => {
    const to = movedBy({ x: 300, y: -40 });
    const elsewhere = withFirst({ ...first, edges: first.edges.map((edge) => transformedEdge(edge, to)) });
    for (const move of movesBetween(smallGarment, elsewhere)) {
      if (move.kind !== 'redrawn') throw new Error(`${move.piece} is ${move.kind}`);
      for (const edge of move.edges) {
        expect(edge.moved).toBeLessThan(1e-6);
        expect(edge.after).toBeCloseTo(edge.before, 9);
      }
    }
  });

  test('names pieces that came and went', () => {
    const without = { ...smallGarment, pieces: others };
    expect(movesBetween(without, smallGarment)[0]).toEqual({ kind: 'new', piece: first.name });
    expect(movesBetween(smallGarment, without).at(-1)).toEqual({ kind: 'gone', piece: first.name });
  });

  test('is nothing on a left and a right that only went apart or came together, one of them mirrored', () => {
    const one = (side: string, mirrored: boolean) => ({
      ...(mirrored ? mirrorImage(first) : first),
      name: `${side} ${first.name}`,
      oneOf: { pair: first.name, mirrored },
    });
    const apart = { ...smallGarment, pieces: [one('right', false), one('left', true), ...others] };
    for (const moves of [movesBetween(smallGarment, apart), movesBetween(apart, smallGarment)]) {
      expect(moves.map(({ kind, piece }) => `${kind} ${piece}`)).toEqual(
        apart.pieces.map(({ name }) => `redrawn ${name}`),
      );
      for (const move of moves)
        if (move.kind === 'redrawn') {
          for (const { moved } of move.edges) expect(moved).toBeLessThan(1e-6);
          for (const { before, after } of move.notches) expect(after).toBeCloseTo(before, 5);
        }
    }
  });

  test('tells how far a notch moved along its edge', () => {
    const shifted = withFirst({
      ...first,
      notches: first.notches.map((notch) => ({ ...notch, at: notch.at + 3 })),
    });
    const [move] = movesBetween(smallGarment, shifted);
    if (move?.kind !== 'redrawn') throw new Error('not redrawn');
    expect(move.notches.length).toBe(first.notches.length);
    for (const notch of move.notches) expect(notch.after - notch.before).toBeCloseTo(3, 9);
  });

  test('tells how much longer an edge got and how far its farthest place moved', () => {
    const longer = (p: { x: number; y: number }) => point(p.x, p.y * 1.1);
    const stretched = withFirst({
      ...first,
      edges: first.edges.map((edge) => transformedEdge(edge, longer)),
    });
    const [move] = movesBetween(smallGarment, stretched);
    if (move?.kind !== 'redrawn') throw new Error('not redrawn');
    const changed = move.edges.filter(({ before, after }) => after > before + 1);
    expect(changed.length).toBeGreaterThan(0);
    for (const edge of changed)
      expect(edge.moved).toBeGreaterThanOrEqual((edge.after - edge.before) / 2 - 0.1);
  });
});

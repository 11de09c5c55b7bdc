import { describe, expect, test } from 'vitest';
import { alter } from '../../engine/alter.ts';
import { edgeLength } from '../../engine/geometry/edge.ts';
import { outlineBounds, signedArea } from '../../engine/geometry/outline.ts';
import type { Piece } from '../../engine/pattern/piece.ts';
import type { Alteration } from '../../engine/shaping/alteration.ts';
import { ownPiece } from '../../engine/shaping/own-piece.ts';

const corners = [
  [0, 0],
  [200, 0],
  [200, 250],
  [0, 250],
] as const;
const names = ['top', 'side', 'hem', 'front'];

/** A rectangle of 200 by 250 mm. */
const rectangle = ((): Piece => {
  const edges = corners.map(([x, y], i) => {
    const [u, v] = corners[(i + 1) % 4] ?? [0, 0];
    return { name: names[i] ?? '', curves: [{ kind: 'line' as const, from: { x, y }, to: { x: u, y: v } }] };
  });
  const own = ownPiece(
    { edges, notches: [], mmPerUnit: 1, scaleFrom: 'given' },
    { name: 'panel', allowance: 10, hem: 30, folds: [], hems: [] },
  );
  if (!own.ok) throw new Error('no piece');
  return own.value;
})();

function altered(...alterations: readonly Alteration[]) {
  const result = alter(rectangle, alterations);
  if (!result.ok) throw new Error(JSON.stringify(result.issues));
  return result.value;
}

const slashing = { from: 'top', to: 'hem', lines: 3 };
const wider: Alteration = { kind: 'spread', slashing, amount: 60 };
const longer: Alteration = { kind: 'lengthen', amount: 50, at: { share: 0.4 } };

describe('alterations one after the other', () => {
  test('are none where none is asked for', () => {
    expect(altered()).toMatchObject({ done: [], deviation: 0, piece: { edges: rectangle.edges } });
  });

  test('of which neither touches the other come out the same in either order', () => {
    for (const { piece, done } of [altered(wider, longer), altered(longer, wider)]) {
      expect(signedArea(piece.edges)).toBeCloseTo(260 * 300, 6);
      expect(piece.edges.map(({ name }) => name)).toEqual(names);
      expect(done).toHaveLength(2);
    }
  });

  test('measure shares on the piece as the one before left it', () => {
    // Across the middle of 250 mm, and then of 350 mm: the second level lies in what the first let down.
    const half = { kind: 'lengthen', amount: 100, at: { share: 0.5 } } as const;
    const { top, bottom } = outlineBounds(altered(half, half).piece.edges);
    expect(bottom - top).toBeCloseTo(450, 6);
  });

  test('gather to what an edge measures by then', () => {
    const { piece } = altered(wider, { kind: 'gather', slashing, ratio: 1.5 });
    const top = piece.edges.find(({ name }) => name === 'top');
    expect(top && edgeLength(top)).toBeCloseTo(1.5 * 260, 1);
  });

  test('number the slash lines of all spreads on', () => {
    const { piece } = altered(wider, wider);
    const slashes = piece.lines.filter(({ kind }) => kind === 'slash').map(({ name }) => name);
    expect(slashes.toSorted()).toEqual([1, 2, 3, 4, 5, 6].map((i) => `slash line ${i}`));
  });

  test('tell which of them cannot be done, by its number, where there are several', () => {
    const wrong: Alteration = { kind: 'mirror', edge: 'neck' };
    const [one, second] = [alter(rectangle, [wrong]), alter(rectangle, [wider, wrong])];
    expect(one.ok || second.ok).toBe(false);
    expect(one.issues[0]?.message).toMatch(/^The piece has no edge/);
    expect(second.issues[0]).toMatchObject({
      code: 'no-such-edge',
      message: expect.stringMatching(/^Alteration 2: The piece has no edge called “neck”/),
    });
  });

  test('spread by half the difference of two cups, and refuse two that are one', () => {
    const cup = (to: string, whole: boolean): Alteration => ({
      kind: 'another cup',
      slashing,
      from: 'B',
      to,
      whole,
    });
    // B is 14 to 16 cm of difference, D 18 to 20 (EN 13402).
    expect(signedArea(altered(cup('D', false)).piece.edges)).toBeCloseTo(220 * 250, 6);
    expect(signedArea(altered(cup('D', true)).piece.edges)).toBeCloseTo(240 * 250, 6);
    expect(alter(rectangle, [cup('B', true)]).issues[0]?.code).toBe('cups-same');
  });
});

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { point } from '../../../../engine/geometry/point.ts';
import { placeShapes, type Shape } from '../../../../engine/render/tiles/place-shapes.ts';

const box = (width: number, height: number): Shape => {
  const corners = [point(0, 0), point(width, 0), point(width, height), point(0, height)];
  return { outlines: [corners.map((from, i) => ({ from, to: corners[(i + 1) % 4] ?? from }))] };
};

const cell = { width: 180, height: 267 };
const most = { columns: 8, rows: 60 };

describe('placing shapes on pages', () => {
  test('lays nothing over anything else, and 6 mm apart', () => {
    const sizes = fc.array(fc.tuple(fc.integer({ min: 5, max: 500 }), fc.integer({ min: 5, max: 500 })), {
      minLength: 1,
      maxLength: 8,
    });
    fc.assert(
      fc.property(sizes, (all) => {
        const placing = placeShapes(
          all.map(([w, h]) => box(w, h)),
          cell,
          most,
        );
        const boxes = (placing?.places ?? []).map(({ corner }, i) => {
          const [w = 0, h = 0] = all[i] ?? [];
          return { left: corner.x, top: corner.y, right: corner.x + w, bottom: corner.y + h };
        });
        expect(boxes).toHaveLength(all.length);
        for (const [i, a] of boxes.entries())
          for (const b of boxes.slice(i + 1)) {
            const gapX = Math.max(b.left - a.right, a.left - b.right);
            const gapY = Math.max(b.top - a.bottom, a.top - b.bottom);
            expect(Math.max(gapX, gapY)).toBeGreaterThanOrEqual(6 - 1e-9);
          }
      }),
      { numRuns: 40 },
    );
  });

  test('crosses no edge of a page that need not be crossed', () => {
    const placing = placeShapes([box(174, 261), box(174, 261), box(174, 261)], cell, most);
    expect(placing?.pages).toBe(3);
  });

  test('fills the hollow of one shape with another', () => {
    const corner = [point(0, 0), point(174, 0), point(174, 40), point(40, 40), point(40, 261), point(0, 261)];
    const hollow = { outlines: [corner.map((from, i) => ({ from, to: corner[(i + 1) % 6] ?? from }))] };
    expect(placeShapes([hollow, box(100, 180)], cell, most)?.pages).toBe(1);
  });

  test('turns a shape upside down where that saves a page', () => {
    const wedge = (points: readonly (readonly [number, number])[]) =>
      points.map(([x, y], i) => {
        const [x2, y2] = points[(i + 1) % 3] ?? [x, y];
        return { from: point(x, y), to: point(x2, y2) };
      });
    const up = wedge([
      [0, 250],
      [0, 0],
      [140, 250],
    ]);
    const down = wedge([
      [140, 0],
      [140, 250],
      [0, 0],
    ]);
    const placing = placeShapes([{ outlines: [up, down] }, { outlines: [up, down] }], cell, most);
    expect(placing?.pages).toBe(1);
    expect(new Set(placing?.places.map(({ way }) => way)).size).toBe(2);
  });

  test('answers with nothing when there is no room', () => {
    expect(placeShapes([box(2000, 10)], cell, most)).toBeUndefined();
    expect(placeShapes([box(100, 300)], cell, { columns: 1, rows: 1 })).toBeUndefined();
  });
});

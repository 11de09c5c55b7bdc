import fc from 'fast-check';
import { expect, test } from 'vitest';
import { standInRows } from '../../../engine/render/layout.ts';

const side = fc.double({ min: 1, max: 1200, noNaN: true });
const sizes = fc.array(fc.record({ width: side, height: side }), { minLength: 1, maxLength: 15 });

test('rectangles stand on the paper with a gap between them and round them', () => {
  fc.assert(
    fc.property(sizes, (rectangles) => {
      const { corners, paper } = standInRows(rectangles, 914, 20);
      const placed = rectangles.map((size, i) => ({
        ...size,
        ...(corners[i] ?? { x: Number.NaN, y: Number.NaN }),
      }));
      for (const [i, a] of placed.entries()) {
        expect(a.x).toBeGreaterThanOrEqual(20);
        expect(a.y).toBeGreaterThanOrEqual(20);
        expect(a.x + a.width).toBeLessThanOrEqual(paper.width - 20 + 1e-6);
        expect(a.y + a.height).toBeLessThanOrEqual(paper.height - 20 + 1e-6);
        for (const b of placed.slice(i + 1)) {
          const apart = [
            b.x - a.x - a.width,
            a.x - b.x - b.width,
            b.y - a.y - a.height,
            a.y - b.y - b.height,
          ];
          expect(Math.max(...apart)).toBeGreaterThanOrEqual(20 - 1e-6);
        }
      }
    }),
  );
});

test('paper is no wider than asked for unless one rectangle needs it', () => {
  const many = Array.from({ length: 12 }, () => ({ width: 200, height: 100 }));
  expect(standInRows(many, 914, 20).paper.width).toBeLessThanOrEqual(914);
  expect(standInRows([...many, { width: 1000, height: 50 }], 914, 20).paper.width).toBe(1040);
});

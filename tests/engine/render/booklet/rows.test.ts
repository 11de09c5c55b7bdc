import fc from 'fast-check';
import { expect, test } from 'vitest';
import { inRows } from '../../../../engine/render/booklet/rows.ts';

const length = fc.double({ min: 1, max: 100, noNaN: true });
const sizes = fc.array(fc.record({ width: length, height: length }), { minLength: 1, maxLength: 12 });

test('rectangles in rows keep their order and the gap, and stay within the room they are said to take', () => {
  fc.assert(
    fc.property(sizes, (given) => {
      const rows = inRows(given, 150, 4);
      expect(rows.corners).toHaveLength(given.length);
      expect(rows.width).toBeLessThanOrEqual(150);
      for (const [i, { x, y }] of rows.corners.entries()) {
        const size = given[i] ?? { width: 0, height: 0 };
        expect(x).toBeGreaterThanOrEqual(-1e-9);
        expect(x + size.width).toBeLessThanOrEqual(rows.width + 1e-9);
        expect(y + size.height).toBeLessThanOrEqual(rows.height + 1e-9);
        const next = rows.corners[i + 1];
        if (next)
          expect(next.y > y ? next.y - y - size.height : next.x - x - size.width).toBeGreaterThan(4 - 1e-9);
      }
    }),
  );
});

test('nothing takes no room', () => {
  expect(inRows([], 100, 4)).toEqual({ corners: [], width: 0, height: 0 });
});

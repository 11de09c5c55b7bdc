import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { laidOn } from '../../../engine/geometry/laid-on.ts';
import { distance, type Point, point } from '../../../engine/geometry/point.ts';
import { movedBy, turnedBy } from '../../../engine/geometry/transform.ts';
import { uniform } from '../../uniform.ts';

const square: readonly Point[] = [
  [0, 0],
  [100, 0],
  [200, 0],
  [200, 150],
  [200, 300],
  [100, 300],
  [0, 300],
  [0, 150],
].map(([x = 0, y = 0]) => point(x, y));

describe('laying one drawing on another', () => {
  test('brings a drawing that was only turned and moved back onto itself', () => {
    const angle = uniform(-3, 3);
    const shift = fc.integer({ min: -2000, max: 2000 });
    fc.assert(
      fc.property(angle, shift, shift, (turn, x, y) => {
        const elsewhere = square.map(turnedBy(point(7, 8), turn)).map(movedBy({ x, y }));
        const lay = laidOn(square, elsewhere);
        for (const [i, p] of square.entries()) expect(distance(lay(p), elsewhere[i] ?? p)).toBeLessThan(1e-6);
      }),
    );
  });

  test('leaves what stayed lying on itself where one corner moved', () => {
    const changed = square
      .map((p, i) => (i === 4 ? point(p.x + 20, p.y) : p))
      .map(movedBy({ x: 50, y: -30 }));
    const lay = laidOn(square, changed);
    for (const [i, p] of square.entries())
      expect(distance(lay(p), changed[i] ?? p)).toBeCloseTo(i === 4 ? 20 : 0, 1);
  });
});

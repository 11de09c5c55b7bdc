import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Curve } from '../../../engine/geometry/curve.ts';
import { curveCrossings } from '../../../engine/geometry/curve-crossings.ts';
import { pointAt } from '../../../engine/geometry/evaluate.ts';
import { isSimple } from '../../../engine/geometry/inside.ts';
import { uniform } from '../../uniform.ts';
import { cubic, line } from './generators.ts';

/** A curve that rises from x 0 to about `length`, so nearly level that it is a function of x. */
const nearlyLevel = (length: number, high: number) =>
  fc
    .tuple(
      uniform(-1, 1),
      uniform(-2, 2),
      uniform(-2, 2),
      uniform(-1, 1),
      uniform(-0.1, 0.1),
      uniform(-0.1, 0.1),
    )
    .map(([a, b, c, d, e, f]) =>
      cubic(0, a * high, length * (1 / 3 + e), b * high, length * (2 / 3 + f), c * high, length, d * high),
    );

/** The height of such a curve at x, by halving. */
function heightAt(curve: Curve, x: number): number {
  let [low, high] = [0, 1];
  for (let i = 0; i < 50; i++) {
    const middle = (low + high) / 2;
    if (pointAt(curve, middle).x < x) low = middle;
    else high = middle;
  }
  return pointAt(curve, low).y;
}

/** How often the sign of the difference in height changes, differences below 0.002 mm left out. */
function changesOfSide(a: Curve, b: Curve, length: number): number {
  let [changes, before] = [0, 0];
  for (let i = 1; i < 200; i++) {
    const x = (length * i) / 200;
    const off = heightAt(a, x) - heightAt(b, x);
    if (Math.abs(off) < 0.002) continue;
    if (before !== 0 && Math.sign(off) !== before) changes++;
    before = Math.sign(off);
  }
  return changes;
}

describe('curves that run side by side and cross at a small angle', () => {
  test.each([0.01, 0.1, 0.5, 1, 1.9, 2.1, 10])('a bow %d mm over a line meets it twice', (over) => {
    const bow = cubic(0, -over, 33, 3 * over, 67, 3 * over, 100, -over);
    expect(curveCrossings(line(0, 0, 100, 0), bow)).toHaveLength(2);
    expect(curveCrossings(bow, line(100, 0, 0, 0))).toHaveLength(2);
  });

  test('are not taken for free of each other by an outline', () => {
    const bow = cubic(100, -1, 67, 1, 33, 1, 0, -1);
    const outline = (back: Curve) => [
      { name: 'line', curves: [line(0, 0, 100, 0)] },
      { name: 'side', curves: [line(100, 0, 120, -20), line(120, -20, 100, -1)] },
      { name: 'back', curves: [back] },
      { name: 'other side', curves: [line(0, -1, -20, -20), line(-20, -20, 0, 0)] },
    ];
    expect(isSimple(outline(bow))).toBe(false);
    expect(isSimple(outline(cubic(100, -1, 67, -0.5, 33, -0.5, 0, -1)))).toBe(true);
  });

  // The judge is a search for the height of both at many places.
  test('are found to cross at least as often as they change sides', () => {
    const pairs = fc
      .tuple(uniform(5, 300), uniform(-3, 0.5))
      .chain(([length, power]) =>
        fc.tuple(fc.constant(length), nearlyLevel(length, 10 ** power), nearlyLevel(length, 10 ** power)),
      );
    fc.assert(
      fc.property(pairs, ([length, a, b]) => {
        expect(curveCrossings(a, b).length).toBeGreaterThanOrEqual(changesOfSide(a, b, length));
      }),
      { numRuns: 600, endOnFailure: true },
    );
  });

  test('are looked for in a moment, where they lie in each other or beside each other', () => {
    const curve = cubic(0, 0, 100, 60, 200, 60, 300, 0);
    const beside = cubic(0, 0.001, 100, 60.001, 200, 60.001, 300, 0.001);
    const start = performance.now();
    curveCrossings(curve, curve);
    expect(curveCrossings(curve, beside)).toEqual([]);
    expect(performance.now() - start).toBeLessThan(2000);
  });
});

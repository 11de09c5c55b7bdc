import { describe, expect, test } from 'vitest';
import { logNormalBelow } from '../../../engine/numeric/normal.ts';

describe('the share of a normal distribution below a number', () => {
  // Abramowitz and Stegun, 1964, tables 26.1 and 26.2; from memory.
  test.each([
    [0, 0.5],
    [1, 0.8413447461],
    [-1, 0.1586552539],
    [1.96, 0.9750021049],
    [-3, 1.349898032e-3],
    [-3.0001, 1.349454884e-3],
    [-5, 2.866515719e-7],
    [-10, 7.619853024e-24],
  ])('at %d is as in the tables', (x, share) => {
    expect(logNormalBelow(x)).toBeCloseTo(Math.log(share), 4);
  });

  test('is told far beyond what a number can hold, and rises throughout', () => {
    expect(logNormalBelow(-60)).toBeCloseTo(-1800 - Math.log(60 * Math.sqrt(2 * Math.PI)), 3);
    let before = Number.NEGATIVE_INFINITY;
    for (let x = -8; x <= 4; x += 0.01) {
      const here = logNormalBelow(x);
      expect(here).toBeGreaterThan(before);
      before = here;
    }
    expect(logNormalBelow(8)).toBeCloseTo(0, 9);
  });
});

import { describe, expect, test } from 'vitest';
import { leastSquares } from '../../../engine/numeric/least-squares.ts';

const filled = (n: number, value: number): Float64Array => new Float64Array(n).fill(value);

describe('least squares', () => {
  test('find the bottom of a curved valley (H. H. Rosenbrock, 1960: at 1, 1)', () => {
    const { unknowns, sum, settled } = leastSquares(
      {
        start: Float64Array.of(-1.2, 1),
        scale: filled(2, 1),
        least: filled(2, -10),
        most: filled(2, 10),
        residuals: 2,
        evaluate: ([x = 0, y = 0], into) => {
          into[0] = 10 * (y - x * x);
          into[1] = 1 - x;
        },
      },
      200,
    );
    expect(settled).toBe(true);
    expect(unknowns[0]).toBeCloseTo(1, 3);
    expect(unknowns[1]).toBeCloseTo(1, 3);
    expect(sum).toBeLessThan(1e-6);
  });

  test('find the straight line of a table (normal equations by hand: 1.1 + 1.4 x)', () => {
    const table = [
      [0, 1],
      [1, 3],
      [2, 3],
      [3, 6],
      [4, 6.5],
    ] as const;
    const { unknowns } = leastSquares(
      {
        start: filled(2, 0),
        scale: filled(2, 1),
        least: filled(2, -100),
        most: filled(2, 100),
        residuals: table.length,
        evaluate: ([a = 0, b = 0], into) => {
          for (const [i, [x, y]] of table.entries()) into[i] = a + b * x - y;
        },
      },
      50,
    );
    expect(unknowns[0]).toBeCloseTo(1.1, 5);
    expect(unknowns[1]).toBeCloseTo(1.4, 5);
  });

  test('stay between their limits, and best what is left', () => {
    const { unknowns } = leastSquares(
      {
        start: filled(2, 0),
        scale: filled(2, 1),
        least: filled(2, -1),
        most: Float64Array.of(0.5, 5),
        residuals: 2,
        evaluate: ([x = 0, y = 0], into) => {
          into[0] = x - 2;
          into[1] = y + x - 3;
        },
      },
      50,
    );
    expect(unknowns[0]).toBe(0.5);
    expect(unknowns[1]).toBeCloseTo(2.5, 4);
  });
});

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { factor, solveLower, solveUpper, triangle } from '../../../engine/numeric/cholesky.ts';
import { innerProduct } from '../../../engine/numeric/inner-product.ts';
import { uniform } from '../../uniform.ts';

/** A lower triangle with a positive diagonal, many of its entries zero, so that rows begin late. */
const anyFactor = fc.integer({ min: 1, max: 9 }).chain((n) =>
  fc.array(fc.oneof(fc.constant(0), uniform(-3, 3)), { minLength: n * n, maxLength: n * n }).map((entries) =>
    Array.from({ length: n }, (_, i) =>
      Array.from({ length: n }, (__, j) => {
        const entry = entries[i * n + j] ?? 0;
        return j > i ? 0 : j === i ? 0.5 + Math.abs(entry) : entry;
      }),
    ),
  ),
);

const times = (a: readonly (readonly number[])[], x: readonly number[]): number[] =>
  a.map((row) => row.reduce((sum, value, k) => sum + value * (x[k] ?? 0), 0));
const turned = (a: readonly (readonly number[])[]): number[][] =>
  a.map((_, j) => a.map((row) => row[j] ?? 0));

describe('the factor of a symmetric matrix', () => {
  it('is the one it was made of, and solves for what was put in', () => {
    fc.assert(
      fc.property(
        anyFactor,
        fc.array(fc.oneof(fc.constant(0), uniform(-9, 9)), { minLength: 9, maxLength: 9 }),
        (lower, numbers) => {
          const n = lower.length;
          const x = numbers.slice(0, n);
          const matrix = lower.map((row) => times(lower, row));
          const made = triangle(n, Float64Array.from(matrix.flat()));
          expect(factor(made)).toBe(true);
          for (const [i, row] of lower.entries())
            for (let j = 0; j <= i; j++) expect(made.entries[i * n + j]).toBeCloseTo(row[j] ?? 0, 6);
          const b = Float64Array.from(times(lower, x));
          solveLower(made, b);
          for (const [k, value] of b.entries()) expect(value).toBeCloseTo(x[k] ?? 0, 5);
          const c = Float64Array.from(times(turned(lower), x));
          solveUpper(made, c);
          for (const [k, value] of c.entries()) expect(value).toBeCloseTo(x[k] ?? 0, 5);
        },
      ),
    );
  });

  it('is none where the matrix is not positive definite', () => {
    for (const entries of [
      [1, 0, 1, 1],
      [1, 0, 2, 1],
      [0, 0, 0, 1],
      [-1, 0, 0, 1],
    ])
      expect(factor(triangle(2, Float64Array.from(entries)))).toBe(false);
  });
});

describe('the product of two runs of numbers', () => {
  it('counts as many as it is told, from where it is told', () => {
    const [a, b] = [
      Float64Array.from({ length: 14 }, (_, i) => i + 1),
      Float64Array.from({ length: 14 }, (_, i) => 2 * i - 5),
    ];
    for (let count = 0; count <= 11; count++) {
      let sum = 0;
      for (let k = 0; k < count; k++) sum += (a[2 + k] ?? 0) * (b[3 + k] ?? 0);
      expect(innerProduct(a, 2, b, 3, count)).toBe(sum);
    }
  });
});

import { describe, expect, it } from 'vitest';
import { inner, longest, quadratic, squareLength } from '../../../../engine/constraints/method/vectors.ts';

const p = Float64Array.of(1, -2, 3);

describe('a move of all unknowns', () => {
  it('is measured at arm’s length: the farthest, and the squares of all', () => {
    expect(longest(p, [1, 1, 1])).toBe(3);
    expect(longest(p, [1, 100, 1])).toBe(200);
    expect(squareLength(p, [1, 1, 1])).toBe(14);
    expect(squareLength(p, [1, 2, 1])).toBe(26);
    expect(inner(p, Float64Array.of(4, 5, 6))).toBe(12);
  });

  it('meets a symmetric matrix by its lower triangle', () => {
    // (1, -2, 3) H (1, -2, 3) of H = [2 1 0; 1 5 -4; 0 -4 3]: 2 + 20 + 27 + 2 (-2 + 24). What stands above is not read.
    const h = Float64Array.of(2, 99, 99, 1, 5, 99, 0, -4, 3);
    expect(quadratic(h, p)).toBe(93);
  });
});

import { describe, expect, test } from 'vitest';
import { tautChain, tautHalf } from '../../../engine/form/hull.ts';

/**
 * The perimeter of an ellipse by the arithmetic-geometric mean (C. F. Gauss; A. M. Legendre; as in Abramowitz and Stegun,
 * 17.6): 2 pi (a^2 - sum of 2^(n-1) c_n^2) / agm(a, b).
 */
function ellipsePerimeter(a: number, b: number): number {
  let [x, y] = [a, b];
  let [sum, power] = [0.5 * (a * a - b * b), 0.5];
  while (Math.abs(x - y) > 1e-14 * a) {
    const c = (x - y) / 2;
    [x, y] = [(x + y) / 2, Math.sqrt(x * y)];
    power *= 2;
    sum += power * c * c;
  }
  return (2 * Math.PI * (a * a - sum)) / x;
}

/** A tape all the way round a loop of which half is given, between the places that it touches. */
function tautHalfLength(u: readonly number[], v: readonly number[]): number {
  const [across, outward] = [u, v].map((of) => tautHalf(u, v).map((i) => of[i] ?? 0)) as [number[], number[]];
  const half = across.map((x, k) =>
    k === 0 ? x : Math.hypot(x - (across[k - 1] ?? 0), (outward[k] ?? 0) - (outward[k - 1] ?? 0)),
  );
  return 2 * (half.reduce((sum, length) => sum + length, 0) + (across.at(-1) ?? 0));
}

const half = (a: number, b: number, count: number, dent = 0) => {
  const angles = Array.from({ length: count + 1 }, (_, i) => Math.PI / 2 - (i * Math.PI) / count);
  return {
    u: angles.map((t) => Math.max(0, a * Math.cos(t))),
    // A hollow down the middle of the front, as between breasts.
    v: angles.map((t) => b * Math.sin(t) - dent * Math.exp(-(((t - Math.PI / 2) / 0.3) ** 2))),
  };
};

describe('a tape round a section', () => {
  test.each([
    [130, 100],
    [180, 110],
    [100, 100],
  ])('reads an ellipse of half axes %d and %d as its perimeter, closer with more points', (a, b) => {
    for (const [count, bound] of [
      [60, 0.4],
      [240, 0.025],
      [2000, 4e-4],
    ] as const) {
      const { u, v } = half(a, b, count);
      const off = ellipsePerimeter(a, b) - tautHalfLength(u, v);
      expect(off).toBeGreaterThan(0);
      expect(off).toBeLessThan(bound);
    }
  });

  test('bridges a hollow: two circles side by side are two half circles and two straights', () => {
    const [radius, apart] = [60, 80];
    const angles = Array.from({ length: 2001 }, (_, i) => (i * 2 * Math.PI) / 2000);
    const length = tautHalfLength(
      angles.map((t) => apart + radius * Math.cos(t)),
      angles.map((t) => radius * Math.sin(t)),
    );
    expect(length).toBeCloseTo(2 * Math.PI * radius + 4 * apart, 2);
  });

  test('reads the same whatever hollow it bridges', () => {
    const [deep, deeper] = [half(130, 100, 240, 40), half(130, 100, 240, 60)];
    expect(tautHalfLength(deep.u, deep.v)).toBeGreaterThan(tautHalfLength(deeper.u, deeper.v) - 1e-9);
    expect(tautHalfLength(deeper.u, deeper.v)).toBeLessThan(ellipsePerimeter(130, 100));
  });

  test('laid over points touches the outermost of them, and both ends', () => {
    expect(tautChain([0, 1, 2, 3, 4], [0, 2, 1, 2, 0])).toEqual([0, 1, 3, 4]);
    expect(tautChain([0, 1, 2], [0, -1, 0])).toEqual([0, 2]);
  });
});

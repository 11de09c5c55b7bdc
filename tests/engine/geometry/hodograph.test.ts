import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { analyticReach } from '../../../engine/geometry/hodograph.ts';
import { uniform } from '../../uniform.ts';

type Complex = readonly [number, number];

const times = ([a, b]: Complex, [c, d]: Complex): Complex => [a * c - b * d, a * d + b * c];
const plus = ([a, b]: Complex, [c, d]: Complex): Complex => [a + c, b + d];

/** |r|^2 + |r^2 - 1|: for a real r beyond the interval 2 r^2 - 1, on the interval 1, for i y 2 y^2 + 1. */
const reachOf = (r: Complex): number => {
  const square = times(r, r);
  return r[0] ** 2 + r[1] ** 2 + Math.hypot(square[0] - 1, square[1]);
};

/** The reach of k (u - r) (u - s), which is z + 2 e u + k u^2. */
function reachWith(k: Complex, r: Complex, s: Complex): number {
  const z = times(k, times(r, s));
  const e = times(times(k, plus(r, s)), [-0.5, 0]);
  return analyticReach(z[0], z[1], e[0], e[1], k[0], k[1]);
}

describe('how far a speed is analytic', () => {
  it('is told by the nearer root, in closed form', () => {
    const part = uniform(-3, 3);
    const any = fc.tuple(part, part);
    fc.assert(
      fc.property(
        any.filter(([x, y]) => Math.hypot(x, y) > 0.1),
        any,
        any,
        (k, r, s) => {
          fc.pre(Math.hypot(r[0] - s[0], r[1] - s[1]) > 0.01);
          expect(reachWith(k, r, s)).toBeCloseTo(Math.min(reachOf(r), reachOf(s), 49), 4);
        },
      ),
    );
  });

  it('is 1 on the interval, 2 r^2 - 1 beyond it and 2 y^2 + 1 beside its middle', () => {
    expect(reachWith([1, 0], [0.5, 0], [9, 9])).toBeCloseTo(1, 12);
    expect(reachWith([1, 0], [2, 0], [9, 9])).toBeCloseTo(7, 12);
    expect(reachWith([0, 1], [9, 9], [0, -2])).toBeCloseTo(9, 12);
  });

  it('is never counted beyond half-axes of 5 together', () => {
    expect(reachWith([1, 0], [20, 0], [0, 30])).toBe(49);
    expect(analyticReach(1, 0, 0, 0, 0, 0)).toBe(49);
    expect(analyticReach(4, 0, -1, 0, 0, 0)).toBeCloseTo(7, 12);
  });
});

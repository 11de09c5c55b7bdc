import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { bernstein, bernsteinProduct, bernsteinSlope } from '../../../engine/geometry/bernstein.ts';
import { rootsBetween01 } from '../../../engine/geometry/roots.ts';
import { uniform } from '../../uniform.ts';

/** The Bernstein coefficients of (t - r): its values at 0 and at 1. */
const factor = (root: number): readonly number[] => [-root, 1 - root];

const withRoots = (roots: readonly number[], by = 1): readonly number[] =>
  roots.map(factor).reduce((product, each) => bernsteinProduct(product, each), [by]);

/** Roots in thousandths, so that no two are nearer than that; ends and places outside the interval among them. */
const anyRoots = fc.uniqueArray(fc.oneof(fc.integer({ min: -300, max: 1300 }), fc.constantFrom(0, 1000)), {
  minLength: 1,
  maxLength: 6,
});
const anySign = fc.constantFrom(1, -1, 7, -0.01);

describe('a polynomial made of known roots', () => {
  it('has those between 0 and 1, the ends counted, in rising order', () => {
    fc.assert(
      fc.property(anyRoots, anySign, (thousandths, by) => {
        const roots = thousandths.map((r) => r / 1000);
        const wanted = roots.filter((r) => r >= 0 && r <= 1).toSorted((a, b) => a - b);
        const found = rootsBetween01(withRoots(roots, by));
        expect(found).toHaveLength(wanted.length);
        for (const [i, root] of found.entries()) expect(root).toBeCloseTo(wanted[i] ?? Number.NaN, 8);
      }),
      { numRuns: 300 },
    );
  });

  it.each([[[0, 0.4]], [[0.4, 1]], [[0, 0.4, 1]], [[0, 0.2, 0.7]], [[0.2, 0.7, 1]]])(
    'has %j, whichever way it rises',
    (roots) => {
      for (const by of [1, -1])
        expect(rootsBetween01(withRoots(roots, by))).toEqual(roots.map((root) => expect.closeTo(root, 12)));
    },
  );

  it('has a double root once, wherever it lies', () => {
    for (const root of [1 / 4, 3 / 8, 7 / 16])
      expect(rootsBetween01(withRoots([root, root]))).toEqual([expect.closeTo(root, 7)]);
  });

  it('is the product of its factors, and so is its slope by the rule of products', () => {
    fc.assert(
      fc.property(anyRoots, anySign, uniform(0, 1), (thousandths, by, t) => {
        const roots = thousandths.map((r) => r / 1000);
        const product = (left: readonly number[]): number => left.reduce((all, r) => all * (t - r), by);
        const slope = roots.reduce((sum, _, i) => sum + product(roots.filter((__, k) => k !== i)), 0);
        expect(bernstein(withRoots(roots, by), t)).toBeCloseTo(product(roots), 9);
        expect(bernsteinSlope(withRoots(roots, by), t)).toBeCloseTo(slope, 9);
      }),
    );
  });
});

import { describe, expect, test } from 'vitest';
import { expectation } from '../../../../engine/body/conditional.ts';
import { conditioned } from '../../../../engine/body/population/joint.ts';
import { womenLike } from '../../../../engine/body/population/women.ts';

const near = { bustGirth: 907, underBustGirth: 770, bustPointWidth: 189, neckBaseGirth: 370 };
const women = womenLike(near);
const of = (name: (typeof women.names)[number]): { readonly mean: number; readonly sd: number } => {
  const i = women.names.indexOf(name);
  return { mean: women.mean[i] ?? 0, sd: Math.sqrt(women.covariance[i]?.[i] ?? 0) };
};

describe('how the measurements of women go together', () => {
  test('is near what the survey of 1988 found of what the other did not take', () => {
    // NATICK/TR-89/044, 2,208 women of a smaller build, mm.
    expect(Math.abs(of('scyeDepth').mean - 185.7)).toBeLessThan(1);
    expect(of('scyeDepth').sd / 14.4).toBeGreaterThan(0.8);
    expect(of('scyeDepth').sd / 14.4).toBeLessThan(1.4);
    expect(Math.abs(of('neckShoulderPointToBustPoint').mean - 268)).toBeLessThan(20);
    expect(Math.abs(of('armscyeGirth').mean - 371.3)).toBeLessThan(20);
    expect(of('waistGirth').sd).toBeGreaterThan(63);
  });

  test('is as well founded as a covariance must be', () => {
    for (const [i, row] of women.covariance.entries())
      for (const [j, value] of row.entries()) expect(value).toBe(women.covariance[j]?.[i]);
    for (const name of women.names) {
      const others = new Map(
        women.names
          .filter((other) => other !== name)
          .map((other) => [other, { value: of(other).mean, error: 5 }]),
      );
      const left = conditioned(women, others, [name]);
      expect(left.mean[0]).toBeCloseTo(of(name).mean, 6);
      expect(left.covariance[0]?.[0]).toBeGreaterThan(0);
      expect(left.covariance[0]?.[0]).toBeLessThanOrEqual(of(name).sd ** 2 + 1e-6);
    }
  });

  test('leaves of a measurement what its estimate leaves of it', () => {
    const known = { bustGirth: 1000, hipGirth: 1050, stature: 1700 };
    const readings = new Map(
      (['bustGirth', 'hipGirth', 'stature'] as const).map((name) => [name, { value: known[name], error: 0 }]),
    );
    const { mean, covariance } = conditioned(women, readings, ['wristGirth', 'neckBaseGirth']);
    const expect1 = expectation(
      new Map(Object.entries(known).map(([name, value]) => [name, { value }])) as never,
    );
    for (const [i, name] of (['wristGirth', 'neckBaseGirth'] as const).entries()) {
      const estimate = expect1([[name, 1]]);
      expect(mean[i]).toBeCloseTo(estimate.mean, 6);
      expect(Math.sqrt(covariance[i]?.[i] ?? 0)).toBeCloseTo(estimate.spread, 6);
    }
  });
});

import { Matrix } from 'ml-matrix';
import { describe, expect, test } from 'vitest';
import type { MeasurementName } from '../../../../engine/body/body.ts';
import type { HeldLimit } from '../../../../engine/body/reconcile/held-limits.ts';
import { mostLikely } from '../../../../engine/body/reconcile/most-likely.ts';
import { type Chance, wayToLikeliest } from '../../../../engine/body/reconcile/no-further.ts';
import { randomFrom } from '../../../../engine/numeric/random.ts';

const names: readonly MeasurementName[] = ['scyeDepth', 'backNeckPointToWaist'];
const read = { names, values: [200, 400], errors: [10, 10] };

/** The first at least ten less than the second is: broken by ten as it was read. */
const limit: HeldLimit = {
  terms: [
    ['scyeDepth', 1],
    ['backNeckPointToWaist', -1],
  ],
  least: -190,
  beyond: 0,
};

/** The least moves that keep the limit: five each, by the distance of a point from a line. */
const least = [5, -5];

/** She as the readings leave her: each so far off, the two of nothing in common. */
const open = (at: readonly number[], deviation: number, chance = 1): Chance => ({
  chance,
  open: {
    density: 0,
    names,
    mean: Matrix.columnVector([...at]),
    covariance: Matrix.diag(names.map(() => deviation ** 2)),
  },
});

describe('the least moves that keep the limits', () => {
  test('lead no further from anybody who keeps them', () => {
    const random = randomFrom(7);
    for (let i = 0; i < 200; i++) {
      const values = [150 + 100 * random(), 350 + 100 * random()];
      const readings = new Map(
        names.map((name, k) => [name, { value: values[k] ?? 0, error: 5 + 10 * random() }] as const),
      );
      const found = mostLikely({ readings, women: undefined, limits: [limit], step: 0 }, names);
      const truth = [200 + 50 * random(), 340 + 20 * random()];
      if ((truth[0] ?? 0) - (truth[1] ?? 0) < limit.least) continue;
      const off = (of: (name: MeasurementName) => number | undefined): number =>
        Math.hypot(
          ...names.map((name, k) => ((of(name) ?? 0) - (truth[k] ?? 0)) / (readings.get(name)?.error ?? 1)),
        );
      expect(off((name) => found?.sizes.get(name))).toBeLessThanOrEqual(
        off((name) => readings.get(name)?.value) + 1e-9,
      );
    }
  });
});

describe('the way from them to the likeliest ones', () => {
  test('is gone to its end where she is known to be there', () => {
    expect(wayToLikeliest(least, [20, 10], read, [open([220, 410], 1)], [limit])).toBe(1);
  });

  test('is not begun where she is known to be on the other side', () => {
    expect(wayToLikeliest(least, [20, 10], read, [open([196, 386], 0.5)], [limit])).toBeLessThan(0.1);
  });

  test('ends where three in two hundred would be left further off', () => {
    const deviation = 1.5;
    const way = wayToLikeliest(
      least,
      [25, 15],
      read,
      [open([205, 395], deviation)],
      [{ ...limit, least: -1000 }],
    );
    const s = 20 * way;
    expect(way).toBeGreaterThan(0);
    expect(way).toBeLessThan(1);
    // How far she lies along the moves, (a, b), is normal; further off than half of them she is nearer to what was written.
    const [a, b] = [5 + s, -5 + s];
    const half = (a * a + b * b) / 2;
    const reached = 5 * a - 5 * b;
    expect((half - reached) / (deviation * Math.hypot(a, b))).toBeCloseTo(-2.17, 2);
  });

  test('weighs what may have happened by how likely it is', () => {
    const there = open([225, 415], 1, 0.9);
    const sure = open([225, 415], 1, 0.99);
    const elsewhere = open([205, 395], 1);
    const way = (chances: readonly Chance[]): number =>
      wayToLikeliest(least, [25, 15], read, chances, [limit]);
    expect(way([there, { ...elsewhere, chance: 0.1 }])).toBeLessThan(0.9);
    expect(way([sure, { ...elsewhere, chance: 0.01 }])).toBe(1);
  });
});

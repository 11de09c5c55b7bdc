import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { at, profileThrough } from '../../../engine/form/profile.ts';
import { uniform } from '../../uniform.ts';

const knots = fc
  .array(fc.tuple(uniform(1, 50), uniform(-100, 100)), { minLength: 3, maxLength: 12 })
  .map((steps) => {
    let place = 0;
    return steps.map(([by, value]) => {
      place += by;
      return [place, value] as const;
    });
  });

describe('a profile', () => {
  test('goes through its values and never beyond those beside it', () => {
    fc.assert(
      fc.property(knots, uniform(0, 1), (through, share) => {
        const profile = profileThrough(through);
        for (const [i, [place, value]] of through.entries()) {
          expect(at(profile, place)).toBeCloseTo(value, 9);
          const next = through[i + 1];
          if (!next) continue;
          const between = at(profile, place + share * (next[0] - place));
          expect(between).toBeGreaterThan(Math.min(value, next[1]) - 1e-9);
          expect(between).toBeLessThan(Math.max(value, next[1]) + 1e-9);
        }
      }),
    );
  });

  test('has one slope on both sides of every place', () => {
    fc.assert(
      fc.property(knots, (through) => {
        const profile = profileThrough(through);
        for (const [place] of through.slice(1, -1)) {
          const [left, right] = [-1, 1].map(
            (side) => (at(profile, place + side * 1e-6) - at(profile, place)) / (side * 1e-6),
          );
          expect(left).toBeCloseTo(right ?? 0, 2);
        }
      }),
    );
  });

  test('of values on a line is that line, with the slopes asked for at its ends', () => {
    const profile = profileThrough([0, 3, 10, 20].map((x) => [x, 2 * x + 1]));
    for (const x of [-4, 0, 1.7, 9, 20, 31]) expect(at(profile, x)).toBeCloseTo(2 * x + 1, 9);
    const begun = profileThrough(
      [
        [0, 0],
        [10, 8],
        [20, 12],
      ],
      { first: 1 },
    );
    expect(at(begun, 1e-6) / 1e-6).toBeCloseTo(1, 4);
  });
});

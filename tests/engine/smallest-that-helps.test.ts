import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { smallestThatHelps } from '../../engine/smallest-that-helps.ts';

const suspects = Array.from({ length: 16 }, (_, i) => i);

describe('the smallest part that helps', () => {
  it('is the guilty one, where one alone is guilty and there are questions enough', () => {
    fc.assert(
      fc.property(fc.constantFrom(...suspects), (guilty) => {
        expect(smallestThatHelps(suspects, (some) => some.includes(guilty), 8)).toEqual([guilty]);
      }),
    );
  });

  it('always helps, and asks no more than it may', () => {
    fc.assert(
      fc.property(fc.subarray(suspects, { minLength: 1 }), fc.nat(6), (guilty, attempts) => {
        let asked = 0;
        const helps = (some: readonly number[]): boolean => guilty.every((each) => some.includes(each));
        const found = smallestThatHelps(suspects, (some) => ++asked > 0 && helps(some), attempts);
        expect(helps(found)).toBe(true);
        expect(asked).toBeLessThanOrEqual(attempts);
      }),
    );
  });
});

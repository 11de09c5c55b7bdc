import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { flatMapped } from '../../engine/flat-mapped.ts';

describe('a list of what is made of each', () => {
  it('is what flatMap gives, for lists, single things and nothing', () => {
    fc.assert(
      fc.property(fc.array(fc.oneof(fc.integer(), fc.array(fc.integer()))), (all) => {
        const make = (one: number | readonly number[], place: number): number | readonly number[] =>
          typeof one === 'number' ? one + place : one;
        expect(flatMapped(all, make)).toEqual(all.flatMap(make));
      }),
    );
  });

  it('goes one list deep', () => {
    expect(flatMapped([1, 2], (one) => [[one]])).toEqual([[1], [2]]);
  });
});

import { describe, expect, it } from 'vitest';
import { recordOf } from '../../engine/record-of.ts';

describe('a record of a map', () => {
  it('has what is made of everything under the same names, in the same order', () => {
    const record = recordOf(
      new Map([
        ['b', 2],
        ['a', 1],
      ]),
      (one) => 10 * one,
    );
    expect(Object.entries(record)).toEqual([
      ['b', 20],
      ['a', 10],
    ]);
  });

  it('takes any name, and has no others', () => {
    const record = recordOf(new Map([['__proto__', 1]]), (one) => one);
    expect(Object.keys(record)).toEqual(['__proto__']);
    expect(record.toString).toBeUndefined();
  });
});

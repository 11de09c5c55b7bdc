import { describe, expect, test } from 'vitest';
import { atLeisure } from '../../../cli/page/views/code/names/at-leisure.ts';

/** Finds so many, each after so long, ms. */
function* finding(count: number, each: number): Generator<number, void> {
  for (let i = 0; i < count; i++) {
    const until = performance.now() + each;
    while (performance.now() < until);
    yield i;
  }
}

describe('what is looked for at leisure', () => {
  test('is found whole and in order, and others have their turn meanwhile', async () => {
    let turns = 0;
    const counting = setInterval(() => turns++, 0);
    expect(await atLeisure(finding(40, 2), () => true)).toEqual(Array.from({ length: 40 }, (_, i) => i));
    clearInterval(counting);
    expect(turns).toBeGreaterThan(4);
  });

  test('is nothing where it is no longer of use', async () => {
    let asked = 0;
    expect(await atLeisure(finding(1000, 10), () => ++asked < 3)).toBeUndefined();
    expect(asked).toBe(3);
  });
});

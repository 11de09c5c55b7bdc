import { describe, expect, it } from 'vitest';
import { whenAsked, withFields, withWhenAsked } from '../../engine/when-asked.ts';

/** Something that is made, and how often it was. */
function counted(): { readonly make: () => readonly string[]; readonly times: () => number } {
  let times = 0;
  const make = (): readonly string[] => {
    times += 1;
    return ['made'];
  };
  return { make, times: () => times };
}

describe('what is made when asked for', () => {
  it('is made once, and not before somebody asks', () => {
    const { make, times } = counted();
    const ask = whenAsked(make);
    expect(times()).toBe(0);
    expect(ask()).toBe(ask());
    expect(times()).toBe(1);
  });

  it('is made once though it is nothing', () => {
    let times = 0;
    const ask = whenAsked(() => {
      times += 1;
      return undefined;
    });
    expect([ask(), ask(), times]).toEqual([undefined, undefined, 1]);
  });

  it('is a field like the others to whoever reads, copies, compares, lists or writes it', () => {
    const { make, times } = counted();
    const whole = withWhenAsked<{ name: string }, { words: readonly string[] }>(
      { name: 'waist' },
      { words: make },
    );
    expect(Object.keys(whole)).toEqual(['name', 'words']);
    expect(times()).toBe(0);
    const plain = { name: 'waist', words: ['made'] };
    expect(whole).toEqual(plain);
    expect({ ...whole }).toEqual(plain);
    expect(JSON.parse(JSON.stringify(whole))).toEqual(plain);
    expect(structuredClone(whole)).toEqual(plain);
    expect(whole.words).toBe(whole.words);
    expect(times()).toBe(1);
  });

  it('is its own for each object, though all have one getter', () => {
    const of = (word: string) =>
      withWhenAsked<object, { words: readonly string[] }>({}, { words: () => [word] });
    const [one, other] = [of('one'), of('other')];
    expect([one.words, other.words]).toEqual([['one'], ['other']]);
  });

  it('stays unmade where an object gets other fields, and is made once for both', () => {
    const { make, times } = counted();
    const whole = withWhenAsked({ name: 'waist' }, { words: make });
    const other = withFields(whole, { name: 'hip' });
    expect(times()).toBe(0);
    expect(other).toEqual({ name: 'hip', words: ['made'] });
    expect(other.words).toBe(whole.words);
    expect([whole.name, times()]).toEqual(['waist', 1]);
    expect(withFields({ name: 'waist' }, { name: 'hip' })).toEqual({ name: 'hip' });
  });
});

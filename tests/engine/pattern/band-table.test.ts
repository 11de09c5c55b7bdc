import { describe, expect, it } from 'vitest';
import { bandTable, claim, claimAbout } from '../../../engine/pattern/band-table.ts';
import { commonPractice } from '../../../engine/sources.ts';

describe('a table of bands', () => {
  const { girth, bend } = bandTable({
    girth: ['armhole girth', 0.43, 0.49, 'share', 'a cutter'],
    bend: ['tightest bend', 25, undefined, 'mm', commonPractice, 'bound'],
  });

  it('gives a claim its name and those limits that there are', () => {
    const value = { kind: 'drafted', piece: 'sleeve', value: 3, unit: 'mm' } as const;
    expect(claim(girth, value, 'as chosen')).toEqual({
      ...value,
      name: 'armhole girth',
      low: 0.43,
      high: 0.49,
      outside: 'as chosen',
    });
    const bends = claim(bend, value, 'as chosen', { name: 'cap bends' });
    expect(bends).toEqual({ ...value, name: 'cap bends', low: 25, bound: true, outside: 'as chosen' });
  });

  it('gives limits that are shares of a length, or lie about a figure, as they are for this body', () => {
    const depth = { kind: 'notch depth', say: 'mm' } as const;
    expect(claim(girth, depth, '', { per: 1000 })).toMatchObject({ low: 430, high: 490 });
    const about = claimAbout(girth, 10, depth, 'why', 'about');
    expect(about).toEqual({ ...depth, name: 'about', low: 10.43, high: 10.49, outside: 'why' });
    expect('high' in claimAbout(bend, 10, depth, 'why', 'about')).toBe(false);
  });

  it('takes none without a limit or a source', () => {
    expect(() => bandTable({ none: ['none', undefined, undefined, 'mm', 'a cutter'] })).toThrow(
      'The band “none” has no limit.',
    );
    expect(() => bandTable({ whose: ['whose', 1, 2, 'mm', ' '] })).toThrow('The band “whose” has no source');
  });
});

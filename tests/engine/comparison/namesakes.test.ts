import { describe, expect, test } from 'vitest';
import { fates } from '../../../engine/comparison/fate.ts';
import { namesakes } from '../../../engine/comparison/namesakes.ts';

const outline = (names: string) => names.split(' ').map((name) => ({ name, curves: [] }));
const found = (before: string, after: string) =>
  Object.fromEntries(namesakes(outline(before), outline(after)));

describe('edges that are on an earlier outline too', () => {
  test.each<[string, string, Record<string, string>]>([
    ['a b c d', 'a b c d', { a: 'a', b: 'b', c: 'c', d: 'd' }],
    ['a b c d', 'a b x d', { a: 'a', b: 'b', x: 'c', d: 'd' }],
    ['a b c d', 'x b c d', { x: 'a', b: 'b', c: 'c', d: 'd' }],
    ['a b c d', 'a b x y d', { a: 'a', b: 'b', d: 'd' }],
    ['a b x y d', 'a b c d', { a: 'a', b: 'b', d: 'd' }],
    ['a b c d', 'a x y d', { a: 'a', d: 'd' }],
    ['a b c', 'x y z', {}],
    ['a b c d', 'a c d', { a: 'a', c: 'c', d: 'd' }],
  ])('of “%s”, now “%s”', (before, after, names) => {
    expect(found(before, after)).toEqual(names);
  });
});

describe('the fate of a list', () => {
  test('is told once for each name, what is gone at the end', () => {
    const list = (names: string) => names.split('').map((name) => ({ name }));
    expect(
      fates(list('abc'), list('cxa'), ({ name }) => name).map(({ kind, name }) => `${kind} ${name}`),
    ).toEqual(['kept c', 'new x', 'kept a', 'gone b']);
  });
});

import { describe, expect, test, vi } from 'vitest';
import { withoutPictures } from '../../../engine/reading/without-pictures.ts';

const picture = (letters: number): string => 'data:'.padEnd(letters, 'A');
const large = picture(5_000);

describe('a file without its pictures', () => {
  test.each([
    ['"', '"'],
    ["'", "'"],
    ['(', ')'],
  ])('keeps all that stands round a picture in %s%s', (open, close) => {
    const file = (word: string): string => `<svg><a href=${open}${word}${close}/><path d="M0 0"/></svg>`;
    expect(withoutPictures(file(large))).toBe(file('data:,'));
  });

  test('has lost every one of several, and of none what stands between them', () => {
    const file = (word: string): string =>
      `<svg><i a="${word}"/>one<i a='${word}'/>two<i a="${word}"/><style>url(${word})</style>three<i a="${word}"/></svg>`;
    expect(withoutPictures(file(large))).toBe(file('data:,'));
  });

  test('keeps what is no longer than a thousand letters', () => {
    const file = (word: string): string => `<svg><i a="${word}"/></svg>`;
    expect(withoutPictures(file(picture(1_000)))).toBe(file(picture(1_000)));
    expect(withoutPictures(file(picture(1_001)))).toBe(file('data:,'));
  });

  test('keeps a word that has no mark before it or none after it', () => {
    for (const file of [`<svg>${large}"</svg>`, `<svg a="${large}</svg>`, large, ''])
      expect(withoutPictures(file)).toBe(file);
  });

  test('is looked through once, however many words have no end', () => {
    const searches = vi.spyOn(String.prototype, 'indexOf');
    const searchesOf = (file: string): number => {
      searches.mockClear();
      withoutPictures(file);
      return searches.mock.calls.length;
    };
    // One search for each word, one beyond the last, and one for the mark that none of them has, or all have in common.
    expect(searchesOf('(data:'.repeat(500))).toBe(502);
    expect(searchesOf(`${'(data: '.repeat(100)})`)).toBe(102);
    searches.mockRestore();
  });
});

import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { schemaNames } from '../../../cli/results/schemas.ts';
import { writtenFiles } from './written-files.ts';

const root = new URL('../../../', import.meta.url);
const files = writtenFiles();

/** Two drawings of the same lines and words, each number within a fifth of a pixel: what no eye sees makes none old. */
function expectAlike(is: string, should: string): void {
  const number = /-?\d+(\.\d+)?/g;
  expect(is.replace(number, '0'), 'run: npm run pages').toBe(should.replace(number, '0'));
  const [was, now] = [is, should].map((text) => (text.match(number) ?? []).map(Number));
  const apart = (was ?? []).map((value, i) => Math.abs(value - (now?.[i] ?? Number.NaN)));
  expect(Math.max(...apart), 'run: npm run pages').toBeLessThan(0.2);
}

describe('what is written from the program', () => {
  it.each([...files])('is up to date: %s', (path, text) => {
    const written = readFileSync(new URL(path, root), 'utf8');
    if (path.endsWith('.svg')) return expectAlike(written, text);
    // The formatter breaks lines of JSON in its own way.
    const [is, should] = path.endsWith('.json') ? [JSON.parse(written), JSON.parse(text)] : [written, text];
    expect(is, 'run: npm run pages').toEqual(should);
  });

  it('is all there is in the folder of schemas', () => {
    expect(readdirSync(new URL('cli/schemas', root)).sort()).toEqual(
      schemaNames.map((name) => `${name}.json`).sort(),
    );
  });
});

describe('the picture of the dress', () => {
  const picture = files.get('drafts/dress.svg') ?? '';

  it('is read without scrolling, in letters of 12 px', () => {
    const [, width, height] = /<svg[^>]* width="([\d.]+)" height="([\d.]+)"/.exec(picture) ?? [];
    expect(Number(width)).toBeLessThanOrEqual(900);
    expect(Number(height)).toBeLessThanOrEqual(700);
    expect(picture).toContain('font:12px');
  });

  it('shows every piece by its number', () => {
    const numbers = [...picture.matchAll(/<text[^>]*>(\d+)/g)].map(([, number]) => Number(number));
    expect(numbers).toEqual(numbers.map((_, i) => i + 1));
    expect(numbers.length).toBeGreaterThan(10);
  });
});

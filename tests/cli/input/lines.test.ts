import fc from 'fast-check';
import { expect, test } from 'vitest';
import { lines } from '../../../cli/input/lines.ts';

async function* inParts(text: string, sizes: readonly number[]): AsyncGenerator<Buffer> {
  const bytes = Buffer.from(text);
  let at = 0;
  for (let i = 0; at < bytes.length; i++) {
    const size = sizes[i % sizes.length] ?? 1;
    yield bytes.subarray(at, at + size);
    at += size;
  }
}

async function read(text: string, sizes: readonly number[], longest = 1000): Promise<(string | undefined)[]> {
  const found: (string | undefined)[] = [];
  for await (const line of lines(inParts(text, sizes), longest)) found.push(line.text);
  return found;
}

test('lines come out the same however the file is cut into parts', async () => {
  await fc.assert(
    fc.asyncProperty(
      fc.array(fc.string({ unit: fc.constantFrom('a', 'é', '🧵', ' ', '"') }), { maxLength: 8 }),
      fc.array(fc.integer({ min: 1, max: 9 }), { minLength: 1, maxLength: 4 }),
      async (rows, sizes) => {
        const expected = rows.at(-1) === '' ? rows.slice(0, -1) : rows;
        expect(await read(rows.join('\n'), sizes)).toEqual(expected);
      },
    ),
  );
});

test('a line too long is left out, and the lines after it are read', async () => {
  const long = 'x'.repeat(50);
  expect(await read(`ab\n${long}\ncd\n`, [7], 20)).toEqual(['ab', undefined, 'cd']);
});

test('lines know their number and where they end, and the last needs no line end', async () => {
  const found = [];
  for await (const line of lines(inParts('a\nbc\n\nd', [2]), 9)) found.push(line);
  expect(found).toEqual([
    { number: 1, text: 'a', end: 2 },
    { number: 2, text: 'bc', end: 5 },
    { number: 3, text: '', end: 6 },
    { number: 4, text: 'd', end: 7 },
  ]);
});

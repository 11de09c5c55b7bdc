import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { parse } from 'yaml';
import { edgeLength } from '../../engine/geometry/edge.ts';
import { drafted } from '../drafts/drafted.ts';
import { browsed, inBrowser, invented, view } from './opened-page.ts';

/* What the browser draws, measured in the browser, held to what was drafted. No pixels are compared. */

const lady = parse(readFileSync(new URL('../../measurements/leading-lady.yaml', import.meta.url), 'utf8'));
const { garment } = drafted('dress', lady);

const { opened } = browsed();

/** A browser measures a path along chords of its own; that is told by this share of it. */
const CHORDS = 2e-3;

const within = (found: number, meant: number): boolean => Math.abs(found - meant) <= CHORDS * meant + 0.05;

inBrowser('what is drawn', () => {
  test('is every piece with all its edges as long as they were drafted', async () => {
    const { page } = await opened();
    await invented(page, 'Leading lady');
    await view(page, 'Pieces');
    await page.locator('.drawn-piece').first().waitFor();
    // Edges can be touched each by itself: one path an edge, in mm.
    const drawn = await page.evaluate<readonly (readonly [string, readonly number[]])[]>(`
      [...document.querySelectorAll('.drawn-piece')].map((piece) => [
        piece.getAttribute('aria-label'),
        [...piece.querySelectorAll('.touch')].map((path) => path.getTotalLength()).toSorted((a, b) => a - b),
      ])`);
    expect(drawn.length).toBe(garment.pieces.length);
    for (const { number, name, edges } of garment.pieces) {
      const [, lengths = []] = drawn.find(([words]) => words.startsWith(`Piece ${number}, ${name}, `)) ?? [];
      const meant = edges.map(edgeLength).toSorted((a, b) => a - b);
      expect(lengths.length, name).toBe(meant.length);
      meant.forEach((length, i) => {
        const found = lengths[i] ?? 0;
        expect(within(found, length), `${name}: ${found} for ${length} mm`).toBe(true);
      });
    }
  });

  test('is a length of the construction as long as its number, between its bars', async () => {
    const { page } = await opened();
    await invented(page, 'Leading lady');
    await view(page, 'Learn');
    await page.locator('.construction').waitFor();
    const marked = async (): Promise<string> => {
      await page.locator('.sentence .number').first().click();
      return page
        .locator('.construction .measured path')
        .getAttribute('d')
        .then((d) => d ?? '');
    };
    // The first step is the back neck point to waist, 405 mm down the centre back.
    expect(await marked()).toMatch(/^M0 0L0 405M/);
  });

  test('is the picture of each number on what its own sentence speaks of, or words why there is none', async () => {
    const { page } = await opened();
    await invented(page, 'Leading lady');
    await view(page, 'Learn');
    const said = page.locator('.whence > .quiet').last();
    for (let step = 1; step <= 60; step += 6) {
      const numbers = page.locator('.sentence .number');
      for (const number of await numbers.all()) {
        await number.click();
        const words = (await said.textContent()) ?? '';
        const shown = (await page.locator('.construction .measured').count()) > 0;
        expect(shown, words).toBe(/(?<!not )marked/.test(words));
        await number.click();
      }
      for (let on = 0; on < 6; on++) await page.keyboard.press('ArrowRight');
    }
  });
});

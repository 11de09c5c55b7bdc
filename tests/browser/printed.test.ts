import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { readPdf } from '../engine/render/pdf/read-pdf.ts';
import { withSkirt } from './draft-page.ts';
import { browsed, inBrowser, invented, view } from './opened-page.ts';

/* What comes out of the printer when a view is printed: A4 upright, also of a page that is dark on the screen. */

const browser = browsed();
const { opened } = browser;

/** A4 within margins of 15 mm, CSS pixels (CSS Values 4: 96 to the inch). */
const paper = { width: Math.round(((210 - 30) / 25.4) * 96), height: 1000 };

/** Colours of what is seen that are no ink on paper: letters too light, or ground too dark (relative luminance, WCAG 2.2). */
const unlikePaper = `(() => {
  const light = (colour) => {
    const [r, g, b, a = 1] = (colour.match(/[\\d.]+/g) ?? []).map(Number);
    if (r === undefined || a === 0) return undefined;
    const [x, y, z] = [r, g, b].map((v) => (v / 255 <= 0.04045 ? v / 255 / 12.92 : ((v / 255 + 0.055) / 1.055) ** 2.4));
    return 0.2126 * x + 0.7152 * y + 0.0722 * z;
  };
  const found = [];
  for (const each of document.querySelectorAll('body, body *')) {
    if (!each.checkVisibility() || each.closest('.unseen, svg, canvas, input, select')) continue;
    const style = getComputedStyle(each);
    const says = [...each.childNodes].some((node) => node.nodeType === 3 && node.data.trim() !== '');
    if (says && light(style.color) > 0.1) found.push('light letters: ' + each.outerHTML.slice(0, 80));
    const ground = light(style.backgroundColor);
    if (ground !== undefined && ground < 0.9) found.push('dark ground: ' + each.outerHTML.slice(0, 80));
  }
  for (const each of document.querySelectorAll('svg path'))
    if (each.checkVisibility() && light(getComputedStyle(each).stroke) > 0.8 && getComputedStyle(each).strokeOpacity !== '0' && each.getAttribute('class') !== 'touch' && !each.closest('.to-come'))
      found.push('light line: ' + each.outerHTML.slice(0, 80));
  return found;
})()`;

/** What can only be pressed, chosen or followed, and is seen all the same. */
const pressed = `[...document.querySelectorAll('nav, footer, .tools, .files, .finder, .slide, button, input[type=file]')]
  .filter((each) => each.checkVisibility() && !each.matches('.plain, .takes button'))
  .map((each) => each.outerHTML.slice(0, 80))`;

/** What is wider than the sheet. */
const beyond = `[...document.querySelectorAll('body *')]
  .filter((each) => each.checkVisibility() && !each.closest('.unseen, .skip') && !each.parentElement.closest('svg') && each.getBoundingClientRect().right > innerWidth + 1)
  .map((each) => each.outerHTML.slice(0, 80))`;

async function expectPaper(page: Page, what: string): Promise<void> {
  expect([what, ...(await page.evaluate<string[]>(unlikePaper))]).toEqual([what]);
  expect([what, ...(await page.evaluate<string[]>(pressed))]).toEqual([what]);
  expect([what, ...(await page.evaluate<string[]>(beyond))]).toEqual([what]);
}

/** The words on each sheet that is printed. */
const printed = async (page: Page): Promise<readonly string[]> =>
  (await readPdf(await page.pdf({ format: 'A4' }))).map(({ text }) => text.replaceAll('\n', ''));

/** Words without their blanks, wherever lines end. */
const plain = (text: string): string => text.replaceAll(/\s+/g, '');

inBrowser('on paper', () => {
  test.each(['dark', 'light'] as const)(
    'every view is black on white, without what can only be pressed, where the screen is %s',
    async (colorScheme) => {
      const { page } = await opened({ colorScheme, viewport: { width: 1280, height: 900 } });
      await invented(page, 'Understudy');
      for (const name of ['Measure', 'Choose', 'Pieces', 'Checks', 'Sizes', 'Cloth', 'Learn', 'Take']) {
        await view(page, name);
        await page.waitForTimeout(500);
        await page.emulateMedia({ media: 'print' });
        await page.setViewportSize(paper);
        if (name === 'Learn') {
          await page.evaluate(`dispatchEvent(new Event('beforeprint'))`);
          await page.locator('.printed-step').first().waitFor();
        }
        await expectPaper(page, name);
        if (name === 'Learn') await page.evaluate(`dispatchEvent(new Event('afterprint'))`);
        await page.setViewportSize({ width: 1280, height: 900 });
        await page.emulateMedia({ media: 'screen' });
      }
    },
    120_000,
  );

  test('the figures of the checks have their names, and the heads of a table stand on every page of it', async () => {
    const { page } = await opened({ colorScheme: 'dark' });
    await invented(page, 'Understudy');
    await view(page, 'Checks');
    await page.getByText('read back from the sheet itself').waitFor();
    const names = await page.locator('tbody th').allTextContents();
    const sheets = await printed(page);
    const all = sheets.join(' ');
    // A long name may be broken.
    for (const name of names) expect(plain(all)).toContain(plain(name));
    expect(all).not.toContain('Undo');
    const corners = sheets.filter((text) => text.includes('corner left'));
    expect(corners.length).toBeGreaterThan(1);
    // The drawing has a sheet of its own, the last.
    expect(sheets.at(-1)).toContain('Not to scale');
    expect(sheets.at(-1)).not.toContain('corner left');
  }, 60_000);

  test('the pieces stand on one sheet, and what to cut is listed under them', async () => {
    const { page } = await opened({ colorScheme: 'dark' });
    await invented(page, 'Understudy');
    await view(page, 'Pieces');
    await page.locator('.drawn-piece').first().waitFor();
    const [first = '', ...rest] = await printed(page);
    for (const name of ['10 skirt side front', '8 sleeve', 'Not to scale']) expect(first).toContain(name);
    const cut = [first, ...rest].join(' ');
    for (const name of await page.locator('ol.cut button').allTextContents()) expect(cut).toContain(name);
    expect(cut).not.toContain('Larger');
    expect(cut).not.toContain('Edges of');
  }, 60_000);

  test('no step of a lesson is torn from one sheet to the next', async () => {
    const { page } = await withSkirt(browser, { colorScheme: 'dark' });
    await view(page, 'Learn');
    await page.locator('.sentence').waitFor();
    const sheets = await printed(page);
    const each = sheets.map(plain);
    await page.evaluate(`dispatchEvent(new Event('beforeprint'))`);
    await page.locator('.printed-step').first().waitFor({ state: 'attached' });
    const steps = await page.locator('.printed-step').all();
    for (const step of steps) {
      const texts = await step.locator('h3, p').allTextContents();
      expect(
        each.filter((sheet) => texts.every((text) => sheet.includes(plain(text)))).length,
      ).toBeGreaterThan(0);
    }
  }, 120_000);
});

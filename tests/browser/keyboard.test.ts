import { readFile } from 'node:fs/promises';
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { browsed, drawn, inBrowser } from './opened-page.ts';

/* Through all ten views to the pattern, without a mouse. */

const { opened } = browsed();

/** How many presses of Tab are patience, not a search. */
const patience = 80;

/** What has the focus, as it is called. */
const focused = (page: Page): Promise<string> =>
  page.evaluate<string>(`(() => {
    let at = document.activeElement;
    while (at.shadowRoot?.activeElement) at = at.shadowRoot.activeElement;
    return at.id || at.getAttribute('aria-label') || at.textContent.trim();
  })()`);

/** Goes on, or back, by Tab until something has the focus, and counts the presses. */
async function reach(page: Page, name: string | RegExp, key: 'Tab' | 'Shift+Tab' = 'Tab'): Promise<number> {
  for (let i = 1; i <= patience; i++) {
    await page.keyboard.press(key);
    const at = await focused(page);
    if (typeof name === 'string' ? at === name : name.test(at)) return i;
  }
  throw new Error(`${name} is not reached from ${await focused(page)}`);
}

/** To another view: each begins at its heading, and the list of views is right before that. */
async function toView(page: Page, link: string, heading = link): Promise<void> {
  await reach(page, link, 'Shift+Tab');
  await page.keyboard.press('Enter');
  await page.locator('h1').filter({ hasText: heading }).waitFor();
  await expect.poll(() => focused(page)).toBe(heading);
}

/** Whether what has the focus is seen to have it, and is in sight. */
const isSeen = (page: Page): Promise<boolean> =>
  page.evaluate<boolean>(`(() => {
    const at = document.activeElement;
    const { top, bottom } = at.getBoundingClientRect();
    const { outlineStyle, outlineWidth } = getComputedStyle(at);
    return bottom > 0 && top < innerHeight && outlineStyle !== 'none' && parseFloat(outlineWidth) >= 2;
  })()`);

inBrowser('by the keyboard alone', () => {
  test('she goes through every view, and takes her pattern', async () => {
    const { page, faults } = await opened();
    await page.getByText('Nothing is measured yet.').waitFor();
    // The first press offers the way past the head.
    await page.keyboard.press('Tab');
    expect(await focused(page)).toBe('Past the views');
    await page.keyboard.press('Enter');
    for (const [name, text] of Object.entries({
      bustGirth: '92',
      waistGirth: '74',
      hipGirth: '99',
      backNeckPointToWaist: '40.5',
    })) {
      await reach(page, name);
      await page.keyboard.type(text);
      expect(await isSeen(page), name).toBe(true);
    }
    await drawn(page, 'dress');
    // The foot leads back to the views, and the address stays that of the view.
    await reach(page, 'Back to the views');
    await page.keyboard.press('Enter');
    await page.keyboard.press('Tab');
    expect(await focused(page)).toBe('Measure');
    expect(page.url()).not.toContain('#views');

    // Choose: the garment by arrows, a figure by its slider.
    await page.keyboard.press('Tab');
    await page.keyboard.press('Enter');
    await page.getByRole('heading', { level: 1, name: 'Choose' }).waitFor();
    await expect.poll(() => page.evaluate('document.activeElement.tagName')).toBe('H1');
    await page.getByRole('radio', { name: /^Dress/ }).waitFor();
    await page.keyboard.press('Tab');
    await page.keyboard.press('ArrowDown');
    await drawn(page, 'bodice');
    await reach(page, /^Bust ease, from/);
    await page.keyboard.press('ArrowRight');
    expect(await isSeen(page), 'a slider').toBe(true);
    await page.keyboard.press('Control+z');
    await drawn(page, 'bodice');
    await reach(page, 'sought', 'Shift+Tab');

    await toView(page, 'Pieces');
    await reach(page, /^Drawing/);
    await page.keyboard.press('+');
    await expect.poll(() => page.getByRole('button', { name: 'Whole' }).isEnabled()).toBe(true);
    await page.keyboard.press('0');

    await toView(page, 'Checks');
    await reach(page, 'bust');
    await page.keyboard.press('Enter');
    await page.getByText('bust is marked on the drawing.').waitFor();

    await toView(page, 'Worn');
    await reach(page, 'Put it on');
    await page.keyboard.press('Enter');
    await page.getByText('It is no substitute for a trial bodice in cloth.').waitFor({ timeout: 120_000 });
    await reach(page, /to be turned$/);
    await page.keyboard.press('4');
    await page.keyboard.press('Enter');
    await expect.poll(() => page.locator('.worn-reading').textContent()).toContain('waist');

    await toView(page, 'Sizes');
    await reach(page, 'chart');
    await page.keyboard.type('EN');
    await page.getByText(/^The bodice in 12 sizes of EN 13402-3, women/).waitFor({ timeout: 60_000 });
    await reach(page, 'nest-Size');
    await page.keyboard.press('End');

    await toView(page, 'Cloth');
    await reach(page, 'cloth-effort');
    await page.keyboard.press('Home');
    await reach(page, 'Lay the bodice on it');
    await page.keyboard.press('Enter');
    await page.getByText('No overlaps, and every piece is there').waitFor({ timeout: 90_000 });

    await toView(page, 'Learn');
    await reach(page, /^The step/);
    await page.keyboard.press('ArrowRight');
    await page.getByText(/step 2 of/).waitFor();

    // In the code Tab goes on, and does not write.
    await toView(page, 'Change the code');
    await page.locator('.cm-content').waitFor();
    await page.locator('.drawn .construction').waitFor();
    await reach(page, /Tab leaves the editor/);
    await reach(page, /^(?:The construction|Hold it to everybody)$/);

    await toView(page, 'Take', 'Print and take');
    await page.getByRole('button', { name: 'bodice-a4.pdf' }).waitFor();
    await reach(page, 'bodice-a4.pdf');
    const [file] = await Promise.all([
      page.waitForEvent('download', { timeout: 60_000 }),
      page.keyboard.press('Enter'),
    ]);
    expect((await readFile(await file.path())).subarray(0, 5).toString()).toBe('%PDF-');
    expect(faults.filter((fault) => !fault.includes('GPU stall'))).toEqual([]);
  }, 300_000);
});

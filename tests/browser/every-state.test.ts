import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { openDraft, write } from './draft-page.ts';
import {
  barriers,
  beyondSide,
  browsed,
  drawn,
  inBrowser,
  invented,
  view,
  viewTitles,
} from './opened-page.ts';

/* Every view as it is met when something is amiss, or not there yet: nothing in anybody's way, and nothing beside the screen. */

const { opened } = browsed();

async function expectClear(page: Page, what: string): Promise<void> {
  // All that is folded away is there too.
  await page.evaluate(`for (const each of document.querySelectorAll('details')) each.open = true`);
  expect([what, ...(await barriers(page))]).toEqual([what]);
  expect(await beyondSide(page), what).toBeLessThanOrEqual(0);
}

inBrowser.each([
  [360, 'light'],
  [360, 'dark'],
  [1280, 'light'],
  [3840, 'dark'],
] as const)('%i pixels wide and %s', (width, colorScheme) => {
  const screen = { viewport: { width, height: 900 }, colorScheme, hasTouch: width === 360 };

  test('before anybody is measured', async () => {
    const { page, faults } = await opened(screen);
    for (const name of viewTitles) {
      await view(page, name);
      await page.waitForTimeout(300);
      await expectClear(page, `empty ${name}`);
    }
    expect(faults).toEqual([]);
  }, 120_000);

  test('once she is measured', async () => {
    const { page, faults } = await opened(screen);
    await invented(page, 'Scene painter');
    for (const name of viewTitles) {
      await view(page, name);
      await page.waitForTimeout(300);
      await expectClear(page, name);
    }
    expect(faults).toEqual([]);
  }, 120_000);

  test('when a choice, a file or the code is amiss', async () => {
    const { page, faults } = await opened(screen);
    await invented(page, 'Scene painter');
    const file = (of: string, name: string, text: string): Promise<void> =>
      page
        .locator(of)
        .first()
        .setInputFiles({ name, mimeType: 'text/plain', buffer: Buffer.from(text) });
    // A file that cannot be read, and one that takes the place of what was there.
    await file('main input[type=file]', 'slip.yaml', 'units: cm\nbustGirth:92');
    await page.getByText('slip.yaml, line 2').waitFor();
    await expectClear(page, 'a file with a slip');
    await file('main input[type=file]', 'odd.yaml', 'units: cm\nwaistGirth: 70\nhipp: 90\nbustGirth: wide');
    await page.getByText('There is no measurement called hipp').waitFor();
    await expectClear(page, 'a file with faults');
    await page.getByRole('button', { name: 'Back to what was there' }).click();
    // Measurements that contradict each other.
    await page.getByLabel('Waist girth', { exact: true }).fill('140');
    await page.waitForTimeout(1500);
    await expectClear(page, 'measurements that contradict');
    await page.getByRole('button', { name: 'Undo' }).click();
    await drawn(page, 'dress');
    await view(page, 'Choose');
    await page.getByLabel('Strap width', { exact: true }).fill('900');
    await page
      .getByText(/this draft takes/)
      .first()
      .waitFor();
    for (const name of viewTitles) {
      await view(page, name);
      await page.waitForTimeout(300);
      await expectClear(page, `refused ${name}`);
    }
    await page.getByRole('button', { name: 'Undo' }).click();
    await drawn(page, 'dress');
    // A chart that cannot be read, and a cloth that is none.
    await view(page, 'Sizes');
    await file('main input[type=file]', 'mine.csv', 'size,bustGirth\n40,92\n');
    await page.getByText('Say in which unit').first().waitFor();
    await expectClear(page, 'a chart that says no unit');
    await view(page, 'Cloth');
    await page.getByLabel('Width, selvedge to selvedge').fill('wide');
    await page.getByRole('button', { name: /^Lay the/ }).click();
    await page.getByText('The width of the cloth takes a length').waitFor();
    await expectClear(page, 'a cloth that is none');
    // Code that does not run, and a draft of a stranger.
    await view(page, 'Change the code');
    await page.locator('.cm-content').waitFor();
    await write(page, 'const x = ;');
    await page.locator('.said.error').first().waitFor();
    await expectClear(page, 'code that does not run');
    await openDraft(page, 'theirs.ts', 'export default 1;');
    await expectClear(page, 'a draft of a stranger');
    await page.getByRole('button', { name: 'Run it' }).click();
    await page.locator('.said.error').first().waitFor();
    await expectClear(page, 'a draft that is none');
    expect(faults).toEqual([]);
  }, 240_000);
});

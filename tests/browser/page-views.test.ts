import { unzipSync } from 'fflate';
import type { BrowserContextOptions, Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { barriers, beyondSide, browsed, download, inBrowser, invented, view } from './opened-page.ts';

/* The views of sizes, cloth, what is worn and what is taken, in a real browser: by a phone in the light, by a wide screen in the dark. */

const { opened } = browsed();

const phone: BrowserContextOptions = { viewport: { width: 360, height: 800 }, colorScheme: 'light' };
const wide: BrowserContextOptions = { viewport: { width: 1600, height: 900 }, colorScheme: 'dark' };

/** Nothing in anybody's way, and nothing beside the screen. */
async function expectClear(page: Page, what: string): Promise<void> {
  expect([what, ...(await barriers(page))]).toEqual([what]);
  expect(await beyondSide(page), what).toBeLessThanOrEqual(0);
}

inBrowser('on the page', () => {
  test.each(['Pieces', 'Worn', 'Cloth'])(
    '%s leads who has measured nothing yet to where she can',
    async (name) => {
      const { page, faults } = await opened(phone);
      await view(page, name);
      await page.getByRole('button', { name: 'Measure her, or try an invented body' }).click();
      await page.getByRole('heading', { name: 'Measure', exact: true }).waitFor();
      expect(faults).toEqual([]);
    },
  );

  test.each([phone, wide])(
    'a grader sees every size of a chart, one piece by sliders, and the nearest to her: %j',
    async (screen) => {
      const { page, faults } = await opened(screen);
      await invented(page, 'Understudy');
      await view(page, 'Sizes');
      await expectClear(page, 'no chart');
      await page.getByLabel('Size chart').selectOption('en-13402-3-women.yaml');
      await page.getByText('The dress in 12 sizes of EN 13402-3, women: all true').waitFor();
      await page.getByLabel('Piece', { exact: true }).selectOption('side back');
      const picture = page.getByRole('img');
      const shown = () => picture.getAttribute('aria-label');
      await expect.poll(shown, { timeout: 20_000 }).toContain('side back in 12 sizes');
      await page.getByRole('slider', { name: /^Size/ }).press('End');
      await expect
        .poll(shown, { timeout: 20_000 })
        .toMatch(/128 in a heavy line\. (?:Every step|Uneven steps: )/);
      await page.getByText(/^Rule table of the side back/).click();
      await page.getByRole('button', { name: 'Which size is nearest?' }).click();
      await page.getByText(/: nearest in EN 13402-3, women is size \d+/).waitFor();
      await expectClear(page, 'sizes');
      expect(faults).toEqual([]);
    },
    180_000,
  );

  test('sizes in cups move by two sliders, and all is taken as one ZIP', async () => {
    const { page, faults } = await opened();
    await invented(page, 'Understudy');
    await view(page, 'Choose');
    await page.getByRole('radio', { name: /^Bodice/ }).check();
    await view(page, 'Sizes');
    await page.getByLabel('Size chart').selectOption('workshop-stock.yaml');
    await page.getByText('The bodice in 50 sizes of workshop stock: all true').waitFor({ timeout: 120_000 });
    await page.getByRole('slider', { name: /^Cup/ }).press('End');
    await page.getByLabel('all cups of this size').check();
    const shown = () => page.getByRole('img').getAttribute('aria-label');
    await expect.poll(shown, { timeout: 20_000 }).toMatch(/in 5 sizes .*: 40 A, .*; 40 E in a heavy line\. /);
    const { name, bytes } = await download(page, 'Take nests and rule tables as one ZIP');
    expect(name).toBe('bodice-workshop-stock.zip');
    expect(Object.keys(unzipSync(bytes))).toContain('grade-cups.csv');
    expect(faults).toEqual([]);
  }, 240_000);

  test.each([phone, wide])(
    'pieces are laid on cloth, the best is kept when it is stopped, and taken: %j',
    async (screen) => {
      const { page, faults } = await opened(screen);
      await invented(page, 'Understudy');
      await view(page, 'Cloth');
      await page.getByLabel('Width, selvedge to selvedge').fill('wide');
      await page.getByRole('button', { name: 'Lay the dress on it' }).click();
      await page.getByText('The width of the cloth takes a length from 100 to 5000 mm').waitFor();
      await page.getByLabel('Width, selvedge to selvedge').fill('150 cm');
      await page.getByLabel('Seek for').selectOption('five minutes');
      await page.getByRole('button', { name: 'Lay the dress on it' }).click();
      await page.getByRole('img', { name: /^Plan of the cloth/ }).waitFor();
      await page.getByRole('button', { name: 'Stop, and keep the best' }).click();
      await page.getByText('No overlaps, and every piece is there').waitFor();
      await page.getByText('lengths of a quick plan').waitFor();
      const plan = page.getByRole('img', { name: /^Plan of the cloth: .* % used; .* Every piece is placed/ });
      expect(await plan.count()).toBe(1);
      await expectClear(page, 'cloth');
      const { name, bytes } = await download(page, 'Take the plan (SVG and PDF)');
      expect(name).toBe('dress-for-understudy-lay.zip');
      expect(Object.keys(unzipSync(bytes))).toEqual(['lay-self.svg', 'lay-lining.svg', 'lay.pdf']);
      expect(faults).toEqual([]);
    },
    180_000,
  );

  test.each([phone, wide])(
    'what is worn is drawn in black line where nothing can be shown in space: %j',
    async (screen) => {
      const { page, faults } = await opened(screen);
      // As in a browser without a driver of graphics.
      await page.addInitScript('HTMLCanvasElement.prototype.getContext = () => null');
      await page.reload();
      await invented(page, 'Understudy');
      await view(page, 'Choose');
      await page.getByRole('radio', { name: /^Bodice/ }).check();
      await view(page, 'Worn');
      await page.getByRole('button', { name: 'Put it on' }).click();
      await page.getByText('this browser shows nothing in space').waitFor({ timeout: 120_000 });
      for (const from of ['from the front', 'from her left side', 'from the back'])
        await page
          .getByRole('img', {
            name: new RegExp(`^Seen ${from}: bodice worn by understudy\\. (?:Off|Perhaps): `),
          })
          .waitFor();
      await expectClear(page, 'worn, in lines');
      expect(faults).toEqual([]);
    },
    240_000,
  );

  test.each([phone, wide])(
    'the bodice is worn, and a finding taken over changes the pieces, until it is undone: %j',
    async (screen) => {
      const { page, faults } = await opened(screen);
      await invented(page, 'Understudy');
      await view(page, 'Choose');
      await page.getByRole('radio', { name: /^Bodice/ }).check();
      await view(page, 'Worn');
      await page.getByRole('button', { name: 'Put it on' }).click();
      await page.getByText('It is no substitute for a trial bodice in cloth.').waitFor({ timeout: 120_000 });
      const words = /^bodice worn by understudy\. .*(?:Off|Perhaps): ease at the bust: /;
      expect(await page.getByRole('img', { name: words }).count()).toBe(1);
      await expectClear(page, 'worn');
      const takeIn = page.getByRole('button', { name: /^Take in the side seam at the bust/ });
      await takeIn.click();
      await page.getByText('The fitting has it now, and the pieces follow.').waitFor();
      await page.getByText('This is how it was before.').waitFor();
      expect(await takeIn.isDisabled()).toBe(true);
      await view(page, 'Take');
      const fitted = async (): Promise<unknown> => {
        const { bytes } = await download(page, 'report.json');
        return JSON.parse(bytes.toString()).fitting;
      };
      expect(await fitted()).toMatchObject([{ change: 'take in the side seam at the bust', mm: 6 }]);
      await page.getByRole('button', { name: 'Undo' }).click();
      await page.getByRole('button', { name: 'report.json' }).waitFor();
      expect(await fitted()).toEqual([]);
      await expectClear(page, 'take');
      expect(faults.filter((fault) => !fault.includes('GPU stall'))).toEqual([]);
    },
    240_000,
  );
});

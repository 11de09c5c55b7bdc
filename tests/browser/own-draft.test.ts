import { readFile } from 'node:fs/promises';
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { garments } from '../../drafts/index.ts';
import { bodkin } from '../cli/session.ts';
import { temporaryFolder } from '../cli/temporary-folder.ts';
import { drawing, withSkirt, write } from './draft-page.ts';
import { barriers, beyondSide, browsed, download, drawn, inBrowser, view } from './opened-page.ts';

/* Code that somebody changed, drawing every view of the page as `npm run build` leaves it, in a real browser. */

const lady = new URL('../../measurements/leading-lady.yaml', import.meta.url).pathname;
const folder = temporaryFolder();
const browser = browsed();

const byCode = (page: Page) => page.getByText('the code as you changed it', { exact: true });

/** What the machine's driver of graphics has to say is no fault of the page. */
const saidByPage = (faults: readonly string[]): readonly string[] =>
  faults.filter((fault) => !fault.startsWith('[.WebGL'));

/** Changes a line of a file in the editor, and draws every view by it. */
async function change(page: Page, file: string, was: RegExp, is: string): Promise<void> {
  await view(page, 'Change the code');
  await drawing(page).getByRole('img').waitFor();
  const files = await page.evaluate<Record<string, string>>(
    `fetch('drafts.json').then((all) => all.json()).then(({ files }) => files)`,
  );
  await page.getByLabel('File', { exact: true }).selectOption(file);
  const text = (files[file] ?? '').replace(was, is);
  expect(text).not.toBe(files[file]);
  await write(page, text);
}

inBrowser('changed code', () => {
  test('draws every view, and what is taken is what the command line writes by it', async () => {
    const { page, faults } = await withSkirt(browser);
    await change(page, 'skirt/rules.ts', /(sideBalance: \[\s*)10,/, '$114,');
    await page.getByRole('button', { name: 'Draw by it in every view' }).click();
    await page.getByText('All of this is drawn by the code below').waitFor();
    await view(page, 'Take');
    await byCode(page).waitFor();
    await drawn(page, 'skirt');
    const sheet = await download(page, 'sheet.svg');
    const cutting = await download(page, 'cutting.dxf');
    await view(page, 'Change the code');
    await page.locator('main details.files summary').click();
    const saved = await download(page, 'Save as a file');
    const file = await folder.file('my-skirt.ts', saved.text);
    const out = folder.at('out');
    const session = { garments: Object.values(garments) };
    const words = ['--draft', file, 'draft', 'skirt', '--body', lady, '--out', out, '--also', 'dxf'];
    const { code, err } = await bodkin(words, session);
    expect(code, err).toBe(0);
    expect(sheet.text === (await readFile(`${out}/sheet.svg`, 'utf8'))).toBe(true);
    expect(cutting.text === (await readFile(`${out}/cutting.dxf`, 'utf8'))).toBe(true);
    // The program's own again, and back.
    await view(page, 'Take');
    await page.getByRole('button', { name: 'Back to the program’s own' }).click();
    await byCode(page).waitFor({ state: 'detached' });
    await drawn(page, 'skirt');
    expect((await download(page, 'sheet.svg')).text === sheet.text).toBe(false);
    await page.getByRole('button', { name: 'Undo' }).click();
    await byCode(page).waitFor();
    // And tomorrow.
    await page.waitForTimeout(1200);
    await page.reload();
    await byCode(page).waitFor();
    await page.getByRole('button', { name: 'sheet.svg' }).waitFor();
    expect((await download(page, 'sheet.svg')).text === sheet.text).toBe(true);
    expect(faults).toEqual([]);
  }, 120_000);

  test('is graded, laid, chosen from and learnt from', async () => {
    const { page, faults } = await withSkirt(browser);
    await change(page, 'skirt/choices.ts', /default: 'knee'/, "default: 'ankle'");
    await drawing(page).getByText('Not so:').first().waitFor({ state: 'detached' });
    await page.getByRole('button', { name: 'Draw by it in every view' }).click();
    await view(page, 'Choose');
    await expect
      .poll(() => page.getByRole('radio', { name: /^Skirt, by the code as you changed it/ }).isChecked())
      .toBe(true);
    // A link cannot carry it, and says so where it is made.
    await page.getByText('A link to this').click();
    await page.getByText('the code that you changed is not in the link').waitFor();
    await view(page, 'Sizes');
    await page.getByLabel('Size chart').selectOption('workshop-stock.yaml');
    await page.getByText(/^The skirt in 50 sizes of workshop stock: all true/).waitFor({ timeout: 60_000 });
    await page.getByRole('button', { name: 'Which size is nearest?' }).click();
    await page.getByText(/nearest in workshop stock is size/).waitFor();
    await view(page, 'Cloth');
    await page.getByLabel('Seek for').selectOption('short');
    await page.getByRole('button', { name: 'Lay the skirt on it' }).click();
    await page.getByText('No overlaps, and every piece is there').waitFor({ timeout: 30_000 });
    await view(page, 'Learn');
    await page.locator('.sentence').waitFor();
    await view(page, 'Worn');
    await page.getByRole('button', { name: 'Put it on' }).click();
    await page.getByText('What a fitter would say').waitFor({ timeout: 120_000 });
    expect(saidByPage(faults)).toEqual([]);
  }, 180_000);

  test('is worn where it is a bodice', async () => {
    const { page, faults } = await withSkirt(browser);
    await view(page, 'Choose');
    await page.getByRole('radio', { name: /^Bodice/ }).check();
    await drawn(page, 'bodice');
    await change(page, 'foundation/rules.ts', /(\[\s*)(\d+)(,\s*'mm')/, '$1$2.01$3');
    await drawing(page).getByText('Not so:').first().waitFor({ state: 'detached' });
    await page.getByRole('button', { name: 'Draw by it in every view' }).click();
    await view(page, 'Worn');
    await page.getByRole('button', { name: 'Put it on' }).click();
    await page.getByText('What a fitter would say').waitFor({ timeout: 120_000 });
    await byCode(page).waitFor();
    expect(saidByPage(faults)).toEqual([]);
  }, 240_000);

  test('that never ends is ended in every view, and said there', async () => {
    const { page, faults } = await withSkirt(browser);
    await change(page, 'skirt/rules.ts', /(sideBalance: \[\s*)10,/, '$114,');
    await page.getByRole('button', { name: 'Draw by it in every view' }).click();
    const text = await page.evaluate<string>(
      `fetch('drafts.json').then((all) => all.json()).then(({ files }) => files['skirt/rules.ts'])`,
    );
    await write(page, `${text}\nfor (;;);\n`);
    await view(page, 'Pieces');
    // One limit of 12 s runs out, from when it is begun: the code before it, whose frame is closed, is waited for no more. A second
    // limit has no room.
    await page.getByText('What you changed in the code cannot be drawn for her').waitFor({ timeout: 23_000 });
    await view(page, 'Checks');
    await page.getByText(/it ran longer than \d+ seconds/).waitFor();
    // The page itself goes on, and everything is drawn again by the program's own.
    await page.getByRole('button', { name: 'Back to the program’s own' }).click();
    await drawn(page, 'skirt');
    await expect.poll(() => page.locator('iframe').count()).toBe(0);
    expect(faults).toEqual([]);
  }, 180_000);

  test('that never ends is waited for no more once it is put right, or the program’s own is to draw', async () => {
    const { page, faults } = await withSkirt(browser);
    await change(page, 'skirt/rules.ts', /(sideBalance: \[\s*)10,/, '$114,');
    await page.getByRole('button', { name: 'Draw by it in every view' }).click();
    const endless = async (): Promise<string> => {
      const text = await page.evaluate<string>(
        `fetch('drafts.json').then((all) => all.json()).then(({ files }) => files['skirt/rules.ts'])`,
      );
      await write(page, `${text}\nfor (;;);\n`);
      await expect.poll(() => page.locator('iframe').count()).toBeGreaterThan(0);
      return text;
    };
    // Before its limit of 12 s could run out.
    const soon = { timeout: 9000 };
    const text = await endless();
    await write(page, text.replace('10,', '15,'));
    await view(page, 'Take');
    await page.getByRole('button', { name: 'sheet.svg' }).waitFor(soon);
    await byCode(page).waitFor();
    await view(page, 'Change the code');
    await endless();
    await view(page, 'Take');
    await page.getByRole('button', { name: 'Back to the program’s own' }).click();
    await page.getByRole('button', { name: 'sheet.svg' }).waitFor(soon);
    expect(faults).toEqual([]);
  }, 120_000);
});

inBrowser.each([360, 1280, 3840])('views by changed code, %i pixels wide', (width) => {
  test('have nothing that axe-core finds, and nothing beside the screen', async () => {
    const { page, faults } = await withSkirt(browser, { viewport: { width, height: 900 } });
    await change(page, 'skirt/rules.ts', /(sideBalance: \[\s*)10,/, '$114,');
    await page.getByRole('button', { name: 'Draw by it in every view' }).waitFor();
    expect(await barriers(page)).toEqual([]);
    await page.getByRole('button', { name: 'Draw by it in every view' }).click();
    await page.getByText('All of this is drawn by the code below').waitFor();
    for (const name of ['Change the code', 'Choose', 'Take']) {
      await view(page, name);
      await page
        .getByText(/drawn by the code|drawn by$/)
        .first()
        .waitFor();
      expect(await barriers(page), name).toEqual([]);
      expect(await beyondSide(page), name).toBeLessThanOrEqual(0);
    }
    expect(faults).toEqual([]);
  }, 120_000);
});

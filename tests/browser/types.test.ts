import { expect, test } from 'vitest';
import { drawing, withSkirt } from './draft-page.ts';
import { longest, tasksDuring } from './main-thread.ts';
import { barriers, browsed, inBrowser, view } from './opened-page.ts';

/* Types in the editor, on the page as `npm run build` leaves it, in a real browser. */

const browser = browsed();

inBrowser('types in the editor', () => {
  test('are loaded when somebody asks for them; then what does not fit is marked on its line, and names have their types', async () => {
    const { page, faults } = await withSkirt(browser);
    const asked: string[] = [];
    page.context().on('request', (request) => asked.push(new URL(request.url()).pathname));
    await view(page, 'Change the code');
    await drawing(page).getByRole('img').waitFor();
    await page.getByLabel('File', { exact: true }).selectOption('skirt/gore-sizes.ts');
    await page.locator('.cm-content').waitFor();
    expect(asked.filter((path) => path === '/types.js' || path === '/declarations.json')).toEqual([]);
    const tasks = await tasksDuring(page, async () => {
      await page.getByLabel('Check types as one writes').check();
      await page.getByText('Every type fits.').waitFor({ timeout: 60_000 });
    });
    expect(longest(tasks)).toBeLessThan(50);
    const code = page.locator('.cm-content');
    await code.click();
    await page.keyboard.press('Control+End');
    await page.keyboard.type("\nexport const wide: number = 'wide';\n");
    await page.locator('.cm-lintRange-warning', { hasText: 'wide' }).waitFor({ timeout: 30_000 });
    const types = page.getByRole('region', { name: 'Types' });
    await types.getByText("Type 'string' is not assignable to type 'number'.").waitFor();
    await types.getByText('One place where a type does not fit.').waitFor({ timeout: 30_000 });
    // What a name is says the compiler, by keys and by pointing.
    await page.keyboard.press('ArrowUp');
    await page.keyboard.press('Home');
    for (let i = 0; i < 14; i++) await page.keyboard.press('ArrowRight');
    await page.locator('.meaning', { hasText: 'const wide: number' }).waitFor();
    // And what may stand behind a dot.
    await page.keyboard.press('Control+End');
    await page.keyboard.type('export const long = wide.toExp');
    await page.getByRole('option', { name: /^toExponential/ }).waitFor();
    await page.keyboard.press('Escape');
    // Another file that this one no longer fits is named too, and led to.
    await page.keyboard.press('Control+End');
    await page.keyboard.press('Control+Shift+Home');
    await page.keyboard.press('Delete');
    await page.keyboard.insertText('export const nothing = 1;\n');
    const other = types.getByRole('button', { name: /^skirt\/(?!gore-sizes)/ }).first();
    await other.waitFor({ timeout: 30_000 });
    const [, file = '', line = ''] = /^(.*), line (\d+)$/.exec((await other.textContent()) ?? '') ?? [];
    await other.click();
    await page.getByLabel(`${file}: Tab leaves the editor`).and(page.locator(':focus')).waitFor();
    const source = await page.evaluate<string>(
      `fetch('drafts.json').then((all) => all.json()).then(({ files }) => files[${JSON.stringify(file)}])`,
    );
    await expect
      .poll(() => page.locator('.cm-activeLine').textContent())
      .toBe(source.split('\n')[Number(line) - 1]);
    expect(await barriers(page)).toEqual([]);
    await page.getByLabel('Check types as one writes').uncheck();
    await types.getByText('1.4 MB').waitFor();
    expect(faults).toEqual([]);
  }, 180_000);

  test('are there without a network once they were asked for', async () => {
    const { page, faults } = await browser.opened();
    await page.evaluate('navigator.serviceWorker.ready');
    await expect.poll(() => page.evaluate('navigator.serviceWorker.controller !== null')).toBe(true);
    await view(page, 'Change the code');
    await page.getByLabel('Check types as one writes').check();
    await page.getByText('Every type fits.').waitFor({ timeout: 60_000 });
    await page.context().setOffline(true);
    await page.reload();
    await view(page, 'Change the code');
    await page.getByLabel('Check types as one writes').check();
    await page.getByText('Every type fits.').waitFor({ timeout: 60_000 });
    expect(faults.filter((fault) => !/ERR_INTERNET_DISCONNECTED/.test(fault))).toEqual([]);
  }, 180_000);
});

import { readFileSync } from 'node:fs';
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { gzipSync } from 'node:zlib';
import { type Browser, type BrowserContextOptions, chromium as driven, type Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { pageFiles, type ServedPage, servePage } from '../../cli/page-server.ts';
import { garments } from '../../drafts/index.ts';
import { bodkin } from '../cli/session.ts';
import { temporaryFolder } from '../cli/temporary-folder.ts';
import { chromium } from './chromium.ts';

/* The page as `npm run build` leaves it, in a real browser. */

const program = chromium();
const built = new URL('../../.dist/page/', import.meta.url);
const axe = readFileSync(new URL('../../node_modules/axe-core/axe.min.js', import.meta.url), 'utf8');
const folder = temporaryFolder();
const views = ['Measure', 'Choose', 'Pieces', 'Checks', 'Take'];

let served: ServedPage;
let browser: Browser;

beforeAll(async () => {
  if (program === undefined) return;
  served = await servePage(await pageFiles(built), 0);
  browser = await driven.launch({ executablePath: program, args: ['--no-sandbox'] });
}, 60_000);
afterAll(async () => {
  await browser?.close();
  await served?.close();
});

/** A page in a browser of its own, and all that went wrong or elsewhere meanwhile. */
async function opened(options: BrowserContextOptions = {}): Promise<{ page: Page; faults: string[] }> {
  const context = await browser.newContext({ viewport: { width: 1280, height: 900 }, ...options });
  const page = await context.newPage();
  const faults: string[] = [];
  context.on('request', (request) => {
    if (!request.url().startsWith(served.address) && !request.url().startsWith('blob:'))
      faults.push(`asked elsewhere: ${request.url()}`);
  });
  page.on('pageerror', (error) => faults.push(error.message));
  page.on('console', (message) => {
    if (message.type() === 'error' || message.type() === 'warning') faults.push(message.text());
  });
  await page.goto(served.address);
  return { page, faults };
}

const view = (page: Page, name: string) => page.getByRole('link', { name, exact: true }).click();
const drawn = (page: Page, garment: string) =>
  page.getByText(`The ${garment} is drawn, and every check is true.`).waitFor();

async function download(page: Page, button: string): Promise<{ name: string; text: string }> {
  const [file] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: button, exact: true }).click(),
  ]);
  return { name: file.suggestedFilename(), text: await readFile(await file.path(), 'utf8') };
}

async function measure(page: Page, sizes: Readonly<Record<string, string>>): Promise<void> {
  for (const [label, text] of Object.entries(sizes)) await page.getByLabel(label, { exact: true }).fill(text);
}

const four = {
  'Bust girth': '36 1/4',
  'Waist girth': '29',
  'Hip girth': '39',
  'Back neck point to waist': '15 7/8',
};

const command = (words: readonly string[]) => bodkin(words, { garments: Object.values(garments) });

const inBrowser = describe.skipIf(program === undefined);

inBrowser('a dressmaker', () => {
  test('comes from the empty form to the very files that the command line writes', async () => {
    const { page, faults } = await opened();
    await page.getByText('Nothing is measured yet.').waitFor();
    await page.getByLabel('Name or role').fill('wardrobe apprentice');
    await page.getByLabel('inches', { exact: true }).check();
    await measure(page, { ...four, 'Waist girth': 'wide' });
    await page.getByText('wide is no number for the waist girth').waitFor();
    await measure(page, four);
    await page
      .getByText(/^Estimated .* give or take/)
      .first()
      .waitFor();
    await view(page, 'Choose');
    await page.getByLabel('plain', { exact: true }).first().check();
    await page.getByLabel('Waist ease', { exact: true }).fill('1 1/4');
    await page.getByRole('slider', { name: /^Strap width/ }).press('ArrowRight');
    await drawn(page, 'dress');
    await view(page, 'Take');
    await page.getByRole('button', { name: 'sheet.svg' }).waitFor();
    const taken = [await download(page, 'sheet.svg'), await download(page, 'report.json')];
    const body = await download(page, 'Save as YAML');
    expect(body.name).toBe('wardrobe-apprentice.yaml');
    const { styling } = JSON.parse(taken[1]?.text ?? '');
    expect(styling).toMatchObject({ front: 'plain', waistEase: 31.75 });
    const file = await folder.file(body.name, body.text);
    const sets = ['front', 'waistEase', 'strapWidth'].flatMap((name) => [
      '--set',
      `${name}=${styling[name]}`,
    ]);
    const { code, err } = await command([
      'draft',
      'dress',
      '--body',
      file,
      '--out',
      folder.at('out'),
      ...sets,
    ]);
    expect(code, err).toBe(0);
    for (const { name, text } of taken)
      expect(text === (await readFile(join(folder.at('out'), name), 'utf8')), name).toBe(true);
    expect(faults).toEqual([]);
  });

  test('finds all as it was after a reload, and nothing once it is deleted', async () => {
    const { page, faults } = await opened();
    await page.getByLabel('inches', { exact: true }).check();
    await measure(page, four);
    await view(page, 'Choose');
    await page.getByRole('radio', { name: /^Skirt/ }).check();
    await drawn(page, 'skirt');
    await page.reload();
    await drawn(page, 'skirt');
    await view(page, 'Measure');
    expect(await page.getByLabel('Bust girth', { exact: true }).inputValue()).toBe('36 1/4');
    await page.getByRole('button', { name: 'Delete all that is kept' }).click();
    await page.reload();
    await page.getByText('Nothing is measured yet.').waitFor();
    expect(await page.getByLabel('Bust girth', { exact: true }).inputValue()).toBe('');
    expect(faults).toEqual([]);
  });

  test('opens a file, is told what is wrong with another, and can go back', async () => {
    const { page, faults } = await opened();
    const file = (name: string, text: string) =>
      page
        .locator('input[type=file]')
        .setInputFiles({ name, mimeType: 'text/plain', buffer: Buffer.from(text) });
    await page.getByText('Open a file').click();
    await page.getByRole('button', { name: 'Prompter' }).click();
    await drawn(page, 'dress');
    const waist = await page.getByLabel('Waist girth', { exact: true }).inputValue();
    await file('slip.yaml', 'units: cm\nbustGirth:92');
    await page.getByText('slip.yaml, line 2').waitFor();
    await file('script.yaml', 'name: "<img src=x onerror=alert(1)>"\nunits: cm\nwaistGirth: 70\nhipp: 90');
    await page.getByText('There is no measurement called hipp').waitFor();
    await page.getByRole('button', { name: /^Leave out/ }).click();
    await page.getByText('There is no measurement called hipp').waitFor({ state: 'detached' });
    expect(await page.getByLabel('Waist girth', { exact: true }).inputValue()).toBe('70');
    await page.getByRole('button', { name: 'Back to what was there' }).click();
    expect(await page.getByLabel('Waist girth', { exact: true }).inputValue()).toBe(waist);
    expect(faults).toEqual([]);
  });

  test('has the last drawing still in sight while something stands in the way of the next', async () => {
    const { page } = await opened();
    await page.getByText('Open a file').click();
    await page.getByRole('button', { name: 'Understudy' }).click();
    await drawn(page, 'dress');
    await view(page, 'Choose');
    await page.getByLabel('Strap width', { exact: true }).fill('900');
    await page
      .getByText(/this draft takes 20 to 60 mm/)
      .first()
      .waitFor();
    await page.getByRole('img').waitFor();
    await view(page, 'Take');
    expect(await page.getByRole('button', { name: 'sheet.svg' }).count()).toBe(0);
  });

  test('needs nothing but the keyboard', async () => {
    const { page } = await opened();
    const reach = async (name: string): Promise<void> => {
      for (let i = 0; i < 60; i++) {
        await page.keyboard.press('Tab');
        const at = page.locator(':focus');
        if (
          (await at.count()) > 0 &&
          ((await at.getAttribute('id')) === name || (await at.textContent()) === name)
        )
          return;
      }
      throw new Error(`${name} is not reached`);
    };
    await reach('bustGirth');
    await page.keyboard.type('92');
    await reach('waistGirth');
    await page.keyboard.type('74');
    await reach('hipGirth');
    await page.keyboard.type('99');
    await reach('backNeckPointToWaist');
    await page.keyboard.type('40.5');
    await drawn(page, 'dress');
    await page.reload();
    await reach('Pieces');
    await page.keyboard.press('Enter');
    const pane = page.getByRole('region', { name: /^Drawing/ });
    await pane.focus();
    const width = async (): Promise<number> => (await page.getByRole('img').boundingBox())?.width ?? 0;
    const before = await width();
    await page.keyboard.press('+');
    await expect.poll(width).toBeGreaterThan(before * 1.2);
    await page.keyboard.press('0');
    await expect.poll(width).toBeCloseTo(before, 0);
  });
});

inBrowser.each([
  [360, 'light'],
  [1600, 'dark'],
] as const)('every view, %i pixels wide and %s', (width, colorScheme) => {
  test('has nothing that axe-core finds, and nothing beside the screen', async () => {
    const { page, faults } = await opened({ viewport: { width, height: 800 }, colorScheme });
    const look = async (name: string): Promise<void> => {
      // Run by the debugger, it is not held to the page's security policy.
      await page.evaluate(axe);
      const found = await page.evaluate<string[]>(
        'axe.run().then(({ violations }) => violations.flatMap(({ id, nodes }) => nodes.map(({ html }) => id + html)))',
      );
      expect([name, ...found]).toEqual([name]);
      expect(await page.evaluate('document.documentElement.scrollWidth - innerWidth')).toBeLessThanOrEqual(0);
    };
    for (const name of views) {
      await view(page, name);
      await look(`empty ${name}`);
    }
    await view(page, 'Measure');
    await page.getByText('Open a file').click();
    await page.getByRole('button', { name: 'Scene painter' }).click();
    await drawn(page, 'dress');
    for (const name of views) {
      await view(page, name);
      await page.waitForTimeout(300);
      await look(name);
    }
    await view(page, 'Choose');
    await page.getByLabel('Strap width', { exact: true }).fill('900');
    await page
      .getByText(/this draft takes/)
      .first()
      .waitFor();
    for (const name of views) {
      await view(page, name);
      await look(`refused ${name}`);
    }
    expect(faults).toEqual([]);
  });
});

inBrowser('a first visit', () => {
  test('loads less than 300 kB, compressed', async () => {
    const context = await browser.newContext();
    const page = await context.newPage();
    const loaded = new Set<string>();
    context.on('request', (request) => loaded.add(new URL(request.url()).pathname));
    await page.goto(served.address);
    await page.getByText('Open a file').click();
    await page.getByText('Nothing is measured yet.').waitFor();
    await page.waitForLoadState('networkidle');
    const files = [...loaded].map((path) => (path === '/' ? 'index.html' : path.slice(1)));
    expect(files).toContain('worker.js');
    const size = files.reduce(
      (sum, name) => sum + gzipSync(readFileSync(join(fileURLToPath(built), name))).length,
      0,
    );
    expect(size).toBeLessThan(300_000);
  });
});

import { readFileSync } from 'node:fs';
import { readFile } from 'node:fs/promises';
import { type Browser, type BrowserContextOptions, chromium as driven, type Page } from 'playwright-core';
import { expect } from 'vitest';
import { pageFiles, type ServedPage, servePage } from '../../cli/page-server.ts';
import { chromium } from './chromium.ts';

const built = new URL('../../.dist/page/', import.meta.url);
const axe = readFileSync(new URL('../../node_modules/axe-core/axe.min.js', import.meta.url), 'utf8');

/** Where the machine's Chromium is; nothing where there is none. */
export const program = chromium();

/** The page as `npm run build` leaves it, served, and a browser to look at it with. */
export interface Looking {
  readonly served: ServedPage;
  readonly browser: Browser;
  readonly close: () => Promise<void>;
}

export async function looking(): Promise<Looking> {
  const served = await servePage(await pageFiles(built), 0);
  if (program === undefined) throw new Error('There is no Chromium on this machine.');
  const browser = await driven.launch({ executablePath: program, args: ['--no-sandbox'] });
  return {
    served,
    browser,
    close: async () => {
      await browser.close();
      await served.close();
    },
  };
}

/** A page in a browser of its own, and all that went wrong or elsewhere meanwhile. */
export async function openedPage(
  { served, browser }: Looking,
  options: BrowserContextOptions = {},
): Promise<{ page: Page; faults: string[] }> {
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

export const toView = (page: Page, name: string): Promise<void> =>
  page.getByRole('link', { name, exact: true }).click();

/** One of the invented bodies, opened and drafted. */
export async function withBody(page: Page, role: string, garment = 'dress'): Promise<void> {
  await page.getByText('Open a file').click();
  await page.getByRole('button', { name: role }).click();
  await page.getByText(`The ${garment} is drawn, and every check is true.`).waitFor();
}

export async function download(page: Page, button: string): Promise<{ name: string; bytes: Buffer }> {
  const [file] = await Promise.all([
    page.waitForEvent('download', { timeout: 60_000 }),
    page.getByRole('button', { name: button, exact: true }).click(),
  ]);
  return { name: file.suggestedFilename(), bytes: await readFile(await file.path()) };
}

/** Nothing that axe-core finds, and nothing beside the screen. */
export async function expectClear(page: Page, what: string): Promise<void> {
  // Run by the debugger, it is not held to the page's security policy.
  await page.evaluate(axe);
  const found = await page.evaluate<string[]>(
    'axe.run().then(({ violations }) => violations.flatMap(({ id, nodes }) => nodes.map(({ html }) => id + html)))',
  );
  expect([what, ...found]).toEqual([what]);
  expect(await page.evaluate('document.documentElement.scrollWidth - innerWidth')).toBeLessThanOrEqual(0);
}

import { readFileSync } from 'node:fs';
import { readFile } from 'node:fs/promises';
import { type Browser, type BrowserContextOptions, chromium as driven, type Page } from 'playwright-core';
import { afterAll, beforeAll, describe } from 'vitest';
import { pageFiles, type ServedPage, servePage } from '../../cli/open/page-server.ts';
import { viewEntries } from '../../cli/page/view-names.ts';
import { chromium } from './chromium.ts';

/* The page as `npm run build` leaves it, in a real browser. */

const program = chromium();

export const built = new URL('../../.dist/page/', import.meta.url);

/** Tests that are left out where there is no Chromium. */
export const inBrowser = describe.skipIf(program === undefined);

/** What all views are called, in their order. */
export const viewTitles: readonly string[] = viewEntries.map(({ title }) => title);

export interface OpenedPage {
  readonly page: Page;
  /** All that went wrong, or elsewhere, meanwhile. */
  readonly faults: string[];
}

/** A browser and the served page for the tests of a file. */
export function browsed(): {
  readonly address: () => string;
  readonly stop: () => Promise<void>;
  readonly opened: (options?: BrowserContextOptions, at?: string) => Promise<OpenedPage>;
} {
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
  return {
    address: () => served.address,
    stop: () => served.close(),
    opened: async (options = {}, at = '') => {
      const context = await browser.newContext({ viewport: { width: 1280, height: 900 }, ...options });
      const page = await context.newPage();
      const faults: string[] = [];
      context.on('request', (request) => {
        if (!request.url().startsWith(served.address) && !/^(?:blob:|about:srcdoc)/.test(request.url()))
          faults.push(`asked elsewhere: ${request.url()}`);
      });
      page.on('pageerror', (error) => faults.push(error.message));
      page.on('console', (message) => {
        if (message.type() === 'error' || message.type() === 'warning') faults.push(message.text());
      });
      await page.goto(served.address + at);
      return { page, faults };
    },
  };
}

export const view = (page: Page, name: string) => page.getByRole('link', { name, exact: true }).click();

export const drawn = (page: Page, garment: string) =>
  page.getByText(`The ${garment} is drawn, and every check is true.`).waitFor();

/** Opens one of the invented bodies, and waits for its dress. */
export async function invented(page: Page, name: string): Promise<void> {
  await page.getByText('Open a file').click();
  await page.getByRole('button', { name }).click();
  await drawn(page, 'dress');
}

/** Presses a button that saves a file, and reads that. */
export async function download(
  page: Page,
  button: string,
): Promise<{ readonly name: string; readonly text: string; readonly bytes: Buffer }> {
  const [file] = await Promise.all([
    page.waitForEvent('download', { timeout: 60_000 }),
    page.getByRole('button', { name: button, exact: true }).click(),
  ]);
  const bytes = await readFile(await file.path());
  return { name: file.suggestedFilename(), text: bytes.toString(), bytes };
}

const axe = readFileSync(new URL('../../node_modules/axe-core/axe.min.js', import.meta.url), 'utf8');

/** What stands in somebody's way on what is shown now. */
export async function barriers(page: Page): Promise<readonly string[]> {
  // Run by the debugger, it is not held to the page's security policy.
  await page.evaluate(axe);
  return page.evaluate<string[]>(
    'axe.run({ rules: { "target-size": { enabled: true } } }).then(({ violations }) => violations.flatMap(({ id, nodes }) => nodes.map(({ html }) => id + html)))',
  );
}

/** How far what is shown reaches beyond the screen's side, in pixels. */
export const beyondSide = (page: Page): Promise<number> =>
  page.evaluate<number>('document.documentElement.scrollWidth - innerWidth');

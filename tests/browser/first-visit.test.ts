import { readFileSync } from 'node:fs';
import { gzipSync } from 'node:zlib';
import { expect, test } from 'vitest';
import { browsed, built, inBrowser, invented, view } from './opened-page.ts';

const { opened, address, stop } = browsed();

inBrowser('a visit', () => {
  test('loads less than 300 kB, compressed, until the form stands there with a figure', async () => {
    const { page } = await opened();
    const asked = new Set<string>();
    // All that came before the first look at the page is counted too.
    page.on('request', (request) => asked.add(request.url()));
    await page.reload();
    await page.getByText('Nothing is measured yet.').waitFor();
    await page.getByRole('img').first().waitFor();
    const paths = [...asked].map((url) => new URL(url).pathname.slice(1) || 'index.html');
    expect(paths).toContain('worker.js');
    const size = paths.reduce((sum, path) => sum + gzipSync(readFileSync(new URL(path, built))).length, 0);
    expect(size, paths.join()).toBeLessThan(300_000);
  });

  test('is enough for the page to open, draft and be saved without a network ever after', async () => {
    const { page, faults } = await opened();
    await page.evaluate('navigator.serviceWorker.ready');
    await page.waitForFunction('navigator.serviceWorker.controller !== null');
    const from = address();
    await stop();
    await page.goto(from);
    await invented(page, 'Prompter');
    for (const name of ['Choose', 'Pieces', 'Checks', 'Take']) {
      await view(page, name);
      await page.getByRole('heading', { level: 1, name }).waitFor();
    }
    await page.getByRole('button', { name: 'sheet.svg' }).waitFor();
    expect(faults.filter((fault) => !fault.includes('ERR_CONNECTION_REFUSED'))).toEqual([]);
  });
});

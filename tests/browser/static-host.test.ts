import { readFile } from 'node:fs/promises';
import { createServer, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { extname } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { browsed, built, download, inBrowser, invented, view } from './opened-page.ts';

/* The built folder on a host that does no more than hand out files, under a path of its own. */

const at = '/workshop/patterns/';
const types: Readonly<Record<string, string>> = {
  '.html': 'text/html',
  '.js': 'text/javascript',
  '.css': 'text/css',
  '.json': 'application/json',
  '.svg': 'image/svg+xml',
};

const { opened } = browsed();
let host: Server;
/** What was asked for that is not under the path. */
const strays: string[] = [];

beforeAll(async () => {
  host = createServer(async ({ url = '' }, response) => {
    const { pathname } = new URL(url, 'http://host');
    if (!pathname.startsWith(at)) {
      strays.push(pathname);
      response.writeHead(404).end();
      return;
    }
    const file = pathname.slice(at.length) || 'index.html';
    try {
      const bytes = await readFile(new URL(file, built));
      response
        .writeHead(200, { 'content-type': types[extname(file)] ?? 'application/octet-stream' })
        .end(bytes);
    } catch {
      response.writeHead(404).end();
    }
  });
  await new Promise<void>((listening) => host.listen(0, '127.0.0.1', listening));
});
afterAll(() => host.close());

inBrowser('a static host', () => {
  test('serves the page from a path of its own, where it drafts, hands over files, and opens without a network', async () => {
    const { page } = await opened({}, 'icon.svg');
    const address = `http://127.0.0.1:${(host.address() as AddressInfo).port}${at}`;
    const faults: string[] = [];
    page.on('pageerror', (error) => faults.push(error.message));
    page.on('requestfailed', (request) => faults.push(request.url()));
    await page.goto(address);
    await invented(page, 'Prompter');
    await view(page, 'Take');
    const { bytes } = await download(page, 'dress-a4.pdf');
    expect(bytes.subarray(0, 5).toString()).toBe('%PDF-');
    expect(faults).toEqual([]);
    expect(strays.filter((path) => path !== '/favicon.ico')).toEqual([]);
    await page.evaluate('navigator.serviceWorker.ready');
    await page.waitForFunction('navigator.serviceWorker.controller !== null');
    host.closeAllConnections();
    host.close();
    await page.goto(address);
    await page.getByText('The dress is drawn, and every check is true.').waitFor();
    await view(page, 'Learn');
    await page.locator('.construction').waitFor();
  }, 120_000);
});

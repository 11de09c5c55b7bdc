import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { SaxesParser } from 'saxes';
import { expect, test } from 'vitest';
import { servePage } from '../../cli/open/page-server.ts';
import { dropFile } from './draft-page.ts';
import { browsed, built, drawn, inBrowser, invented, view, viewTitles } from './opened-page.ts';

/* What somebody may hand her to harm her page: files, links, names. In a real browser, on the page as `npm run build` leaves it. */

const { opened } = browsed();

const body = 'units: cm\nbustGirth: 92\nwaistGirth: 74\nhipGirth: 98\nbackNeckPointToWaist: 41\n';
const files: Readonly<Record<string, string>> = {
  nothing: '',
  'no text at all': '\u0000\u0001\uFFFD'.repeat(1000),
  'laughs on laughs': `a: &a [1,1]\n${'bcdefghij'.replace(/./g, (each, i) => `${each}: &${each} [*${'abcdefghi'[i]},*${'abcdefghi'[i]}]\n`)}`,
  'a prototype': `${body}__proto__: {polluted: 1}\nconstructor: {prototype: {polluted: 1}}\n`,
  'a prototype as JSON': `{"units":"cm","__proto__":{"polluted":1},"bustGirth":{"__proto__":{"polluted":1}}}`,
  'numbers without end': `${body}underBustGirth: 1e999\nscyeDepth: ${'9'.repeat(5000)}\nage: -.inf\n`,
  'lists in lists': `x: ${'['.repeat(50_000)}`,
  'fields without end': `${body}${Array.from({ length: 9000 }, (_, i) => `k${i}: 1\n`).join('')}`,
  'a megabyte': 'x'.repeat(1_000_000),
  'a tag of code': `${body}x: !!js/function "function(){ return 1 }"\n`,
  'a fitting of nonsense': `${body}fitting: [{take in: "<img src=x onerror=alert(1)>", by: 1e9}, 7, null]\n`,
};

/** The page still does what it is there for, and nothing has got into it. */
async function expectSound(page: Page, what: string): Promise<void> {
  expect(await page.evaluate('({}).polluted ?? Object.prototype.polluted ?? null'), what).toBeNull();
  expect(await page.locator('img[src="x"], script:not([src^="page.js"])').count(), what).toBe(0);
}

inBrowser('the page takes no harm', () => {
  test('from files of measurements and charts', async () => {
    const { page, faults } = await opened();
    await invented(page, 'Understudy');
    for (const [name, text] of Object.entries(files)) {
      await dropFile(page, `${name}.yaml`, text);
      // Opened, or refused in words that name it.
      await page.getByRole('alert').filter({ hasText: name }).waitFor();
      await expectSound(page, name);
      await page.getByRole('button', { name: 'Close this note' }).click();
    }
    await view(page, 'Sizes');
    for (const [name, text] of Object.entries(files)) {
      await dropFile(page, `${name}.csv`, text);
      await expect.poll(() => page.locator('main').textContent()).toContain(name);
      await expectSound(page, name);
    }
    await view(page, 'Measure');
    await invented(page, 'Prompter');
    expect(faults).toEqual([]);
  }, 120_000);

  const links: Readonly<Record<string, string>> = {
    'a prototype as a garment': '#choose/__proto__?__proto__=1&constructor=2',
    'a constructor as a garment': '#choose/constructor?toString=1',
    'a prototype as measurements': `#choose/dress?&&${encodeURIComponent('{"__proto__":{"polluted":1},"bustGirth":92}')}`,
    'numbers without end': `#choose/dress?strapWidth=1e999&hemSweep=${'9'.repeat(3000)}&waistEase=NaN`,
    'a megabyte': `#choose/dress?strapWidth=${'a=1&b'.repeat(200_000)}`,
    'measurements without end': `#choose/dress?&&${encodeURIComponent(`{"fitting":${'['.repeat(1000)}`)}`,
    'half a letter': '#choose/%E0%A4%A?strapWidth=%',
    markup: `#choose/${encodeURIComponent('<img src=x onerror=alert(1)>')}?strapWidth=${encodeURIComponent('"><img src=x>')}`,
    'a script': '#javascript:alert(1)',
    'a place elsewhere': '#choose/dress?https://example.test/',
  };
  test('from links', async () => {
    for (const [name, link] of Object.entries(links)) {
      const { page, faults } = await opened({}, link);
      await page.getByRole('heading', { level: 1 }).waitFor();
      await expectSound(page, name);
      // What it asked for may be refused; with all that is kept deleted nothing of it is left.
      await view(page, 'Measure');
      await page.getByRole('button', { name: 'Delete all that is kept' }).click();
      await invented(page, 'Prompter').catch((error: unknown) => {
        throw new Error(`${name}: ${String(error)}`);
      });
      expect([name, ...faults]).toEqual([name]);
      await page.context().close();
    }
  }, 240_000);

  test('from what is called by markup, in any view', async () => {
    const { page, faults } = await opened();
    const name = `"><img src=x onerror=alert(1)><script>alert(2)</script>'&amp;]]><img src=x>`;
    await dropFile(
      page,
      'x.json',
      JSON.stringify({
        units: 'cm',
        bustGirth: 93,
        waistGirth: 74,
        hipGirth: 99,
        backNeckPointToWaist: 40.5,
        name,
      }),
    );
    await drawn(page, 'dress');
    expect(await page.getByLabel('Name or role').inputValue()).toBe(name);
    for (const each of viewTitles.slice(1)) {
      await view(page, each);
      await page.getByRole('heading', { level: 1, name: each }).waitFor();
      await page.waitForTimeout(700);
      await expectSound(page, each);
    }
    // What is taken away is drawn in a browser too: text there as well.
    await page.getByRole('button', { name: 'sheet.svg' }).waitFor();
    const [sheet] = await Promise.all([
      page.waitForEvent('download'),
      page.getByRole('button', { name: 'sheet.svg', exact: true }).click(),
    ]);
    const elements: string[] = [];
    const parser = new SaxesParser();
    parser.on('opentag', ({ name: element }) => elements.push(element));
    parser.on('error', (error) => {
      throw error;
    });
    parser.write(readFileSync(await sheet.path(), 'utf8')).close();
    expect(elements.length).toBeGreaterThan(100);
    expect(elements.filter((each) => /^(img|script|foreignObject)$/.test(each))).toEqual([]);
    expect(sheet.suggestedFilename()).toMatch(/^[\w.-]+$/);
    expect(faults.filter((fault) => !fault.startsWith('[.WebGL'))).toEqual([]);
  }, 120_000);
});

inBrowser('every file that is served', () => {
  test('has the policy, its type, and is no other site’s to read', async () => {
    const { pageFiles } = await import('../../cli/open/page-server.ts');
    const all = await pageFiles(built);
    const served = await servePage(all, 0);
    try {
      expect(all.size).toBeGreaterThan(50);
      for (const path of all.keys()) {
        const answer = await fetch(new URL(path, served.address));
        await answer.arrayBuffer();
        const policy = answer.headers.get('content-security-policy') ?? '';
        expect(policy, path).toMatch(/^default-src 'none'; script-src 'self' ('wasm-unsafe-eval' )?'sha256-/);
        // Only the worker that hangs cloth may compile WebAssembly; nothing may make code from text.
        expect(policy.includes('wasm-unsafe-eval'), path).toBe(path === '/worker.js');
        expect(policy.replace("'wasm-unsafe-eval'", ''), path).not.toContain('unsafe');
        expect(policy, path).toContain("connect-src 'self'");
        expect(policy, path).toContain("frame-ancestors 'none'");
        expect(Object.fromEntries(answer.headers), path).toMatchObject({
          'x-content-type-options': 'nosniff',
          'cross-origin-resource-policy': 'same-origin',
          'cross-origin-opener-policy': 'same-origin',
          'referrer-policy': 'no-referrer',
        });
        expect(answer.headers.get('set-cookie'), path).toBeNull();
        expect(answer.headers.get('access-control-allow-origin'), path).toBeNull();
        expect(answer.headers.get('content-type'), path).toBeTruthy();
      }
    } finally {
      await served.close();
    }
  });
});

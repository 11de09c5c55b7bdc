import { readFileSync } from 'node:fs';
import { readFile } from 'node:fs/promises';
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { type Browser, type BrowserContextOptions, chromium as driven, type Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { filesJoined } from '../../cli/draft-files.ts';
import { pageFiles, type ServedPage, servePage } from '../../cli/page-server.ts';
import { garments } from '../../drafts/index.ts';
import { bodkin } from '../cli/session.ts';
import { temporaryFolder } from '../cli/temporary-folder.ts';
import { chromium } from './chromium.ts';

/* Learning from a draft and changing it, on the page as `npm run build` leaves it, in a real browser. */

const program = chromium();
const axe = readFileSync(new URL('../../node_modules/axe-core/axe.min.js', import.meta.url), 'utf8');
const lady = new URL('../../measurements/leading-lady.yaml', import.meta.url).pathname;
const folder = temporaryFolder();

let served: ServedPage;
let browser: Browser;

beforeAll(async () => {
  if (program === undefined) return;
  served = await servePage(await pageFiles(new URL('../../.dist/page/', import.meta.url)), 0);
  browser = await driven.launch({ executablePath: program, args: ['--no-sandbox'] });
}, 60_000);
afterAll(async () => {
  await browser?.close();
  await served?.close();
});

interface Opened {
  readonly page: Page;
  /** All that went wrong or elsewhere. */
  readonly faults: string[];
}

/** The page with someone measured and a skirt chosen, in a browser of its own. */
async function opened(options: BrowserContextOptions = {}): Promise<Opened> {
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
  await page.goto(served.address);
  await page.getByText('Open a file').click();
  await page.getByRole('button', { name: 'Leading lady' }).click();
  await view(page, 'Choose');
  await page.getByRole('radio', { name: /^Skirt/ }).check();
  await page.getByText('The skirt is drawn, and every check is true.').waitFor();
  return { page, faults };
}

const view = (page: Page, name: string) => page.getByRole('link', { name, exact: true }).click();

/** Goes to the step of this title. */
async function toStep(page: Page, title: string): Promise<void> {
  await page.evaluate(`for (const each of document.querySelectorAll('.contents details')) each.open = true`);
  await page
    .getByRole('navigation', { name: 'Steps' })
    .getByRole('button', { name: title, exact: true })
    .click();
  await page.getByRole('heading', { name: title, exact: true }).waitFor();
}

const number = (page: Page, figure: string) =>
  page.locator('.sentence').getByRole('button', { name: figure, exact: true });

/** What the construction drawing consists of, as path data. */
const lines = (page: Page, kind: string): Promise<string[]> =>
  page.evaluate(
    `[...document.querySelectorAll('.construction .${kind} path:not(.touch)')].map((path) => path.getAttribute('d'))`,
  );

/** Puts other code into the editor. */
async function write(page: Page, text: string): Promise<void> {
  await page.locator('.cm-content').click();
  await page.keyboard.press('Control+A');
  await page.keyboard.press('Delete');
  await page.keyboard.insertText(text);
}

async function openDraft(page: Page, name: string, text: string): Promise<void> {
  const files = page.locator('details.files');
  if ((await files.getAttribute('open')) === null) await files.locator('summary').click();
  await page
    .locator('#draft-file')
    .setInputFiles({ name, mimeType: 'text/plain', buffer: Buffer.from(text) });
  await page.getByText(`${name} came in a file`).waitFor();
}

const drawing = (page: Page) => page.getByRole('region', { name: 'What it draws' });

/** A draft that draws nothing, but says what it found out. */
const telling = (what: string): string => `
const said: string[] = [];
const tries = (name: string, attempt: () => unknown): void => {
  try { attempt(); said.push(name + ' went through'); } catch (error) { said.push(name + ' failed'); }
};
${what}
export default {
  name: 'telling', title: 'Telling', shapedBy: [], choices: [],
  draw: () => ({ ok: false, issues: [{ code: 'own-said', severity: 'error', path: '', message: said.join('; ') }] }),
};
`;

const inBrowser = describe.skipIf(program === undefined);

inBrowser('a teacher', () => {
  test('comes from a rule to a changed draft that is held to everybody, and that the command line takes', async () => {
    const { page, faults } = await opened();
    await view(page, 'Learn');
    await toStep(page, 'Waist of the front half');
    await number(page, '10').click();
    await page.getByRole('heading', { name: 'Rule K8, 10 mm' }).waitFor();
    await page.getByText(/half the front is this much wider than half the back/i).waitFor();
    await page.getByLabel('Turn it').fill('14');
    await page.getByLabel('Turn it').press('Enter');
    await page.getByText(/steps have moved; the lines as they were/).waitFor();
    const [now, before] = [await lines(page, 'lit'), await lines(page, 'under')];
    expect(now.length).toBeGreaterThan(0);
    expect(before.length).toBeGreaterThan(0);
    expect(before.some((line) => now.includes(line))).toBe(false);
    await page.getByRole('button', { name: 'Write it into the code' }).click();
    await page.getByRole('heading', { name: 'Change the code' }).waitFor();
    await expect.poll(() => page.getByLabel('File', { exact: true }).inputValue()).toBe('skirt/rules.ts');
    await page.locator('.cm-deletedChunk', { hasText: '10,' }).waitFor();
    await drawing(page).getByRole('img').waitFor();
    await page.getByRole('button', { name: 'Hold it to everybody' }).click();
    await page.getByText('All 53 drawn, every one true.').waitFor({ timeout: 60_000 });
    await page.locator('details.files summary').click();
    const [download] = await Promise.all([
      page.waitForEvent('download'),
      page.getByRole('button', { name: 'Save as a file' }).click(),
    ]);
    expect(download.suggestedFilename()).toBe('my-skirt.ts');
    const text = await readFile(await download.path(), 'utf8');
    const rules = filesJoined(text, '').find(({ name }) => name === 'skirt/rules.ts')?.text;
    expect(rules).toMatch(/sideBalance: \[\s*14,/);
    // The command line draws what the page does: its own skirt otherwise.
    const file = await folder.file(
      'my-skirt.ts',
      text.replace("name: 'skirt',\n  title", "name: 'my-skirt',\n  title"),
    );
    const steps = async (words: readonly string[]) => {
      const out = folder.at('out');
      const session = { garments: Object.values(garments) };
      const {
        code,
        out: said,
        err,
      } = await bodkin([...words, '--body', lady, '--out', out, '--steps', '--json'], session);
      expect(code, err).toBe(0);
      return JSON.parse(said).steps.map((step: { readonly text: string }) => step.text);
    };
    const [changed, own] = [
      await steps(['--draft', file, 'draft', 'my-skirt']),
      await steps(['draft', 'skirt']),
    ];
    expect(changed).toContain('(half waist 385 + 14) / 2 = 199.5 mm');
    expect(own).toContain('(half waist 385 + 10) / 2 = 197.5 mm');
    // And the page opens it again, but asks first.
    await openDraft(page, 'my-skirt.ts', text);
    expect(await page.getByLabel('File', { exact: true }).locator('option').count()).toBe(
      filesJoined(text, '').length,
    );
    await page.getByText('Nothing of it has been run yet.', { exact: true }).waitFor();
    await page.getByRole('button', { name: 'Run it', exact: true }).click();
    await drawing(page).getByRole('img').waitFor();
    expect(faults).toEqual([]);
  }, 120_000);

  test('sees where a number comes from, and what it measures on the drawing', async () => {
    const { page, faults } = await opened();
    await view(page, 'Learn');
    await toStep(page, 'Waist of the side front gore');
    await page.locator('.sentence button').last().click();
    await page.getByText('On the drawing it is the length that is marked.').waitFor();
    expect(await lines(page, 'measured').catch(() => [])).toBeDefined();
    expect(await page.locator('.construction .measured').count()).toBe(1);
    await page.locator('.sentence button').nth(1).click();
    await page.getByRole('button', { name: /^To step/ }).click();
    await page.getByRole('heading', { name: 'Waist of the front half' }).waitFor();
    // By keys alone: on, back, to the end and to the beginning.
    await page.getByRole('region', { name: /^The step/ }).focus();
    await page.keyboard.press('Home');
    await page.getByText(/step 1 of/).waitFor();
    await page.keyboard.press('ArrowRight');
    await page.getByText(/step 2 of/).waitFor();
    await page.keyboard.press('ArrowLeft');
    await page.getByText(/step 1 of/).waitFor();
    await page.keyboard.press('End');
    await page.getByText(/step (\d+) of \1/).waitFor();
    expect(faults).toEqual([]);
  });

  test('prints the lesson whole', async () => {
    const { page } = await opened();
    await view(page, 'Learn');
    await page.locator('.sentence').waitFor();
    await page.emulateMedia({ media: 'print' });
    await page.evaluate(`dispatchEvent(new Event('beforeprint'))`);
    await page.locator('.printed-step').first().waitFor();
    const steps = await page.getByText(/step 1 of/).textContent();
    expect(await page.locator('.printed-step').count()).toBe(Number(/of (\d+)/.exec(steps ?? '')?.[1]));
    await page.evaluate(`dispatchEvent(new Event('afterprint'))`);
    await page.locator('.printed-step').first().waitFor({ state: 'detached' });
  });

  test('begins a draft of her own from the belt, breaks it, and is told whom it fails and where', async () => {
    const { page, faults } = await opened();
    await view(page, 'Change the code');
    await page.locator('details.files summary').click();
    await page.getByRole('button', { name: 'New draft from the belt of the lesson' }).click();
    await drawing(page)
      .getByRole('img', { name: /^Shaped belt/ })
      .waitFor();
    const belt = await page.evaluate<string>(
      `fetch('drafts.json').then((all) => all.json()).then(({ belt }) => belt)`,
    );
    // A step that the cursor is in is told beside the drawing.
    await page.locator('.cm-content').focus();
    await page.keyboard.press('Control+F');
    await page.keyboard.type('Half belt, top');
    await page.keyboard.press('Enter');
    await page.keyboard.press('Escape');
    await drawing(page)
      .getByText(/^1\. Half belt, top/)
      .waitFor();
    // Too wide for those whose hips are narrow.
    await write(
      page,
      belt.replace(
        "isLong('the top is half the waist', [upper], top.value)",
        "isLong('the top is half the waist', [upper], top.value > 420 ? top.value + 3 : top.value)",
      ),
    );
    await page.getByRole('button', { name: 'Run', exact: true }).click();
    await page.getByRole('button', { name: 'Hold it to everybody' }).click();
    await page.getByText(/^All 53 drawn; \d+ of them fail\.$/).waitFor({ timeout: 60_000 });
    await page.getByRole('heading', { name: 'Whom it fails' }).waitFor();
    expect(await page.locator('.everybody .ill').count()).toBeGreaterThan(5);
    expect(await page.locator('.everybody .well').count()).toBeGreaterThan(5);
    // And all is there tomorrow.
    await page.reload();
    await drawing(page)
      .getByRole('img', { name: /^Shaped belt/ })
      .waitFor();
    expect(await page.evaluate(`localStorage.getItem('bodkin')`)).toContain('top.value > 420');
    expect(faults).toEqual([]);
  }, 120_000);
});

inBrowser('edited code', () => {
  test('that cannot be read says so on its line, and the last drawing stays', async () => {
    const { page, faults } = await opened();
    await view(page, 'Change the code');
    await drawing(page).getByRole('img').waitFor();
    await write(page, 'export default {\n  name: \n};;; const const\n');
    await drawing(page).getByText('What is drawn below is the last that could be.').waitFor();
    await drawing(page)
      .getByRole('button', { name: /, line \d$/ })
      .waitFor();
    await page.locator('.cm-lint-marker-error').first().waitFor();
    await drawing(page).getByRole('img').waitFor();
    await page.getByRole('button', { name: 'All as it was' }).click();
    await drawing(page)
      .getByText('What is drawn below is the last that could be.')
      .waitFor({ state: 'detached' });
    expect(faults).toEqual([]);
  });

  test('that never ends is ended, and the page goes on', async () => {
    const { page, faults } = await opened();
    await view(page, 'Change the code');
    await drawing(page).getByRole('img').waitFor();
    await openDraft(page, 'loop.ts', telling('for (;;);'));
    await page.getByRole('button', { name: 'Run it', exact: true }).click();
    // The page itself is not held up meanwhile.
    await page.waitForTimeout(1500);
    const began = Date.now();
    await page.evaluate('1 + 1');
    expect(Date.now() - began).toBeLessThan(1000);
    await drawing(page)
      .getByText(/it ran longer than \d seconds/)
      .waitFor({ timeout: 15_000 });
    expect(await page.locator('iframe').count()).toBe(0);
    await write(page, telling(''));
    await drawing(page)
      .getByText(/it ran longer than/)
      .waitFor({ state: 'detached' });
    expect(faults).toEqual([]);
  }, 60_000);

  test('reaches no network, nothing that is kept, and makes no code from text', async () => {
    const { page } = await opened();
    // What comes to this server has got out; it lets everybody in.
    const asked: string[] = [];
    const elsewhere = createServer(({ url = '' }, response) => {
      asked.push(url);
      response.writeHead(200, { 'access-control-allow-origin': '*', 'content-type': 'text/javascript' });
      response.end('');
    });
    await new Promise<void>((done) => elsewhere.listen(0, '127.0.0.1', done));
    await view(page, 'Change the code');
    await drawing(page).getByRole('img').waitFor();
    const address = `http://localhost:${(elsewhere.address() as AddressInfo).port}/`;
    await openDraft(
      page,
      'spy.ts',
      telling(`
        const all = globalThis as any;
        tries('importScripts', () => all.importScripts('${address}page.js'));
        tries('synchronous request', () => { const r = new all.XMLHttpRequest(); r.open('GET', '${address}page.js', false); r.send(); });
        tries('eval', () => all.eval('1 + 1'));
        tries('Function', () => new all.Function('return 1')());
        tries('localStorage', () => all.localStorage.length);
        tries('the page', () => all.parent.document);
        tries('document', () => all.document.body);
        const later = (name: string, attempt: () => Promise<unknown>) => {
          try { attempt().then(() => said.push(name + ' went through'), () => said.push(name + ' failed')); } catch { said.push(name + ' failed'); }
        };
        later('fetch', () => all.fetch('${address}page.js'));
        later('fetch elsewhere', () => all.fetch('http://127.0.0.1:9/', { mode: 'no-cors' }));
        later('import', () => import('${address}page.js' as string));
        later('indexedDB', () => new Promise((done, fail) => { const r = all.indexedDB.open('x'); r.onsuccess = done; r.onerror = fail; }));
        later('caches', () => all.caches.open('x'));
        later('storage', () => all.navigator.storage.getDirectory());
        later('socket', () => new Promise((done, fail) => { const s = new all.WebSocket('${address.replace('http', 'ws')}'); s.onopen = done; s.onerror = fail; }));
        later('nested worker', () => new Promise((done, fail) => {
          const inner = new all.Worker(all.URL.createObjectURL(new all.Blob(["fetch('${address}page.js').then(() => postMessage(1), () => postMessage(0))"])));
          inner.onmessage = ({ data }: any) => data ? done(1) : fail();
          inner.onerror = fail;
        }));
      `),
    );
    await page.getByRole('button', { name: 'Run it', exact: true }).click();
    await drawing(page)
      .getByText(/importScripts/)
      .waitFor();
    await page.waitForTimeout(1500);
    // Asked for another drawing, it tells what came meanwhile.
    await page.getByRole('button', { name: 'Undo' }).click();
    await drawing(page)
      .getByText(/nested worker/)
      .waitFor();
    const said =
      (await drawing(page)
        .getByText(/importScripts/)
        .textContent()) ?? '';
    for (const name of [
      'importScripts',
      'synchronous request',
      'eval',
      'Function',
      'localStorage',
      'the page',
      'document',
      'fetch',
      'fetch elsewhere',
      'import',
      'indexedDB',
      'caches',
      'storage',
      'socket',
      'nested worker',
    ])
      expect(said).toContain(`${name} failed`);
    expect(said).not.toContain('went through');
    expect(asked).toEqual([]);
    elsewhere.close();
  }, 60_000);

  test('that answers what is no answer is ended, and what it says is text, never markup', async () => {
    const { page } = await opened();
    await view(page, 'Change the code');
    await drawing(page).getByRole('img').waitFor();
    await openDraft(
      page,
      'liar.ts',
      telling(
        `const post = MessagePort.prototype.postMessage;
        MessagePort.prototype.postMessage = function () { post.call(this, { kind: 'drafted', lesson: 7 }); };`,
      ),
    );
    await page.getByRole('button', { name: 'Run it', exact: true }).click();
    await drawing(page).getByText('The code answered what is no answer, and was ended.').waitFor();
    await openDraft(page, 'markup.ts', telling(`said.push('<img src=x onerror=alert(1)>');`));
    await page.getByRole('button', { name: 'Run it', exact: true }).click();
    await drawing(page).getByText('<img src=x onerror=alert(1)>').waitFor();
    expect(await page.locator('img[src="x"]').count()).toBe(0);
  }, 60_000);

  test('is left with Tab, and run with a key', async () => {
    const { page, faults } = await opened();
    await view(page, 'Change the code');
    await drawing(page).getByRole('img').waitFor();
    await page.locator('.cm-content').focus();
    await page.keyboard.press('Tab');
    expect(await page.evaluate(`document.activeElement?.closest('.editor') ?? null`)).toBeNull();
    await page.keyboard.press('Shift+Tab');
    await page.keyboard.press('Control+Home');
    await page.keyboard.type('nonsense ');
    await page.keyboard.press('Control+Enter');
    await drawing(page).getByText('Not so:').first().waitFor();
    await page.keyboard.press('Control+z');
    await page.keyboard.press('Control+Enter');
    await drawing(page).getByText('Not so:').first().waitFor({ state: 'detached' });
    expect(faults).toEqual([]);
  });
});

inBrowser.each([
  [360, 'light'],
  [1600, 'dark'],
] as const)('Learn and Change the code, %i pixels wide and %s', (width, colorScheme) => {
  test('have nothing that axe-core finds, and nothing beside the screen', async () => {
    const { page, faults } = await opened({ viewport: { width, height: 800 }, colorScheme });
    const look = async (name: string): Promise<void> => {
      await page.evaluate(axe);
      const found = await page.evaluate<string[]>(
        'axe.run().then(({ violations }) => violations.flatMap(({ id, nodes }) => nodes.map(({ html, any }) => id + html + any.map(({ message }) => message))))',
      );
      expect([name, ...found]).toEqual([name]);
      expect(await page.evaluate('document.documentElement.scrollWidth - innerWidth')).toBeLessThanOrEqual(0);
    };
    await view(page, 'Learn');
    await page.locator('.sentence').waitFor();
    await look('Learn');
    await toStep(page, 'Waist of the front half');
    await number(page, '10').click();
    await page.getByLabel('Turn it').fill('14');
    await page.getByLabel('Turn it').press('Enter');
    await page.getByText(/steps have moved/).waitFor();
    await look('Learn, a rule turned');
    await page.getByRole('button', { name: 'Write it into the code' }).click();
    await drawing(page).getByRole('img').waitFor();
    await look('Change the code, the difference');
    await page.getByRole('button', { name: 'Difference' }).click();
    await page.getByRole('button', { name: 'Hold it to everybody' }).click();
    await page.getByText(/^All 53/).waitFor({ timeout: 60_000 });
    await look('Change the code, held');
    await page.locator('details.files summary').click();
    await write(page, 'nonsense nonsense');
    await drawing(page).getByText('Not so:').first().waitFor();
    await look('Change the code, broken');
    await openDraft(page, 'strange.ts', telling(''));
    await look('Change the code, a stranger’s');
    expect(faults).toEqual([]);
  }, 120_000);
});

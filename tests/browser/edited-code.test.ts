import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { expect, test } from 'vitest';
import { drawing, dropFile, openDraft, telling, withSkirt, write } from './draft-page.ts';
import { longest, tasksDuring } from './main-thread.ts';
import { browsed, inBrowser, view } from './opened-page.ts';

/* What a draft does that somebody has edited, and what it is kept from. */

const browser = browsed();

const someone = 'units: cm\nbustGirth: 93\nwaistGirth: 74\nhipGirth: 99\nbackNeckPointToWaist: 40.5\n';

inBrowser('edited code', () => {
  test('that cannot be read says so on its line, and the last drawing stays', async () => {
    const { page, faults } = await withSkirt(browser);
    await view(page, 'Change the code');
    await drawing(page).getByRole('img').waitFor();
    const broken = 'export default {\n  name: \n};;; const const\n';
    await write(page, broken);
    await drawing(page).getByText('What is drawn below is the last that could be.').waitFor();
    const place = drawing(page).getByRole('button', { name: /, line \d$/ });
    const line = Number((await place.textContent())?.split(' ').at(-1));
    await page.keyboard.press('Control+Home');
    // Twice: whoever went elsewhere meanwhile is led back.
    for (let i = 0; i < 2; i++) {
      await place.click();
      await page.locator('.cm-content:focus').waitFor();
      expect(await page.locator('.cm-activeLine').textContent()).toBe(broken.split('\n')[line - 1]);
      await page.keyboard.press('Control+End');
    }
    await page.locator('.cm-lint-marker-error').first().waitFor();
    await drawing(page).getByRole('img').waitFor();
    await page.getByRole('button', { name: 'All as it was' }).click();
    await drawing(page)
      .getByText('What is drawn below is the last that could be.')
      .waitFor({ state: 'detached' });
    expect(faults).toEqual([]);
  });

  test('that never ends is ended, and the page goes on', async () => {
    const { page, faults } = await withSkirt(browser);
    await view(page, 'Change the code');
    await drawing(page).getByRole('img').waitFor();
    await openDraft(page, 'loop.ts', telling('for (;;);'));
    await page.getByRole('button', { name: 'Run it', exact: true }).click();
    // The page itself is not held up meanwhile.
    expect(longest(await tasksDuring(page, () => page.waitForTimeout(1500)))).toBeLessThan(50);
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
    const { page } = await withSkirt(browser);
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
        const all = globalThis;
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
          inner.onmessage = ({ data }) => data ? done(1) : fail();
          inner.onerror = fail;
        }));
        later('request', () => new Promise((done, fail) => { const r = new all.XMLHttpRequest(); r.onload = done; r.onerror = fail; r.open('GET', '${address}page.js'); r.send(); }));
        later('fetch of data', () => all.fetch('data:text/plain,x'));
        later('event source', () => new Promise((done, fail) => { const s = new all.EventSource('${address}events'); s.onopen = done; s.onerror = fail; }));
        later('transport', () => new all.WebTransport('${address.replace('http:', 'https:')}').ready);
        later('font', () => new all.FontFace('x', 'url(${address}font.woff2)').load());
        later('locks', () => all.navigator.locks.request('x', () => 1));
        later('databases', () => all.indexedDB.databases());
        later('estimate', () => all.navigator.storage.persisted());
        later('import of data', () => import('data:text/javascript,export default 1' as string));
        later('import of a blob', () => import(all.URL.createObjectURL(new all.Blob(['export default 1'], { type: 'text/javascript' }))));
        later('worker of data', () => new Promise((done, fail) => {
          const inner = new all.Worker('data:text/javascript,postMessage(1)');
          inner.onmessage = done;
          inner.onerror = fail;
        }));
        later('worker of a file', () => new Promise((done, fail) => {
          const inner = new all.Worker('${address}worker.js');
          inner.onmessage = done;
          inner.onerror = fail;
        }));
        tries('script of a blob', () => all.importScripts(all.URL.createObjectURL(new all.Blob(['1'], { type: 'text/javascript' }))));
        tries('script of data', () => all.importScripts('data:text/javascript,1'));
        later('text of a timer', () => new Promise((done, fail) => {
          all.setTimeout('self.ran = 1', 0);
          all.setTimeout(() => (all.ran ? done(1) : fail()), 200);
        }));
        tries('assembly', () => new all.WebAssembly.Module(new Uint8Array([0, 97, 115, 109, 1, 0, 0, 0])));
        tries('async function', () => Object.getPrototypeOf(async () => {}).constructor('return 1')());
        tries('generator', () => Object.getPrototypeOf(function* () {}).constructor('yield 1')());
        tries('session', () => all.sessionStorage.length);
        tries('window', () => all.window.open('${address}'));
        tries('the frame above', () => all.top.location);
        tries('cookies', () => { if (all.cookieStore === undefined) throw 0; });
        tries('service worker', () => all.navigator.serviceWorker.register('x.js'));
        tries('shared worker', () => new all.SharedWorker('x.js'));
        tries('beacon', () => all.navigator.sendBeacon('${address}'));
        // A channel of that name is another where the origin is another: the page listens, and hears nothing.
        new all.BroadcastChannel('bodkin').postMessage('here I am');
        // Nobody listens there.
        all.postMessage({ kind: 'written', file: { name: 'x', text: 'x' } });
      `),
    );
    await page.evaluate(`(() => {
      window.overheard = [];
      new BroadcastChannel('bodkin').onmessage = ({ data }) => overheard.push(data);
      addEventListener('message', ({ data }) => overheard.push(data));
    })()`);
    await page.getByRole('button', { name: 'Run it', exact: true }).click();
    await drawing(page)
      .getByText(/importScripts/)
      .waitFor();
    await page.waitForTimeout(1500);
    // Asked for another drawing, because other measurements are dropped on the page, it tells what came meanwhile.
    await dropFile(page, 'somebody.yaml', someone);
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
      ...[
        'request',
        'fetch of data',
        'event source',
        'transport',
        'font',
        'locks',
        'databases',
        'estimate',
        'text of a timer',
      ],
      ...[
        'import of data',
        'import of a blob',
        'worker of data',
        'worker of a file',
        'script of a blob',
        'script of data',
      ],
      ...['assembly', 'async function', 'generator', 'session', 'window', 'the frame above', 'cookies'],
      ...['service worker', 'shared worker', 'beacon'],
    ])
      expect.soft(said).toContain(`${name} failed`);
    expect(said).not.toContain('went through');
    expect(await page.evaluate('window.overheard')).toEqual([]);
    expect(asked).toEqual([]);
    elsewhere.close();
  }, 60_000);

  test('that answers what is no answer is ended, and what it says is text, never markup', async () => {
    const { page } = await withSkirt(browser);
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

  test('that answers without end, or endlessly much, keeps the page from nothing', async () => {
    const { page } = await withSkirt(browser);
    await view(page, 'Change the code');
    await drawing(page).getByRole('img').waitFor();
    for (const flood of [
      'for (let i = 0; i < 200_000; i++) post.call(this, { kind: "cases", cases: [] });',
      'post.call(this, { kind: "drafted", name: "x".repeat(100_000_000) });',
      'const deep: unknown[] = []; let at = deep; for (let i = 0; i < 5000; i++) { const next: unknown[] = []; at.push(next); at = next; } post.call(this, deep);',
    ]) {
      await openDraft(
        page,
        'flood.ts',
        telling(
          `const post = MessagePort.prototype.postMessage;
          MessagePort.prototype.postMessage = function () { ${flood} };`,
        ),
      );
      await page.getByRole('button', { name: 'Run it', exact: true }).click();
      await drawing(page)
        .getByText(/and was ended|The code was ended/)
        .waitFor();
      expect(await page.locator('iframe').count()).toBe(0);
      const left = await tasksDuring(page, () => page.evaluate('1 + 1'));
      expect(left.reduce((sum, { took }) => sum + took, 0)).toBeLessThan(2000);
    }
  }, 60_000);

  test('is told what could be written, what a name means, and which name there is not', async () => {
    const { page, faults } = await withSkirt(browser);
    await view(page, 'Change the code');
    await drawing(page).getByRole('img').waitFor();
    await page.getByLabel('File', { exact: true }).selectOption('skirt/gore-sizes.ts');
    const code = page.locator('.cm-content');
    await code.click();
    await page.keyboard.press('Control+End');
    // A measurement, chosen from those that there are.
    await page.keyboard.type('\nconst hip = (table: SkirtTable) => table.size.hipG');
    await page.getByRole('option', { name: /^hipGirth/ }).waitFor();
    // What is pressed as the list appears is not yet meant for it.
    await page.waitForTimeout(200);
    await page.keyboard.press('Enter');
    await expect.poll(() => code.textContent()).toContain('table.size.hipGirth');
    await page.locator('.meaning', { hasText: 'hip girth, mm' }).waitFor();
    // One that there is not is marked, and mended by keys alone; nothing was run for it.
    await page.keyboard.type(';\nconst waist = (table: SkirtTable) => table.size.waistGirt;\n');
    await page.locator('.cm-lintRange-warning', { hasText: 'waistGirt' }).waitFor();
    await page.keyboard.press('Control+Shift+M');
    await page.getByText('There is no measurement “waistGirt”').waitFor();
    await page.getByRole('button', { name: 'Write “waistGirth”' }).click();
    await expect.poll(() => code.textContent()).toContain('table.size.waistGirth;');
    await page.locator('.cm-lintRange-warning').waitFor({ state: 'detached' });
    await page.keyboard.press('Escape');
    // A name of the program brings its import along.
    await code.click();
    await page.keyboard.press('Control+End');
    await page.keyboard.type('const long = isLon');
    await page.getByRole('option', { name: /^isLong/ }).waitFor();
    await page.waitForTimeout(200);
    await page.keyboard.press('Enter');
    await expect.poll(() => code.textContent()).toContain('const long = isLong');
    await page.keyboard.press('Control+Home');
    await expect.poll(() => code.textContent()).toMatch(/^import \{ isLong \} from 'bodkin';/);
    expect(faults).toEqual([]);
  });

  test('is left with Tab, and run with a key', async () => {
    const { page, faults } = await withSkirt(browser);
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

import { readFileSync } from 'node:fs';
import { readFile } from 'node:fs/promises';
import { pathToFileURL } from 'node:url';
import { type Browser, type BrowserContextOptions, chromium as driven, type Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { stringify } from 'yaml';
import { garments } from '../../drafts/index.ts';
import { cannotKnow } from '../../engine/wear/cannot-know.ts';
import { bodkin } from '../cli/session.ts';
import { temporaryFolder } from '../cli/temporary-folder.ts';
import { chromium } from './chromium.ts';

/* The page that `bodkin wear` writes, with the script that `npm run build` makes, in a real browser that draws by software. */

const program = chromium();
const axe = readFileSync(new URL('../../node_modules/axe-core/axe.min.js', import.meta.url), 'utf8');
const folder = temporaryFolder();

/** A name that would run, were it ever taken for markup. */
const name = '</script><script>document.title=1</script><img src=x onerror=document.title=1>';

let browser: Browser;
let address = '';

beforeAll(async () => {
  if (program === undefined) return;
  const lady = { units: 'cm', bustGirth: 92, underBustGirth: 75, waistGirth: 74, hipGirth: 99 };
  const body = await folder.file('lead.yaml', stringify({ name, ...lady, backNeckPointToWaist: 40.5 }));
  const out = folder.at('worn');
  const ran = await bodkin(['wear', 'bodice', '--body', body, '--out', out, '--quick'], {
    garments: Object.values(garments),
  });
  expect(ran.err).toContain('worn.html');
  address = pathToFileURL(`${out}/worn.html`).href;
  browser = await driven.launch({
    executablePath: program,
    args: ['--no-sandbox', '--use-angle=swiftshader', '--enable-unsafe-swiftshader'],
  });
}, 120_000);
afterAll(() => browser?.close());

async function opened(options: BrowserContextOptions = {}): Promise<{ page: Page; faults: string[] }> {
  const context = await browser.newContext({ viewport: { width: 1100, height: 900 }, ...options });
  const page = await context.newPage();
  const faults: string[] = [];
  context.on('request', (request) => {
    if (request.url() !== address) faults.push(`asked elsewhere: ${request.url()}`);
  });
  page.on('pageerror', (error) => faults.push(error.message));
  page.on('console', (message) => {
    // A driver that draws by software says how slow it is.
    if (message.type() === 'error') faults.push(message.text());
  });
  await page.goto(address);
  return { page, faults };
}

const pane = (page: Page) => page.getByRole('application');

/** Run in a browser: how many pixels of a picture have which colour, its border left out. */
const counts = `async (url) => {
  const image = await createImageBitmap(await (await fetch(url)).blob());
  const context = new OffscreenCanvas(image.width, image.height).getContext('2d');
  context.drawImage(image, 0, 0);
  const { data } = context.getImageData(8, 8, image.width - 16, image.height - 16);
  const found = new Map();
  for (let i = 0; i < data.length; i += 4) {
    const colour = [data[i], data[i + 1], data[i + 2]].join();
    found.set(colour, (found.get(colour) ?? 0) + 1);
  }
  return [...found];
}`;

/** The colours in the pane and how many pixels have each, those of the page behind left out. */
async function colours(page: Page): Promise<ReadonlyMap<string, number>> {
  await page.evaluate('new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done)))');
  const picture = await pane(page).screenshot();
  const reader = await page.context().newPage();
  const found = await reader.evaluate<readonly (readonly [string, number])[]>(
    `(${counts})("data:image/png;base64,${picture.toString('base64')}")`,
  );
  await reader.close();
  return new Map(found.filter(([colour]) => !['251,250,246', '25,25,24'].includes(colour)));
}

const covered = (found: ReadonlyMap<string, number>): number =>
  [...found.values()].reduce((a, b) => a + b, 0);

if (program === undefined)
  process.stderr.write(
    'No Chromium here, and none can be installed: the page of a worn garment is not opened.\n',
  );

const inBrowser = describe.skipIf(program === undefined);

inBrowser('the page of a worn garment', () => {
  test('shows it, and shows it otherwise from elsewhere', async () => {
    const { page, faults } = await opened();
    await page.locator('canvas').waitFor();
    const first = await colours(page);
    expect(covered(first)).toBeGreaterThan(50_000);
    expect(first.size).toBeGreaterThan(100);
    await page.getByRole('button', { name: 'Back', exact: true }).click();
    expect([...(await colours(page))]).not.toEqual([...first]);
    await page.getByRole('button', { name: 'Three-quarter', exact: true }).click();
    expect([...(await colours(page))]).toEqual([...first]);
    expect(faults).toEqual([]);
  });

  test('is coloured by a map in the colours of its legend, and puts away what is not wanted', async () => {
    const { page } = await opened();
    await page.getByLabel('Cloth off the body').check();
    const legend = page.getByRole('list', { name: 'Cloth off the body' }).locator('li');
    expect(await legend.count()).toBe(6);
    const mapped = await colours(page);
    // The ends of the scale, as they stand in engine/wear/shown/maps.ts.
    for (const colour of ['0,34,78', '200,184,102']) expect(mapped.get(colour) ?? 0).toBeGreaterThan(500);
    await page.getByLabel('body', { exact: true }).uncheck();
    for (const piece of await page.getByRole('group', { name: 'Pieces' }).getByRole('checkbox').all())
      await piece.uncheck();
    await page.getByLabel('seams', { exact: true }).uncheck();
    expect(covered(await colours(page))).toBeLessThan(2_000);
  });

  test('is turned, moved and enlarged by keys, and a place is read by them', async () => {
    const { page } = await opened();
    await page.locator('canvas').waitFor();
    const before = await colours(page);
    for (const key of ['ArrowRight', 'Shift+ArrowUp', '+']) {
      const was = await colours(page);
      await pane(page).press(key);
      expect([...(await colours(page))], key).not.toEqual([...was]);
    }
    await pane(page).press('2');
    expect([...(await colours(page))]).toEqual([...before]);
    await pane(page).press('1');
    await pane(page).press('Enter');
    const reading = page.locator('.worn-reading');
    await reading
      .getByText(/^insert, \d+ mm above the waist, \d mm to the (left|right) of her middle$/)
      .waitFor();
    for (const figure of ['Cloth off the body', 'Threads stretched', 'Pressure'])
      expect(await reading.textContent()).toContain(figure);
  });

  test('is turned by the mouse, and read where it is clicked', async () => {
    const { page } = await opened();
    await page.locator('canvas').waitFor();
    const box = await pane(page).boundingBox();
    if (!box) throw new Error('no pane');
    const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
    await page.getByRole('button', { name: 'Front', exact: true }).click();
    const front = await colours(page);
    await page.mouse.move(x, y);
    await page.mouse.down();
    await page.mouse.move(x + 120, y, { steps: 4 });
    await page.mouse.up();
    expect([...(await colours(page))]).not.toEqual([...front]);
    expect(await page.locator('.worn-reading').textContent()).toContain('No place is read yet');
    await page.mouse.click(box.x + 20, box.y + 20);
    await page.getByText('There is no cloth there.').waitFor();
  });

  test('is enlarged by two fingers, and read by a tap', async () => {
    const { page } = await opened({ hasTouch: true, viewport: { width: 400, height: 900 } });
    await page.locator('canvas').waitFor();
    await pane(page).scrollIntoViewIfNeeded();
    const box = await pane(page).boundingBox();
    if (!box) throw new Error('no pane');
    const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
    const before = covered(await colours(page));
    const fingers = await page.context().newCDPSession(page);
    const touch = (type: 'touchStart' | 'touchMove' | 'touchEnd', apart: number) =>
      fingers.send('Input.dispatchTouchEvent', {
        type,
        touchPoints: type === 'touchEnd' ? [] : [-1, 1].map((side, id) => ({ x: x + side * apart, y, id })),
      });
    await touch('touchStart', 40);
    for (const apart of [50, 65, 80]) await touch('touchMove', apart);
    await touch('touchEnd', 0);
    expect(covered(await colours(page))).toBeGreaterThan(1.3 * before);
    await page.touchscreen.tap(x, y);
    await page
      .locator('.worn-reading')
      .getByText(/above the waist/)
      .waitFor();
  });

  test('runs nothing that stands in a file, and says what it cannot know', async () => {
    const { page, faults } = await opened();
    await page.locator('canvas').waitFor();
    expect(await page.title()).toContain('</script><script>');
    expect(await page.locator('img').count()).toBe(0);
    for (const sentence of cannotKnow) await page.getByText(sentence).first().waitFor();
    const refused = await page.evaluate(
      "new Promise((done) => { document.addEventListener('securitypolicyviolation', () => done(true)); const run = document.createElement('script'); run.textContent = 'document.title = 1'; document.body.append(run); setTimeout(() => done(false), 500); })",
    );
    expect(refused).toBe(true);
    expect(await page.title()).toContain('</script><script>');
    expect(faults.filter((fault) => !fault.includes('Content Security Policy'))).toEqual([]);
  });

  test('has every figure in tables, for whoever sees no picture or runs no script', async () => {
    const { page } = await opened({ javaScriptEnabled: false });
    const text = await page.locator('main').textContent();
    for (const word of ['ease at the bust', 'stretched along the warp', 'pressure'])
      expect(text).toContain(word);
    expect(text).toContain('needs JavaScript');
    const html = await readFile(new URL(address), 'utf8');
    expect(html).not.toMatch(/https?:\/\/(?!www\.w3\.org)[^\s"]*\.(js|css|woff2?|png)/);
  });

  test.each(['light', 'dark'] as const)('has nothing that axe-core finds, %s', async (colorScheme) => {
    for (const width of [400, 1100]) {
      const { page } = await opened({ colorScheme, viewport: { width, height: 900 }, bypassCSP: true });
      await page.locator('canvas').waitFor();
      await page.getByLabel('Pressure of the cloth').check();
      await page.evaluate(axe);
      const found = await page.evaluate(
        'axe.run().then(({ violations }) => violations.flatMap(({ id, nodes }) => nodes.map(({ html }) => id + html)))',
      );
      expect(found).toEqual([]);
      expect(await page.evaluate('document.documentElement.scrollWidth <= innerWidth')).toBe(true);
      // The picture has words, and on paper the page is black on white.
      const words = await page.locator('.worn-host canvas[role="img"]').getAttribute('aria-label');
      expect(words).toMatch(/ worn by .*(?:Off|Perhaps|Nothing is outside its band)/);
      await page.emulateMedia({ media: 'print' });
      expect(await page.evaluate('getComputedStyle(document.body).backgroundColor')).toBe(
        'rgb(255, 255, 255)',
      );
      expect(await page.evaluate('getComputedStyle(document.body).color')).toBe('rgb(0, 0, 0)');
      expect(await page.locator('.worn-choices').isVisible()).toBe(false);
    }
  });
});

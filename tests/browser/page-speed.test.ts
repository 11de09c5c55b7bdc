import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { longest, tasksDuring } from './main-thread.ts';
import { browsed, inBrowser, invented, view } from './opened-page.ts';

const { opened } = browsed();

/* What a slider does is timed against the engine alone, in the same run: on a shared machine only ratios mean something. */

/** Asks for what the page does by itself in the page. */
const tools = `(() => {
  const slider = [...document.querySelectorAll('input[type=range]')].find((each) =>
    each.getAttribute('aria-label').startsWith('Strap width'));
  const pane = document.querySelector('.pane svg');
  const redrawn = () => new Promise((resolve) => {
    const watch = new MutationObserver((changes) => {
      if (!changes.some(({ attributeName }) => attributeName === 'd')) return;
      watch.disconnect();
      resolve();
    });
    watch.observe(pane, { subtree: true, attributes: true, attributeFilter: ['d'] });
  });
  const painted = () => new Promise((resolve) => requestAnimationFrame(() => {
    const { port1, port2 } = new MessageChannel();
    port1.onmessage = resolve;
    port2.postMessage(0);
  }));
  const slide = (value) => {
    slider.value = String(value);
    slider.dispatchEvent(new Event('input', { bubbles: true }));
  };
  const moved = async (value) => {
    const begun = performance.now();
    const done = redrawn();
    slide(value);
    await done;
    await painted();
    return performance.now() - begun;
  };
  const worker = new Worker('worker.js', { type: 'module' });
  const ready = new Promise((resolve) => { worker.onmessage = resolve; });
  const body = JSON.parse(localStorage.getItem('bodkin')).body;
  const alone = async (value) => {
    await ready;
    const begun = performance.now();
    await new Promise((resolve) => {
      worker.onmessage = resolve;
      const choices = { strapWidth: String(value) };
      worker.postMessage({ kind: 'draft', number: 1, body, garment: 'dress', choices, parts: [] });
    });
    return performance.now() - begun;
  };
  return { slide, moved, alone, end: () => worker.terminate() };
})()`;

async function slidingPage(): Promise<Page> {
  const { page } = await opened({ viewport: { width: 1400, height: 900 } });
  await invented(page, 'Leading lady');
  await view(page, 'Choose');
  await page.getByLabel('Strap width', { exact: true }).waitFor();
  // Until pictures are drawn and all is kept: what is timed is a slider, not what goes on beside it.
  await page.locator('.choice-picture').first().waitFor();
  await page.waitForTimeout(4000);
  return page;
}

const quantile = (values: readonly number[], share: number): number =>
  values.toSorted((a, b) => a - b)[Math.floor(values.length * share)] ?? Number.NaN;

inBrowser('a slider', () => {
  test('is followed by the redrawn and checked dress within two frames, most often', async () => {
    const page = await slidingPage();
    const timed = `(async () => {
      const { moved, alone, end } = ${tools};
      for (let i = 0; i < 40; i++) { await moved(25 + (i % 30)); await alone(25 + (i % 30)); }
      const moves = [], engine = [];
      for (let i = 0; i < 60; i++) {
        engine.push(await alone(25.5 + ((i * 7) % 30)));
        moves.push(await moved(25 + ((i * 7) % 30)));
      }
      end();
      return { moves, engine };
    })()`;
    type Times = Readonly<Record<'moves' | 'engine', readonly number[]>>;
    // 33 ms at the median and 60 in nineteen of twenty, on this machine at rest, where drafting and checking alone take
    // 8 and 11. The best of three runs: others work on it too.
    const slower = ({ moves, engine }: Times): readonly number[] => [
      quantile(moves, 0.5) / quantile(engine, 0.5) / (33 / 8),
      quantile(moves, 0.95) / quantile(engine, 0.95) / (60 / 11),
    ];
    const runs: (readonly number[])[] = [];
    while (runs.length < 3 && !runs.some((run) => run.every((share) => share <= 1)))
      runs.push(slower(await page.evaluate<Times>(timed)));
    expect(Math.min(...runs.map((run) => Math.max(...run))), JSON.stringify(runs)).toBeLessThanOrEqual(1);
  }, 240_000);

  test('never keeps the main thread from anything for 50 ms', async () => {
    const page = await slidingPage();
    const tasks = await tasksDuring(page, () =>
      page.evaluate(`(async () => {
        const { moved, end } = ${tools};
        for (let i = 0; i < 300; i++) await moved(25 + (i % 30));
        end();
      })()`),
    );
    expect(tasks.length).toBeGreaterThan(300);
    expect(longest(tasks)).toBeLessThan(50);
  }, 240_000);

  test('that moves faster than can be drafted drops what is stale, and ends at what was said last', async () => {
    const page = await slidingPage();
    const drafts = await page.evaluate<number>(`(async () => {
      const { slide } = ${tools};
      let drafts = 0;
      const pane = document.querySelector('.pane svg');
      new MutationObserver(() => { drafts += 1; }).observe(pane, { subtree: true, attributes: true, attributeFilter: ['d'] });
      for (let i = 0; i < 200; i++) slide(25 + (i % 30));
      slide(31);
      await new Promise((resolve) => setTimeout(resolve, 3000));
      return drafts;
    })()`);
    expect(drafts).toBeLessThanOrEqual(3);
    expect(await page.getByLabel('Strap width', { exact: true }).inputValue()).toBe('31');
    await view(page, 'Checks');
    const row = page.getByRole('row', { name: /^strap, shoulder/ });
    expect(await row.textContent()).toContain('31.0');
  }, 120_000);
});

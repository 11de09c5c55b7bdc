import type { CDPSession } from 'playwright-core';
import { expect, test } from 'vitest';
import { browsed, drawn, inBrowser, invented, view } from './opened-page.ts';

const { opened } = browsed();

/** Moves three sliders in turn, each move to a place where it has not been with the others where they are, and waits for each drawing. */
const moving = `(from, to) => (async () => {
  const sliders = ['Bust ease', 'Neckline depth', 'Strap width'].map((name) =>
    [...document.querySelectorAll('input[type=range]')].find((each) => each.getAttribute('aria-label').startsWith(name)));
  const pane = document.querySelector('.pane svg');
  for (let i = from; i < to; i++) {
    const slider = sliders[Math.floor(i / 5) % 3];
    const [low, high] = [Number(slider.min), Number(slider.max)];
    // By the golden section no place comes again soon.
    const place = low + (high - low) * (0.3 + 0.4 * ((i * 0.618034) % 1));
    await new Promise((resolve) => {
      const watch = new MutationObserver((changes) => {
        if (!changes.some(({ attributeName }) => attributeName === 'd')) return;
        watch.disconnect();
        resolve();
      });
      watch.observe(pane, { subtree: true, attributes: true, attributeFilter: ['d'] });
      const before = slider.value;
      slider.value = String(place);
      if (slider.value === before) return watch.disconnect(), resolve();
      slider.dispatchEvent(new Event('input', { bubbles: true }));
    });
    // Let go now and then: that is a step which can be undone.
    if (i % 5 === 4) slider.dispatchEvent(new Event('change', { bubbles: true }));
  }
})()`;

inBrowser('a thousand moves of sliders', () => {
  test('leave the memory of the page and of the worker that drafts as it was', async () => {
    const { page } = await opened({ viewport: { width: 1400, height: 900 } });
    await invented(page, 'Leading lady');
    await view(page, 'Choose');
    await page.locator('.choice-picture').last().waitFor();
    const heaps = await watchedHeaps(await page.context().newCDPSession(page));
    const move = async (from: number, to: number): Promise<Held> => {
      await page.evaluate(`(${moving})(${from}, ${to})`);
      // Until all is at rest again: the sheet of the last is written and walked.
      await drawn(page, 'dress');
      await page.waitForTimeout(1500);
      return heaps();
    };
    // What can be undone is bounded, and full after so many; so is what the compiler keeps.
    let [before, after] = [await move(0, 1000), await move(1000, 2000)];
    // What is compiled late comes once; what leaks comes with every thousand.
    if (grownBy(before, after) > 1e6) [before, after] = [after, await move(2000, 3000)];
    const said = JSON.stringify({ before, after });
    expect(after.workers.length, said).toBeGreaterThan(0);
    expect(after.workers.length, said).toBe(before.workers.length);
    expect(after.nodes - before.nodes, said).toBeLessThan(50);
    expect(after.listeners - before.listeners, said).toBeLessThan(50);
    expect(grownBy(before, after) / 1e6, said).toBeLessThan(1);
  }, 600_000);
});

/** What is held once all that nobody needs is thrown away, in bytes. */
interface Held {
  readonly heap: number;
  readonly nodes: number;
  readonly listeners: number;
  /** That of each worker of the page, in the order in which they were begun: the one that drafts is the first. */
  readonly workers: readonly number[];
}

/** By how much the page, or the worker that has grown most, holds more than before, in bytes. */
const grownBy = (before: Held, after: Held): number =>
  Math.max(after.heap - before.heap, ...after.workers.map((heap, i) => heap - (before.workers[i] ?? 0)));

/** How to look at what a page and its workers hold. A worker is spoken to through the page's session, by messages in it. */
async function watchedHeaps(session: CDPSession): Promise<() => Promise<Held>> {
  const workers: string[] = [];
  session.on('Target.attachedToTarget', ({ sessionId, targetInfo }) => {
    if (targetInfo.type === 'worker') workers.push(sessionId);
  });
  const waiting = new Map<number, (result: unknown) => void>();
  session.on('Target.receivedMessageFromTarget', ({ message }) => {
    const { id, result } = JSON.parse(message) as { readonly id?: number; readonly result?: unknown };
    if (id !== undefined) waiting.get(id)?.(result);
  });
  let asked = 0;
  const ask = (sessionId: string, method: string): Promise<unknown> =>
    new Promise((resolve) => {
      const id = ++asked;
      waiting.set(id, resolve);
      void session.send('Target.sendMessageToTarget', {
        sessionId,
        message: JSON.stringify({ id, method, params: {} }),
      });
    });
  await session.send('Target.setAutoAttach', {
    autoAttach: true,
    waitForDebuggerOnStart: false,
    flatten: false,
  });
  await session.send('HeapProfiler.enable');
  await session.send('Performance.enable');
  return async () => {
    const used: number[] = [];
    for (const worker of workers) {
      for (let i = 0; i < 3; i++) await ask(worker, 'HeapProfiler.collectGarbage');
      const { usedSize } = (await ask(worker, 'Runtime.getHeapUsage')) as { readonly usedSize: number };
      used.push(usedSize);
    }
    for (let i = 0; i < 3; i++) await session.send('HeapProfiler.collectGarbage');
    const { metrics } = await session.send('Performance.getMetrics');
    const of = (wanted: string): number => metrics.find(({ name }) => name === wanted)?.value ?? Number.NaN;
    return {
      heap: of('JSHeapUsedSize'),
      nodes: of('Nodes'),
      listeners: of('JSEventListeners'),
      workers: used,
    };
  };
}

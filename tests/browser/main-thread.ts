import type { CDPSession, Page } from 'playwright-core';

/*
 * What a page's main thread did, and for how long: by processor time, so that what others take of the machine does not count.
 * A frame that runs edited code has a process of its own, and so a main thread of its own, which keeps the page from nothing:
 * starting its worker takes it 1.5 ms most often, and about once in a hundred times 30 to 60.
 */

/** An event of Chromium's own record of what its threads did. */
interface Traced {
  readonly name: string;
  readonly cat: string;
  readonly pid: number;
  readonly tid: number;
  /** When it began, µs. */
  readonly ts: number;
  /** Processor time, µs. */
  readonly tdur?: number;
}

/** What the page's own thread is known by. */
const mark = 'watched main thread';

/** Something the main thread did without a pause. */
export interface Task {
  /** Processor time, ms. */
  readonly took: number;
}

/** All that the main thread of a page did meanwhile, in order. */
export async function tasksDuring(page: Page, act: () => Promise<unknown>): Promise<readonly Task[]> {
  const session: CDPSession = await page.context().newCDPSession(page);
  const traced: Traced[] = [];
  session.on('Tracing.dataCollected', ({ value }) => {
    traced.push(...(value as readonly object[] as readonly Traced[]));
  });
  const heard = new Promise<void>((resolve) => session.once('Tracing.tracingComplete', () => resolve()));
  await session.send('Tracing.start', {
    transferMode: 'ReportEvents',
    traceConfig: {
      includedCategories: [
        'toplevel',
        'disabled-by-default-devtools.timeline',
        'blink.user_timing',
        '__metadata',
      ],
    },
  });
  // Told by the page itself, before and after: a page that is loaded anew may have another process.
  const marked = (): Promise<unknown> => page.evaluate(`performance.mark(${JSON.stringify(mark)})`);
  try {
    await marked();
    await act();
    await marked();
  } finally {
    await session.send('Tracing.end');
    await heard;
    await session.detach();
  }
  const mains = traced.filter(({ name, cat }) => name === mark && cat === 'blink.user_timing');
  const isMain = ({ pid, tid }: Traced): boolean =>
    mains.some((main) => main.pid === pid && main.tid === tid);
  return traced
    .filter((event) => event.name === 'RunTask' && isMain(event))
    .toSorted((a, b) => a.ts - b.ts)
    .map(({ tdur = 0 }) => ({ took: tdur / 1000 }));
}

/** The longest of them, ms. */
export const longest = (tasks: readonly Task[]): number => Math.max(0, ...tasks.map(({ took }) => took));

import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { pathToFileURL } from 'node:url';
import { build } from 'esbuild';
import type { evaluate } from '../../engine/evaluate.ts';
import type { Draft } from '../../engine/pattern/draft.ts';
import { plausibleBodies } from '../plausible-bodies.ts';
import { ownTime } from './own-time.ts';
import { figures, table } from './timing.ts';

/** What is timed of a checkout. */
export interface Checkout {
  readonly garments: readonly Draft[];
  readonly evaluate: typeof evaluate;
}

/** Where this checkout lies. */
export const here = new URL('../../', import.meta.url).pathname;

/** Times each body is drafted by each checkout; the least of them is what neither garbage nor neighbours disturbed. */
export const ROUNDS = 4;

/**
 * Every garment that this checkout and the one in `folder` both have, measurements to walked pieces, drafted by both in
 * turn in one process, so that a machine that changes its pace changes it for both: processor times of the thread, their medians,
 * 99th percentiles, best ones and ratios.
 */
export async function benchAgainst(folder: string, count = 50): Promise<string> {
  const other = await checkoutIn(resolve(folder));
  const own = await checkoutIn(here);
  const bodies = plausibleBodies(count);
  const rows = own.garments.flatMap((draft) => {
    const before = other.garments.find(({ name }) => name === draft.name);
    if (!before) return [];
    const [theirs, ours] = timesInTurn(
      [(body) => other.evaluate(before, body), (body) => own.evaluate(draft, body)],
      bodies,
    );
    if (!theirs || !ours) return [];
    return [
      [
        `${draft.name}, ms`,
        ...[theirs.median, ours.median, ours.median / theirs.median].map(figures),
        ...[theirs.p99, ours.p99, ours.p99 / theirs.p99].map(figures),
        ...[theirs.best, ours.best, ours.best / theirs.best].map(figures),
      ],
    ];
  });
  return [
    `A garment here against ${folder}, ${count} plausible bodies ${ROUNDS} times in turn (p99, and the mean best: of each body's best)`,
    table([
      ['', 'median there', 'here', 'ratio', 'p99 there', 'here', 'ratio', 'best there', 'here', 'ratio'],
      ...rows,
    ]),
  ].join('\n');
}

/** A checkout as it is installed, in one file: tsx gives every function its name as the program runs, which costs. */
export async function checkoutIn(folder: string): Promise<Checkout> {
  const out = await mkdtemp(join(tmpdir(), 'bodkin-bench-'));
  const outfile = join(out, 'checkout.mjs');
  const of = (path: string): string => JSON.stringify(join(folder, path));
  await build({
    stdin: {
      contents: `export { garments } from ${of('drafts/garments.ts')}; export { evaluate } from ${of('engine/evaluate.ts')};`,
      resolveDir: folder,
    },
    bundle: true,
    platform: 'node',
    format: 'esm',
    outfile,
    banner: {
      js: `import { createRequire as requirer } from 'node:module'; const require = requirer(import.meta.url);`,
    },
  });
  const checkout: Checkout = await import(pathToFileURL(outfile).href);
  await rm(out, { recursive: true });
  return checkout;
}

export interface Times {
  readonly median: number;
  /** Of each body's best. */
  readonly p99: number;
  readonly best: number;
}

/** Milliseconds that each run takes for the bodies, all runs in turn for each, after one round that warms them up. */
export function timesInTurn<Body>(
  runs: readonly ((body: Body) => unknown)[],
  bodies: readonly Body[],
): Times[] {
  const all: number[][] = runs.map(() => []);
  const best = runs.map(() => bodies.map(() => Infinity));
  for (let round = 0; round <= ROUNDS; round++) {
    for (const [i, body] of bodies.entries()) {
      for (const [k, run] of runs.entries()) {
        const start = ownTime();
        run(body);
        const time = ownTime() - start;
        const known = best[k];
        if (round === 0 || !known) continue;
        all[k]?.push(time);
        known[i] = Math.min(known[i] ?? Infinity, time);
      }
    }
  }
  return all.map((times, k) => {
    const bests = best[k] ?? [];
    return { median: atShare(times, 0.5), p99: atShare(bests, 0.99), best: meanOf(bests) };
  });
}

const atShare = (times: readonly number[], share: number): number =>
  times.toSorted((a, b) => a - b)[Math.floor(share * (times.length - 1))] ?? 0;

const meanOf = (times: readonly number[]): number =>
  times.reduce((sum, time) => sum + time, 0) / times.length;

import { resolve } from 'node:path';
import { plausibleBodies } from '../plausible-bodies.ts';
import { draftsApart, here, type Spent } from './drafts-apart.ts';
import { figures, table } from './timing.ts';

/** Times each body is drafted by each checkout; the least of them is what neither garbage nor neighbours disturbed. */
export const ROUNDS = 4;

/** Rounds before them: V8 has compiled what it will compile after some five hundred drafts, as a worker soon has. */
const WARMING = 10;

/**
 * Every garment that this checkout and the one in `folder` both have, measurements to walked pieces, drafted by both in
 * turn, each in a process of its own, so that a machine that changes its pace changes it for both: processor times of their threads,
 * their medians, 99th percentiles, best ones and ratios; and the mean with what V8 does on threads beside.
 */
export async function benchAgainst(folder: string, count = 50): Promise<string> {
  const other = await draftsApart(resolve(folder));
  const own = await draftsApart(here);
  const bodies = plausibleBodies(count);
  const rows: string[][] = [];
  for (const name of own.garments) {
    if (!other.garments.includes(name)) continue;
    const runs = [other, own].map(
      ({ time }) =>
        (body: unknown) =>
          time(name, body),
    );
    const [theirs, ours] = await timesInTurn(runs, bodies);
    if (!theirs || !ours) continue;
    rows.push([
      `${name}, ms`,
      ...[theirs.median, ours.median, ours.median / theirs.median].map(figures),
      ...[theirs.p99, ours.p99, ours.p99 / theirs.p99].map(figures),
      ...[theirs.best, ours.best, ours.best / theirs.best].map(figures),
      ...[theirs.all, ours.all, ours.all / theirs.all].map(figures),
    ]);
  }
  await Promise.all([other.end(), own.end()]);
  return [
    `A garment here against ${folder}, ${count} plausible bodies ${ROUNDS} times in turn (p99, and the mean best: of each body's best; all: mean of all threads)`,
    table([
      [
        '',
        'median there',
        'here',
        'ratio',
        'p99 there',
        'here',
        'ratio',
        'best there',
        'here',
        'ratio',
        'all there',
        'here',
        'ratio',
      ],
      ...rows,
    ]),
  ].join('\n');
}

export interface Times {
  readonly median: number;
  /** Of each body's best. */
  readonly p99: number;
  readonly best: number;
  /** With what V8 does on threads beside, the mean. */
  readonly all: number;
}

/** Of the milliseconds that each run says it took for the bodies, all runs in turn for each, once they are warm. */
export async function timesInTurn<Body>(
  runs: readonly ((body: Body) => Promise<Spent>)[],
  bodies: readonly Body[],
): Promise<readonly Times[]> {
  const spent: Spent[][] = runs.map(() => []);
  const best = runs.map(() => bodies.map(() => Infinity));
  for (let round = 0; round < WARMING + ROUNDS; round++) {
    for (const [i, body] of bodies.entries()) {
      for (const [k, run] of runs.entries()) {
        const time = await run(body);
        const known = best[k];
        if (round < WARMING || !known) continue;
        spent[k]?.push(time);
        known[i] = Math.min(known[i] ?? Infinity, time.own);
      }
    }
  }
  return spent.map((times, k) => {
    const bests = best[k] ?? [];
    return {
      median: atShare(
        times.map(({ own }) => own),
        0.5,
      ),
      p99: atShare(bests, 0.99),
      best: meanOf(bests),
      all: meanOf(times.map(({ all }) => all)),
    };
  });
}

const atShare = (times: readonly number[], share: number): number =>
  times.toSorted((a, b) => a - b)[Math.floor(share * (times.length - 1))] ?? 0;

const meanOf = (times: readonly number[]): number =>
  times.reduce((sum, time) => sum + time, 0) / times.length;

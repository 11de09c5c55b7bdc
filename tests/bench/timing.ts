/** How long something takes, over many warm runs (microseconds). */
export interface Timing {
  readonly median: number;
  readonly p99: number;
}

/**
 * Times a function: warms it up, then runs it `rounds` times in batches, and
 * gives the median and the 99th percentile of one call's mean over a batch.
 */
export function timed(run: () => unknown, rounds = 100): Timing {
  const batch = batchOf(run);
  return summary(Array.from({ length: rounds }, () => once(run, batch)));
}

/**
 * Times several functions that do the same job, turn by turn, so that a machine that changes its pace changes it for
 * all of them. The answers come in the order of the functions.
 */
export function timedTogether(runs: readonly (() => unknown)[], rounds = 100): Timing[] {
  const batches = runs.map(batchOf);
  const times: number[][] = runs.map(() => []);
  for (let round = 0; round < rounds; round++) {
    for (const [i, run] of runs.entries()) times[i]?.push(once(run, batches[i] ?? 1));
  }
  return times.map(summary);
}

/** Length of a batch, milliseconds: long enough that each pays for its own garbage, not for the last one's. */
const BATCH = 10;

function batchOf(run: () => unknown): number {
  const start = performance.now();
  let calls = 0;
  while (performance.now() - start < 100) {
    run();
    calls++;
  }
  return Math.max(1, Math.round((calls * BATCH) / 100));
}

function once(run: () => unknown, batch: number): number {
  const start = performance.now();
  for (let i = 0; i < batch; i++) run();
  return ((performance.now() - start) * 1000) / batch;
}

function summary(times: readonly number[]): Timing {
  const sorted = times.toSorted((a, b) => a - b);
  const at = (share: number): number => sorted[Math.floor(share * (sorted.length - 1))] ?? 0;
  return { median: at(0.5), p99: at(0.99) };
}

/** A number with three significant figures. */
export const figures = (value: number): string => Number(value.toPrecision(3)).toString();

/** A table as text: the first row is its head. */
export function table(rows: readonly (readonly string[])[]): string {
  const widths = (rows[0] ?? []).map((_, column) => Math.max(...rows.map((row) => row[column]?.length ?? 0)));
  return rows
    .map((row) =>
      row.map((cell, i) => (i === 0 ? cell.padEnd(widths[i] ?? 0) : cell.padStart(widths[i] ?? 0))),
    )
    .map((row) => `  ${row.join('   ')}`)
    .join('\n');
}

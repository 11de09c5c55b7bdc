import { planLay } from '../../engine/lay/plan-lay.ts';
import type { Lay, LayProblem } from '../../engine/lay/problem.ts';

/** How long to seek: seconds, and rounds where the answer is to be the same every time. */
export interface Effort {
  readonly seconds: number;
  readonly rounds: number | undefined;
  readonly seed: number;
}

/** Who waits for a lay. */
export interface Watch {
  /** Milliseconds since whenever. */
  readonly clock: () => number;
  /** Lets others do something. */
  readonly breathe: () => Promise<void>;
  /** Told every now and then which share of the search is over, and the best lay so far. */
  readonly seen: (share: number, best: Lay | undefined) => void;
  /** Whether to end the search before its time. */
  readonly ended: () => 'no' | 'once there is a lay' | 'at once';
}

/** Milliseconds of seeking before it is looked up. */
const attention = 50;

/**
 * The best lay found in the time given, or until it is ended; nothing where it is ended before the first. With a number of
 * rounds the answer depends on them and the seed alone, unless the seconds end first.
 */
export async function soughtLay(
  problem: LayProblem,
  { seconds, rounds, seed }: Effort,
  { clock, breathe, seen, ended }: Watch,
): Promise<Lay | undefined> {
  const start = clock();
  const elapsed = (): number => (clock() - start) / 1000 / seconds;
  let best: Lay | undefined;
  let next = clock() + attention;
  for (const found of planLay(problem, seed, (done) => (rounds === undefined ? elapsed() : done / rounds))) {
    best = found.best;
    const now = clock();
    if (now >= next) {
      next = now + attention;
      seen(rounds === undefined ? elapsed() : Math.max(elapsed(), found.rounds / rounds), best);
      await breathe();
    }
    const end = ended();
    if (end === 'at once' || (best && (end !== 'no' || elapsed() >= 1))) break;
  }
  return best;
}

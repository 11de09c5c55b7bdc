import { planLay } from '../engine/lay/plan-lay.ts';
import type { Lay, LayProblem } from '../engine/lay/problem.ts';
import { progress } from './progress.ts';
import type { Session } from './session.ts';
import { unusable } from './unusable.ts';

/** How long to seek: seconds, and rounds where the answer is to be the same every time. */
export interface Effort {
  readonly seconds: number;
  readonly rounds: number | undefined;
  readonly seed: number;
}

/** Whether Ctrl-C has come: one search after the other is told, so that once is enough for all. */
export interface Halt {
  asked: boolean;
}

/** Milliseconds of seeking before the process looks up, for Ctrl-C. */
const attention = 50;

/**
 * The best lay found in the time given. Ctrl-C ends the search early and keeps what was found; a search
 * that begins after it ends with its first lay. With a number of rounds the
 * answer depends on them and the seed alone, unless the seconds end first. The first lay is waited for; throws `Unusable` when Ctrl-C
 * comes before it.
 */
export async function seekLay(
  session: Session,
  problem: LayProblem,
  { seconds, rounds, seed }: Effort,
  label = 'laying',
  halt: Halt = { asked: false },
): Promise<Lay> {
  const start = session.clock();
  const elapsed = (): number => (session.clock() - start) / 1000 / seconds;
  const bar = progress(session, label);
  let stopped = false;
  const stop = (): void => {
    stopped = true;
    halt.asked = true;
  };
  process.once('SIGINT', stop);
  let best: Lay | undefined;
  let next = session.clock() + attention;
  try {
    for (const found of planLay(problem, seed, (done) =>
      rounds === undefined ? elapsed() : done / rounds,
    )) {
      best = found.best;
      const now = session.clock();
      if (now >= next) {
        next = now + attention;
        bar.reached(rounds === undefined ? elapsed() : Math.max(elapsed(), found.rounds / rounds));
        await new Promise((resolve) => setImmediate(resolve));
      }
      if (stopped || (best && (halt.asked || elapsed() >= 1))) break;
    }
  } finally {
    process.off('SIGINT', stop);
    bar.done();
  }
  if (!best)
    throw unusable('no-lay-found', '', 'The search was ended before it found a lay without overlaps.');
  return best;
}

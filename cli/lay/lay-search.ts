import type { Lay, LayProblem } from '../../engine/lay/problem.ts';
import { unusable } from '../input/unusable.ts';
import { progress } from '../output/progress.ts';
import type { Session } from '../session.ts';
import { type Effort, soughtLay } from './seek-lay.ts';

/** Whether Ctrl-C has come: one search after the other is told, so that once is enough for all. */
export interface Halt {
  asked: boolean;
}

/**
 * The best lay found in the time given. Ctrl-C ends the search early and keeps what was found; a search
 * that begins after it ends with its first lay. With a number of rounds the
 * answer depends on them and the seed alone, unless the seconds end first. The first lay is waited for; throws `Unusable` when Ctrl-C
 * comes before it.
 */
export async function seekLay(
  session: Session,
  problem: LayProblem,
  effort: Effort,
  label = 'laying',
  halt: Halt = { asked: false },
): Promise<Lay> {
  const bar = progress(session, label);
  let stopped = false;
  const stop = (): void => {
    stopped = true;
    halt.asked = true;
  };
  process.once('SIGINT', stop);
  let best: Lay | undefined;
  try {
    best = await soughtLay(problem, effort, {
      clock: session.clock,
      breathe: () => new Promise((resolve) => setImmediate(resolve)),
      seen: (share) => bar.reached(share),
      ended: () => (stopped ? 'at once' : halt.asked ? 'once there is a lay' : 'no'),
    });
  } finally {
    process.off('SIGINT', stop);
    bar.done();
  }
  if (!best)
    throw unusable('no-lay-found', '', 'The search was ended before it found a lay without overlaps.');
  return best;
}

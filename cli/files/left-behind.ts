import { readdir, rm } from 'node:fs/promises';
import { join } from 'node:path';
import { settle } from './file-set.ts';
import {
  isAtWork,
  isOnThisMachine,
  isSame,
  leavingName,
  readLeaving,
  thisRun,
  type WritingRun,
} from './run-name.ts';

/** The folder in which a run makes a set of files. */
export const setName = (run: WritingRun): string => leavingName(run, 'set');

/**
 * Puts a folder in order after runs that were killed, or slept so long that they are taken for gone: a set that had become the
 * new one takes the rest of its names, and of any other nothing is left. What runs still at work have begun stays, and the flag
 * of the `own`. Flags go first: a run that wakes meanwhile sees by its own that it has to begin again.
 */
export async function clearLeftBehind(
  folder: string,
  isAlive: (run: WritingRun) => boolean = isAtWorkHere,
  own: WritingRun = thisRun,
): Promise<void> {
  const leavings = (await readdir(folder)).flatMap((name) => {
    const leaving = readLeaving(name);
    return leaving ? [{ at: join(folder, name), ...leaving }] : [];
  });
  const silent = leavings.filter(({ run, what }) => what === 'turn' && !isAlive(run) && !isSame(run, own));
  for (const flag of silent) await tidily(() => rm(flag.at, { force: true }));
  for (const set of leavings.filter(({ what }) => what === 'set')) {
    const isGone = silent.some(({ run }) => isSame(run, set.run));
    if (isGone || !(isAlive(set.run) || isAtWorkHere(set.run)))
      await tidily(() => settle({ folder, work: set.at }));
  }
}

const isAtWorkHere = (run: WritingRun): boolean => isOnThisMachine(run) && isAtWork(run.pid);

/** What somebody else's run left in a folder for all may not be moved: it stays for them to tidy. */
async function tidily(act: () => Promise<void> | void): Promise<void> {
  try {
    await act();
  } catch {
    // It stays.
  }
}

import { readdir, rm } from 'node:fs/promises';
import { join } from 'node:path';
import { settle } from './file-set.ts';
import { isAtWork, isOnThisMachine, leavingName, readLeaving, thisRun, type WritingRun } from './run-name.ts';

/** The folder in which a run makes a set of files. */
export const setName = (pid: number): string => leavingName({ ...thisRun, pid }, 'set');

/**
 * Puts a folder in order after runs that were killed: a set that had become the new one takes the rest of its names, and of any
 * other nothing is left. What runs still at work have begun stays: those of this machine whose process is there, those of
 * others that `isAlive` says are.
 */
export async function clearLeftBehind(
  folder: string,
  isAlive: (run: WritingRun) => boolean = () => false,
): Promise<void> {
  for (const name of await readdir(folder)) {
    const leaving = readLeaving(name);
    if (!leaving) continue;
    const { run, what } = leaving;
    if (isOnThisMachine(run) ? isAtWork(run.pid) : isAlive(run)) continue;
    const isOwn = isOnThisMachine(run) && run.pid === process.pid;
    try {
      if (what === 'set') settle({ folder, work: join(folder, name) });
      else if (!isOwn) await rm(join(folder, name), { force: true });
    } catch {
      // What somebody else's run left in a folder for all may not be moved: it stays for them to tidy.
    }
  }
}

import { readdir, rm } from 'node:fs/promises';
import { join } from 'node:path';
import { settle } from './file-set.ts';

/** The folder in which process `pid` makes a set of files. */
export const setName = (pid: number): string => `.bodkin.${pid}.set`;

/** Its folder, and the flag that it puts up while it writes (`taking-turns.ts`). */
const leavings = /^\.bodkin\.(\d+)\.(set|turn)$/;

/**
 * Puts a folder in order after runs that were killed: a set that had become the new one takes the rest of its names, and of any
 * other nothing is left. What runs still at work have begun stays.
 */
export async function clearLeftBehind(folder: string): Promise<void> {
  for (const name of await readdir(folder)) {
    const [, pid, what] = leavings.exec(name) ?? [];
    if (pid === undefined || isAtWork(Number(pid))) continue;
    try {
      if (what === 'set') settle({ folder, work: join(folder, name) });
      else if (Number(pid) !== process.pid) await rm(join(folder, name), { force: true });
    } catch {
      // What somebody else's run left in a folder for all may not be moved: it stays for them to tidy.
    }
  }
}

/**
 * Whether another process of this number is at work: signal 0 asks, and only someone else's may not be asked. What bears this
 * process's own number when it begins was left by one before it.
 */
export function isAtWork(pid: number): boolean {
  if (pid === process.pid) return false;
  try {
    return process.kill(pid, 0);
  } catch (error) {
    return (error as NodeJS.ErrnoException).code === 'EPERM';
  }
}

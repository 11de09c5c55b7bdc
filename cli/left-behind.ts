import { readdir, readFile, rename, rm } from 'node:fs/promises';
import { basename, join } from 'node:path';

/** A file under its passing name, and the list of a set that is about to change names, while process `pid` is at work. */
export const passingName = (name: string, pid: number): string => `.${name}.${pid}.part`;
export const swapName = (pid: number): string => `.bodkin.${pid}.swap`;

const passing = /^\..+\.(\d+)\.part$/;
const swap = /^\.bodkin\.(\d+)\.swap$/;

/**
 * Puts a folder in order after runs that were killed: a set that was whole, and had begun to take its names, takes the rest
 * of them; what was written of any other is taken away. Files of runs still at work stay.
 */
export async function clearLeftBehind(folder: string): Promise<void> {
  const names = await readdir(folder).catch(() => []);
  for (const name of names) {
    const pid = Number(swap.exec(name)?.[1]);
    if (Number.isNaN(pid) || isAtWork(pid)) continue;
    for (const own of await listed(join(folder, name)))
      await rename(join(folder, passingName(own, pid)), join(folder, own)).catch(() => undefined);
    await rm(join(folder, name), { force: true });
  }
  for (const name of names) {
    const pid = Number(passing.exec(name)?.[1]);
    if (!Number.isNaN(pid) && !isAtWork(pid))
      await rm(join(folder, name), { force: true }).catch(() => undefined);
  }
}

/** The plain names in a list, one a line; none where it cannot be read. */
async function listed(file: string): Promise<readonly string[]> {
  const text = await readFile(file, 'utf8').catch(() => '');
  return text.split('\n').filter((name) => name !== '' && basename(name) === name);
}

/** Whether a process of this number is at work: signal 0 asks, and only someone else's may not be asked. */
function isAtWork(pid: number): boolean {
  try {
    return process.kill(pid, 0);
  } catch (error) {
    return (error as NodeJS.ErrnoException).code === 'EPERM';
  }
}

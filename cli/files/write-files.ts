import { lstat, mkdir, readlink, stat, writeFile } from 'node:fs/promises';
import { basename, dirname, join, resolve } from 'node:path';
import { reason } from '../input/reason.ts';
import { unusable } from '../input/unusable.ts';
import { beginSet, type FileSet, placeOfNew, settle, swapIn } from './file-set.ts';
import { clearLeftBehind, setName } from './left-behind.ts';
import type { WritingRun } from './run-name.ts';
import { LostTurn, type Turn, type Turns, takingTurns, usualTurns } from './taking-turns.ts';
import { syncFolder } from './whole-file.ts';

/**
 * Writes a set of files into one folder, all or none (`file-set.ts`): a run that is killed at any moment leaves the old set or
 * the new one to read, and what is left to tidy the next run tidies. Contents are on the disk before a name leads to them, so
 * that a loss of power is no worse. Names lead nowhere but into the folder. A run that was taken for gone while its machine slept
 * begins again.
 */
export async function writeFiles(
  folder: string,
  files: ReadonlyMap<string, string | Uint8Array>,
  turns: Turns = usualTurns,
): Promise<void> {
  try {
    await makeFolder(folder);
    for (let begun = 1; ; begun++)
      try {
        await takingTurns(folder, (turn) => changeSet(folder, files, turn, turns.run), turns);
        return;
      } catch (error) {
        if (!(error instanceof LostTurn) || begun === mostBeginnings) throw error;
      }
  } catch (error) {
    throw unusable('cannot-write', folder, `Cannot write into ${folder}: ${reason(error)}`);
  }
}

/** A machine that sleeps so often amid so short a work does not mean to do it. */
const mostBeginnings = 5;

async function changeSet(
  folder: string,
  files: ReadonlyMap<string, string | Uint8Array>,
  { isAlive, hold }: Turn,
  run: WritingRun,
): Promise<void> {
  let set: FileSet | undefined;
  try {
    await clearLeftBehind(folder, isAlive, run);
    for (const name of files.keys())
      if (basename(name) !== name) throw new Error(`${name} is not a plain file name`);
    set = beginSet(folder, setName(run));
    const begun = set;
    // Together, for a disk takes many files in the time that it takes one.
    await Promise.all(
      Array.from(files, ([name, content]) =>
        writeFile(placeOfNew(begun, name), content, { flag: 'wx', flush: true }),
      ),
    );
    await syncFolder(placeOfNew(begun, ''));
    for (const name of files.keys()) await refuseOther(join(folder, name));
    hold();
    swapIn(begun, hold);
    await syncFolder(folder);
  } catch (error) {
    // Of a turn that was lost another run has ended what was begun.
    hold();
    if (set) settle(set);
    throw error;
  }
}

/** Makes a folder and those above it, one by one: asked for all at once, Node never comes back from some file systems. */
async function makeFolder(folder: string): Promise<void> {
  const there = await stat(folder).catch(() => undefined);
  if (there?.isDirectory()) return;
  if (there) throw Object.assign(new Error(`${folder} is no folder.`), { code: 'ENOTDIR' });
  const above = dirname(resolve(folder));
  if (above !== resolve(folder)) await makeFolder(above);
  await mkdir(folder).catch(async (error: unknown) => {
    // Another run may have made it meanwhile.
    if (!(await stat(folder).catch(() => undefined))?.isDirectory()) throw error;
  });
}

/**
 * A file takes the place of a file, or of a link to one, and of nothing else: better to know before the first has moved. Where
 * one may do all (root), a device, or the way to standard output, would be gone for every program on the machine.
 */
async function refuseOther(path: string): Promise<void> {
  const there = await lstat(path).catch(() => undefined);
  if (!there) return;
  if (there.isDirectory()) throw new Error(`${path} is a folder.`);
  // A link to nothing may go. Those into /proc stand for what a program has open, files too.
  const led = await stat(path).catch(() => undefined);
  const standsForOpen = there.isSymbolicLink() && (await readlink(path)).startsWith('/proc/');
  if ((led && !led.isFile() && !led.isDirectory()) || standsForOpen)
    throw new Error(`${path} is no file but a device or the like, and stays.`);
}

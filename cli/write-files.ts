import { lstat, mkdir, rename, rm, stat, writeFile } from 'node:fs/promises';
import { basename, dirname, join, resolve } from 'node:path';
import { clearLeftBehind, passingName, swapName } from './left-behind.ts';
import { reason } from './reason.ts';
import { unusable } from './unusable.ts';

/**
 * Writes a set of files into one folder, each whole or not at all: every file is written under a passing name
 * first, and only when all are there do they take their own names. A run that is killed leaves the old set, or the new one
 * once the next run has put the folder in order (`clearLeftBehind`). Names lead nowhere but into the folder.
 */
export async function writeFiles(
  folder: string,
  files: ReadonlyMap<string, string | Uint8Array>,
): Promise<void> {
  const passing: { readonly from: string; readonly to: string }[] = [];
  try {
    await makeFolder(folder);
    await clearLeftBehind(folder);
    for (const [name, content] of files) {
      if (basename(name) !== name) throw new Error(`${name} is not a plain file name`);
      const from = join(folder, passingName(name, process.pid));
      passing.push({ from, to: join(folder, name) });
      await writeFile(from, content, { flag: 'wx' });
    }
    for (const { to } of passing) await refuseFolder(to);
    const swap = join(folder, swapName(process.pid));
    await writeFile(swap, [...files.keys()].join('\n'));
    for (const { from, to } of passing) await rename(from, to);
    await rm(swap);
  } catch (error) {
    for (const { from } of passing) await rm(from, { force: true }).catch(() => undefined);
    await rm(join(folder, swapName(process.pid)), { force: true }).catch(() => undefined);
    throw unusable('cannot-write', folder, `Cannot write into ${folder}: ${reason(error)}`);
  }
}

/** Makes a folder and those above it, one by one: asked for all at once, Node never comes back from some file systems. */
async function makeFolder(folder: string): Promise<void> {
  const there = await stat(folder).catch(() => undefined);
  if (there?.isDirectory()) return;
  const above = dirname(resolve(folder));
  if (above !== resolve(folder)) await makeFolder(above);
  await mkdir(folder).catch(async (error: unknown) => {
    // Another run may have made it meanwhile.
    if (!(await stat(folder).catch(() => undefined))?.isDirectory()) throw error;
  });
}

/** A file cannot take the place of a folder; better to know before the first file has moved. */
async function refuseFolder(path: string): Promise<void> {
  const there = await lstat(path).catch(() => undefined);
  if (there?.isDirectory()) throw new Error(`${path} is a folder.`);
}

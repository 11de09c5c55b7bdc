import { randomUUID } from 'node:crypto';
import { type FileHandle, open, rename, rm } from 'node:fs/promises';
import { basename, dirname, join } from 'node:path';

/** What is done where the disk is full: it resolves when it is worth trying again, and rejects to give up. */
export type OnFull = () => Promise<void>;

/** Whether something failed for want of room on the disk, or in one's share of it. */
export const isFull = (error: unknown): boolean =>
  ['ENOSPC', 'EDQUOT'].includes(String((error as NodeJS.ErrnoException).code));

/**
 * Writes a file whole or not at all, also through a loss of power: beside it first, synced to the disk, then renamed, and
 * the folder synced. Two that write the same file at once each write their own, and the later takes the name.
 *
 * Where the disk is full it waits by `onFull`, and goes on where it had stopped; what a sync has lost is told by an error.
 */
export async function writeWhole(
  path: string,
  parts: AsyncIterable<Uint8Array> | Iterable<Uint8Array>,
  onFull?: OnFull,
): Promise<void> {
  const beside = join(dirname(path), besideName(basename(path)));
  try {
    const file = await patient(() => open(beside, 'wx'), onFull);
    try {
      for await (const part of parts) await writeAll(file, part, onFull);
      await file.sync();
    } finally {
      await file.close();
    }
    await patient(() => rename(beside, path), onFull);
  } catch (error) {
    await rm(beside, { force: true }).catch(() => undefined);
    throw error;
  }
  await syncFolder(dirname(path));
}

/** The name of a file while it is written, and what all of those look like. */
const besideName = (name: string): string => `.${name}.${randomUUID()}.part`;
export const isBeside = (name: string, of: string): boolean =>
  name.startsWith(`.${of}.`) && name.endsWith('.part');

/** A disk that fills takes only the beginning of a part. */
async function writeAll(file: FileHandle, part: Uint8Array, onFull: OnFull | undefined): Promise<void> {
  let at = 0;
  while (at < part.length)
    at += (await patient(() => file.write(part, at, part.length - at), onFull)).bytesWritten;
}

async function patient<T>(attempt: () => Promise<T>, onFull: OnFull | undefined): Promise<T> {
  for (;;) {
    try {
      return await attempt();
    } catch (error) {
      if (!onFull || !isFull(error)) throw error;
      await onFull();
    }
  }
}

/** Makes new names in a folder outlast a loss of power. */
export async function syncFolder(folder: string): Promise<void> {
  const handle = await open(folder, 'r');
  try {
    await handle.sync();
  } catch (error) {
    // Some network file systems sync names by themselves, and refuse to be asked.
    if (!['EINVAL', 'ENOTSUP', 'EPERM'].includes(String((error as NodeJS.ErrnoException).code))) throw error;
  } finally {
    await handle.close();
  }
}

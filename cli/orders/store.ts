import { randomBytes } from 'node:crypto';
import { access, link, mkdir, readdir, readFile, rm, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import * as z from 'zod';
import { isBeside, writeWhole } from '../files/whole-file.ts';
import { reason } from '../input/reason.ts';
import { unusable } from '../input/unusable.ts';
import { answersName, type Manifest, manifestSchema } from './manifest.ts';

/**
 * A folder, or a mount, that everybody at work on the orders shares: `chunks` of orders, `answers` to them, `sets` that say which
 * chunks belong together, and `set-aside` the chunks that nobody came to an end with.
 */
export interface Store {
  readonly folder: string;
  /** By which a server tells its chunks from those of other stores. */
  readonly id: string;
}

const parts = ['chunks', 'answers', 'sets', 'set-aside'] as const;
const named = z.strictObject({ version: z.literal(1), id: z.string().regex(/^[0-9a-f]{16}$/) });

/** Opens a store, or makes it. Of several that make one at once, the first names it. */
export async function openStore(folder: string): Promise<Store> {
  const file = join(folder, 'store.json');
  try {
    for (const part of parts) await mkdir(join(folder, part), { recursive: true });
    if (!(await isThere(file))) {
      const id = randomBytes(8).toString('hex');
      const own = join(folder, `.store.${id}.part`);
      await writeFile(own, `${JSON.stringify({ version: 1, id })}\n`);
      await link(own, file).catch((error: NodeJS.ErrnoException) => {
        if (error.code !== 'EEXIST') throw error;
      });
      await rm(own);
    }
  } catch (error) {
    throw unusable('cannot-write', folder, `Cannot make a store in ${folder}: ${reason(error)}`);
  }
  return knownStore(folder);
}

/** A store that is there already. */
export async function knownStore(folder: string): Promise<Store> {
  const text = await readFile(join(folder, 'store.json'), 'utf8').catch(() => '');
  const read = named.safeParse(dataOf(text));
  if (!read.success) throw unusable('no-store', folder, `${folder} is no store of orders.`);
  return { folder, id: read.data.id };
}

export const chunkFile = ({ folder }: Store, chunk: string): string =>
  join(folder, 'chunks', `${chunk}.ndjson`);

export const answersFile = ({ folder }: Store, chunk: string, code: string): string =>
  join(folder, 'answers', `${answersName(chunk, code)}.ndjson.gz`);

export const isAnswered = (store: Store, chunk: string, code: string): Promise<boolean> =>
  isThere(answersFile(store, chunk, code));

export const refusedFile = ({ folder }: Store, set: string): string =>
  join(folder, 'sets', `${set}.refused.ndjson`);

export const writeManifest = ({ folder }: Store, set: string, manifest: Manifest): Promise<void> =>
  writeWhole(join(folder, 'sets', `${set}.json`), [Buffer.from(`${JSON.stringify(manifest)}\n`)]);

/** The names of the sets in a store. */
export async function setsIn({ folder }: Store): Promise<readonly string[]> {
  const names = await readdir(join(folder, 'sets'));
  return names.flatMap((name) => /^([0-9a-f]{12})\.json$/.exec(name)?.[1] ?? []).sort();
}

export async function readManifest({ folder }: Store, set: string): Promise<Manifest> {
  const file = join(folder, 'sets', `${set}.json`);
  const read = manifestSchema.safeParse(dataOf(await readFile(file, 'utf8')));
  if (!read.success) throw unusable('chunk-damaged', file, `${file} is not as it was written.`);
  return read.data;
}

const asideFile = ({ folder }: Store, chunk: string, code: string): string =>
  join(folder, 'set-aside', `${answersName(chunk, code)}.json`);

/** Notes that nobody came to an end with a chunk. */
export const setAside = (store: Store, chunk: string, code: string, why: string): Promise<void> =>
  writeWhole(asideFile(store, chunk, code), [Buffer.from(`${JSON.stringify({ chunk, why })}\n`)]);

/** Why a chunk was set aside, where it was. */
export async function whySetAside(store: Store, chunk: string, code: string): Promise<string | undefined> {
  const text = await readFile(asideFile(store, chunk, code), 'utf8').catch(() => undefined);
  if (text === undefined) return undefined;
  const read = z.object({ why: z.string() }).safeParse(dataOf(text));
  return read.success ? read.data.why : 'nobody knows why';
}

export const takeUpAgain = (store: Store, chunk: string, code: string): Promise<void> =>
  rm(asideFile(store, chunk, code), { force: true });

/** Takes away what killed workers had begun to write of answers that are whole now. */
export async function clearBegun(store: Store, chunk: string, code: string): Promise<void> {
  const folder = join(store.folder, 'answers');
  const whole = `${answersName(chunk, code)}.ndjson.gz`;
  for (const name of await readdir(folder))
    if (isBeside(name, whole)) await rm(join(folder, name), { force: true }).catch(() => undefined);
}

const isThere = (file: string): Promise<boolean> =>
  access(file).then(
    () => true,
    () => false,
  );

/** What a text says as JSON; nothing where it is none. */
function dataOf(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
}

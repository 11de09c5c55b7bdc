import { readFile } from 'node:fs/promises';
import { pipeline } from 'node:stream/promises';
import { createGzip } from 'node:zlib';
import { type OnFull, writeWhole } from '../files/whole-file.ts';
import { longestLine } from '../input/json-line.ts';
import { type FileLine, lines } from '../input/lines.ts';
import { unusable } from '../input/unusable.ts';
import { soonerForMany } from '../many-bodies/compile-sooner.ts';
import { inBatches, inOrder } from '../many-bodies/in-order.ts';
import { startWorkers, type WorkerPool } from '../many-bodies/workers.ts';
import { type AnsweredLine, faultOf } from './answer.ts';
import { chunkName } from './manifest.ts';
import { answersFile, chunkFile, clearBegun, isAnswered, type Store, takeUpAgain } from './store.ts';

export type OrderPool = WorkerPool<FileLine, AnsweredLine>;

/** Orders handed to a thread at once: few, for an answer may be a megabyte. */
const batchSize = 4;

/** Batches on their way for each thread: one in work, one waiting. */
const batchesEach = 2;

/** The longest that a batch may take (ms): the largest PDFs take a few seconds. */
const patience = 120_000;

/**
 * Threads that answer orders; one alone too, so that this one is free to tell the server that the work goes on, and an order that
 * ends a thread ends no more than that.
 */
export function orderPool(threads: number, told: (words: string) => void): OrderPool {
  const pool: OrderPool = startWorkers(threads, { does: 'orders' }, told, faultOf, patience);
  const drafted = soonerForMany(threads);
  return {
    ...pool,
    work: (batch) => {
      drafted(batch.length, 0);
      return pool.work(batch);
    },
  };
}

/** The answers to orders, batch by batch, in their order and in constant memory. */
export async function* answersTo(
  orders: AsyncIterable<FileLine>,
  pool: OrderPool,
  threads: number,
): AsyncGenerator<readonly AnsweredLine[]> {
  const batches = inBatches(orders, batchSize);
  for await (const { answer } of inOrder(batches, pool.work, threads * batchesEach)) yield answer;
}

/**
 * Answers a chunk of a store, if nobody has, and says whether it has done so. What it writes depends on nothing but the chunk
 * and the code. Throws `Unusable` where the chunk is not what its name says.
 */
export async function workChunk(
  store: Store,
  { chunk, code }: { readonly chunk: string; readonly code: string },
  pool: OrderPool,
  threads: number,
  onFull: OnFull,
): Promise<boolean> {
  if (await isAnswered(store, chunk, code)) return false;
  const orders = await readChunk(store, chunk);
  const out = answersFile(store, chunk, code);
  async function* texts() {
    for await (const answers of answersTo(orders(), pool, threads))
      yield Buffer.from(answers.map(({ text }) => text).join(''));
  }
  const packed = createGzip();
  try {
    await Promise.all([pipeline(texts, packed), writeWhole(out, packed, onFull)]);
  } catch (error) {
    // Whoever was quicker with the same chunk has put everything in order, and taken away what was begun here.
    if (await isAnswered(store, chunk, code)) return false;
    throw error;
  }
  await clearBegun(store, chunk, code);
  await takeUpAgain(store, chunk, code);
  return true;
}

/** The lines of a chunk, once its bytes are found to be those that it is named by. */
export async function readChunk(store: Store, chunk: string): Promise<() => AsyncGenerator<FileLine>> {
  const file = chunkFile(store, chunk);
  const bytes = await readFile(file).catch(() => undefined);
  if (!bytes || chunkName(bytes) !== chunk)
    throw unusable(
      'chunk-damaged',
      file,
      `${file} ${bytes ? 'is not what was sent' : 'is not there'}. Send the orders again.`,
    );
  return () => lines(partsOf(bytes), longestLine);
}

async function* partsOf(bytes: Buffer): AsyncGenerator<Buffer> {
  yield bytes;
}

import { isFull, type OnFull } from '../files/whole-file.ts';
import { reason } from '../input/reason.ts';
import { Unusable } from '../input/unusable.ts';
import { tell } from '../output/say.ts';
import type { Session } from '../session.ts';
import { mostTries, type Queue, type Task } from './queue.ts';
import { knownStore, readManifest, type Store, setAside, setsIn } from './store.ts';
import { type OrderPool, readChunk, workChunk } from './work-chunk.ts';

/** Somebody asked the worker to stop. */
export class Stopped extends Error {}

/** What a worker works with. */
export interface Bench {
  readonly session: Session;
  readonly store: Store;
  readonly code: string;
  readonly pool: OrderPool;
  readonly threads: number;
  /** Whether the worker was asked to stop. */
  readonly isStopped: () => boolean;
}

/** How many chunks came to what. */
export interface Tally {
  chunks: number;
  there: number;
  setAside: number;
}

/** Milliseconds between two looks whether a full disk has room again, and two looks for new orders. */
const pause = 2000;

const wait = (ms: number): Promise<void> => new Promise((resolve) => setTimeout(resolve, ms));

/**
 * Waits while the disk is full. The store is one, so another worker would find no more room: the chunk is kept, and goes on where
 * it had stopped.
 */
function waiting({ session, store, isStopped }: Bench): OnFull {
  let told = false;
  return async () => {
    if (!told) tell(session, `note: no room left in ${store.folder}; work goes on when there is some\n`);
    told = true;
    await wait(pause);
    if (isStopped()) throw new Stopped();
  };
}

/** Answers one chunk; where a sync has lost what was written to a disk that is full, it is answered over. */
async function answered(bench: Bench, chunk: string): Promise<boolean> {
  const { store, code, pool, threads } = bench;
  const onFull = waiting(bench);
  for (;;) {
    try {
      return await workChunk(store, { chunk, code }, pool, threads, onFull);
    } catch (error) {
      if (!isFull(error)) throw error;
      await onFull();
    }
  }
}

const count = (tally: Tally, isNew: boolean): void => {
  if (isNew) tally.chunks += 1;
  else tally.there += 1;
};

/** Works off all chunks of a store that this code is asked for, without any server. */
export async function workOffStore(bench: Bench): Promise<Tally> {
  const { store, code, session } = bench;
  const tally: Tally = { chunks: 0, there: 0, setAside: 0 };
  for (const set of await setsIn(store)) {
    const manifest = await readManifest(store, set);
    if (manifest.code !== code) {
      tell(session, `note: set ${set} was sent by another version of the program: send it again\n`, 2);
      continue;
    }
    for (const { name } of manifest.chunks) {
      if (bench.isStopped()) return tally;
      try {
        count(tally, await answered(bench, name));
      } catch (error) {
        if (bench.isStopped()) return tally;
        if (!(error instanceof Unusable)) throw error;
        tally.setAside += 1;
        tell(session, `note: chunk ${name} is set aside: ${reason(error)}\n`, 2);
        await setAside(store, name, code, reason(error));
      }
    }
  }
  return tally;
}

/** Takes chunks from a server one after another until it is asked to stop, or (`untilDone`) until none is left with anybody. */
export async function workOffQueue(bench: Bench, queue: Queue, untilDone: boolean): Promise<Tally> {
  const tally: Tally = { chunks: 0, there: 0, setAside: 0 };
  while (!bench.isStopped()) {
    const task = await queue.next(pause);
    if (!task) {
      if (untilDone && (await queue.isDone())) break;
      continue;
    }
    const rest = task.keep();
    try {
      await workOffTask(bench, task, tally);
    } finally {
      rest();
    }
  }
  return tally;
}

async function workOffTask(bench: Bench, task: Task, tally: Tally): Promise<void> {
  const { session, store, code } = bench;
  const { chunk } = task;
  if (task.tries > mostTries) {
    const why = await faultOfChunk(store, chunk);
    await setAside(store, chunk, code, why);
    task.drop();
    tally.setAside += 1;
    tell(session, `note: chunk ${chunk} is set aside: ${why}\n`, 2);
    return;
  }
  try {
    count(tally, await answered(bench, chunk));
  } catch (error) {
    if (bench.isStopped()) return task.giveBack();
    task.giveBack(pause);
    // A store that is gone is no fault of the chunk.
    await knownStore(store.folder);
    if (!(error instanceof Unusable)) throw error;
    tell(session, `note: chunk ${chunk} is given back: ${reason(error)}\n`, 2);
    return;
  }
  await task.done();
}

const faultOfChunk = (store: Store, chunk: string): Promise<string> =>
  readChunk(store, chunk).then(
    () => `${mostTries} workers began it, and none came to its end`,
    (error) => reason(error),
  );

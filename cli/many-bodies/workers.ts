import { Worker } from 'node:worker_threads';
import type { WovenCloth } from '../../engine/cloth/cloth.ts';
import { besideProgram } from '../beside.ts';
import { reason } from '../input/reason.ts';
import type { DraftThere } from './draft-there.ts';

/** What a worker is told once, when it starts: what to do, with which garment. */
export type WorkerTask =
  | {
      readonly does: 'walk';
      readonly draft: DraftThere;
      readonly styling: unknown;
      /** Whether girths and lengths of edges are told too. */
      readonly lengths: boolean;
    }
  | {
      readonly does: 'wear';
      readonly draft: DraftThere;
      readonly styling: unknown;
      readonly cloth: WovenCloth;
      /** Size of triangles, mm. */
      readonly spacing: number;
    }
  | { readonly does: 'prove'; readonly draft: DraftThere }
  | { readonly does: 'orders' };

/** Workers that work through batches, each on a thread of its own. */
export interface WorkerPool<Item, Answer> {
  readonly work: (batch: readonly Item[]) => Promise<readonly Answer[]>;
  readonly stop: () => Promise<void>;
}

/**
 * Starts `count` workers. Batches go round among them; a worker takes its batches one after another. Where a worker dies,
 * `told` hears of it and another takes its place. Each batch that was on its way is worked on once more, one by one, by a worker
 * that has nothing else in hand: so only an item over which that one dies too is answered as the program's fault. A worker that does
 * not answer a batch within `patience` milliseconds is taken for dead.
 */
export function startWorkers<Item, Answer>(
  count: number,
  task: WorkerTask,
  told: (words: string) => void,
  faultOf: (item: Item, error: unknown) => Answer,
  patience?: number,
): WorkerPool<Item, Answer> {
  type Pool = WorkerPool<Item, Answer>;
  const members: Pool[] = Array.from({ length: count }, () => startWorker(task, patience));
  const alone = new Set<Pool>();
  let next = 0;
  let stopped = false;
  const startAlone = (): Pool => {
    const one: Pool = startWorker(task, patience);
    alone.add(one);
    return one;
  };
  const end = async (one: Pool): Promise<void> => {
    alone.delete(one);
    await one.stop();
  };
  const onceMore = async (batch: readonly Item[]): Promise<readonly Answer[]> => {
    const answers: Answer[] = [];
    let worker = startAlone();
    for (const item of batch) {
      try {
        answers.push(...(await worker.work([item])));
      } catch (again) {
        if (stopped) throw again;
        answers.push(faultOf(item, again));
        await end(worker);
        worker = startAlone();
      }
    }
    await end(worker);
    return answers;
  };
  return {
    work: async (batch) => {
      const at = next++ % count;
      const member = members[at] as Pool;
      try {
        return await member.work(batch);
      } catch (error) {
        if (stopped) throw error;
        if (members[at] === member) {
          told(`note: a thread stopped (${reason(error)}); what it had in work is taken up again\n`);
          members[at] = startWorker(task, patience);
        }
        return onceMore(batch);
      }
    },
    stop: async () => {
      stopped = true;
      for (const member of [...members, ...alone]) await member.stop();
    },
  };
}

/**
 * What a thread drafts with is 25 MB, and all it makes besides is garbage at once. Left to itself the collector lets that pile up in
 * proportion to the most that it may ever hold, some gigabytes; told of one, a worker takes a fifth less memory, and hardly more time.
 * Room for what is new is bounded too: a worker of dresses with their sheets takes 183 MB in all instead of 218. Half of this room
 * would save 25 MB more for a twentieth of the time, a quarter 40 MB for a fourth of it.
 */
const heap = { maxOldGenerationSizeMb: 1024, maxYoungGenerationSizeMb: 48 } as const;

function startWorker<Item, Answer>(task: WorkerTask, patience: number | undefined): WorkerPool<Item, Answer> {
  const worker = new Worker(besideProgram('worker.mjs'), {
    workerData: task,
    resourceLimits: heap,
  });
  const waiting: {
    readonly resolve: (answers: readonly Answer[]) => void;
    readonly reject: (error: unknown) => void;
  }[] = [];
  let alarm: NodeJS.Timeout | undefined;
  const listen = (): void => {
    clearTimeout(alarm);
    if (patience === undefined || waiting.length === 0) return;
    alarm = setTimeout(() => {
      died(new Error(`it took longer than ${patience / 1000} seconds`));
      void worker.terminate();
    }, patience);
  };
  worker.on('message', (answers: readonly Answer[]) => {
    waiting.shift()?.resolve(answers);
    listen();
  });
  let failure: unknown;
  const died = (error: unknown): void => {
    clearTimeout(alarm);
    failure ??= error;
    for (const { reject } of waiting.splice(0)) reject(failure);
  };
  worker.on('error', died);
  worker.on('exit', (code) => died(new Error(`it ended with ${code}`)));
  return {
    work: (batch) =>
      new Promise((resolve, reject) => {
        if (failure !== undefined) return reject(failure);
        waiting.push({ resolve, reject });
        if (waiting.length === 1) listen();
        worker.postMessage(batch);
      }),
    stop: async () => {
      await worker.terminate();
    },
  };
}

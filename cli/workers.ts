import { Worker } from 'node:worker_threads';
import type { Line } from './lines.ts';
import type { WalkedLine } from './walk-line.ts';

/** What a worker is told once, when it starts. */
export interface WorkerTask {
  readonly garment: string;
  readonly styling: unknown;
}

/** Workers that walk batches of lines, each on a thread of its own. */
export interface WorkerPool {
  readonly walk: (batch: readonly Line[]) => Promise<readonly WalkedLine[]>;
  readonly stop: () => Promise<void>;
}

/** Starts `count` workers. Batches go round among them; a worker takes its batches one after another. */
export function startWorkers(count: number, task: WorkerTask): WorkerPool {
  const members = Array.from({ length: count }, () => startWorker(task));
  let next = 0;
  return {
    walk: (batch) => {
      const member = members[next % count];
      next += 1;
      return member ? member.walk(batch) : Promise.resolve([]);
    },
    stop: async () => {
      for (const member of members) await member.stop();
    },
  };
}

function startWorker(task: WorkerTask): WorkerPool {
  const worker = new Worker(new URL('./worker.mjs', import.meta.url), { workerData: task });
  const waiting: {
    readonly resolve: (walked: readonly WalkedLine[]) => void;
    readonly reject: (error: unknown) => void;
  }[] = [];
  worker.on('message', (walked: readonly WalkedLine[]) => waiting.shift()?.resolve(walked));
  let failure: unknown;
  worker.on('error', (error) => {
    failure = error;
    for (const { reject } of waiting.splice(0)) reject(error);
  });
  return {
    walk: (batch) =>
      new Promise((resolve, reject) => {
        if (failure !== undefined) return reject(failure);
        waiting.push({ resolve, reject });
        worker.postMessage(batch);
      }),
    stop: async () => {
      await worker.terminate();
    },
  };
}

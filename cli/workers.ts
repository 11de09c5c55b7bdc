import { Worker } from 'node:worker_threads';
import type { Line } from './lines.ts';
import { faultOf, type WalkedLine } from './walk-line.ts';
import { reason } from './write-files.ts';

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

/**
 * Starts `count` workers. Batches go round among them; a worker takes its batches one after another. Where a worker dies,
 * `told` hears of it and another takes its place: the lines on their way are walked once more, one by one, so that only a
 * line over which that one dies too is answered as the program's fault.
 */
export function startWorkers(count: number, task: WorkerTask, told: (words: string) => void): WorkerPool {
  const members = Array.from({ length: count }, () => startWorker(task));
  let next = 0;
  let stopped = false;
  const replaced = (at: number, dead: WorkerPool): WorkerPool => {
    if (members[at] === dead) members[at] = startWorker(task);
    return members[at] as WorkerPool;
  };
  return {
    walk: async (batch) => {
      const at = next++ % count;
      const member = members[at] as WorkerPool;
      try {
        return await member.walk(batch);
      } catch (error) {
        if (stopped) throw error;
        told(`note: a thread stopped (${reason(error)}); its lines are walked again\n`);
        const walked: WalkedLine[] = [];
        for (const line of batch) {
          const other = replaced(at, member);
          try {
            walked.push(...(await other.walk([line])));
          } catch (again) {
            walked.push(faultOf(line, again));
            members[at] = startWorker(task);
          }
        }
        return walked;
      }
    },
    stop: async () => {
      stopped = true;
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
  const died = (error: unknown): void => {
    failure ??= error;
    for (const { reject } of waiting.splice(0)) reject(failure);
  };
  worker.on('error', died);
  worker.on('exit', (code) => died(new Error(`it ended with ${code}`)));
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

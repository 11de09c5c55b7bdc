import { type MessagePort, parentPort, workerData } from 'node:worker_threads';
import { garments } from '../drafts/garments.ts';
import type { Draft } from '../engine/pattern/draft.ts';
import type { TrialCase } from '../engine/proof/trial-case.ts';
import { verdictOf } from '../engine/proof/verdict.ts';
import type { CommandTask } from './apart/between.ts';
import { runThere } from './apart/run-there.ts';
import type { FileLine } from './input/lines.ts';
import { findGarment } from './input/options.ts';
import type { DraftThere } from './many-bodies/draft-there.ts';
import { walkLine } from './many-bodies/walk-line.ts';
import type { WorkerTask } from './many-bodies/workers.ts';
import { ownDraft } from './own-draft/own-draft.ts';

const task: WorkerTask | CommandTask = workerData;
if (parentPort) {
  if (task.does === 'command') await runThere(task, garments, parentPort);
  else await answerBatches(task, parentPort);
}

/** Batches are answered in the order in which they came, though some work waits for files. */
async function answerBatches(task: WorkerTask, port: MessagePort): Promise<void> {
  const work = await workOf(task);
  let turn = Promise.resolve();
  port.on('message', (batch: readonly unknown[]) => {
    turn = turn.then(async () => {
      const answers: unknown[] = [];
      for (const item of batch) answers.push(await work(item));
      port.postMessage(answers);
    });
  });
}

async function workOf(task: WorkerTask): Promise<(item: unknown) => unknown> {
  switch (task.does) {
    case 'walk': {
      const draft = await draftOf(task.draft);
      return (line) => walkLine(draft, task.styling, line as FileLine, () => performance.now(), task.lengths);
    }
    case 'wear': {
      const { wearLine } = await import('./wear/wear-line.ts');
      const draft = await draftOf(task.draft);
      return (line) => wearLine(draft, task, line as FileLine, () => performance.now());
    }
    case 'prove': {
      const draft = await draftOf(task.draft);
      return (trial) => verdictOf(draft, trial as TrialCase);
    }
    case 'orders': {
      const { answerLine } = await import('./orders/answer.ts');
      return (line) => answerLine(line as FileLine);
    }
  }
}

async function draftOf({ garment, file }: DraftThere): Promise<Draft> {
  return file === undefined ? findGarment(garments, garment) : ownDraft(file);
}

import { parentPort, workerData } from 'node:worker_threads';
import { garments } from '../drafts/garments.ts';
import type { TrialCase } from '../engine/proof/trial-case.ts';
import { verdictOf } from '../engine/proof/verdict.ts';
import type { FileLine } from './lines.ts';
import { findGarment } from './options.ts';
import { ownDraft } from './own-draft.ts';
import { walkLine } from './walk-line.ts';
import type { WorkerTask } from './workers.ts';

const task: WorkerTask = workerData;
const work = await workOf(task);

parentPort?.on('message', (batch: readonly unknown[]) => {
  parentPort?.postMessage(batch.map(work));
});

async function workOf(task: WorkerTask): Promise<(item: unknown) => unknown> {
  if (task.does === 'walk') {
    const draft = findGarment(garments, task.garment);
    return (line) => walkLine(draft, task.styling, line as FileLine, () => performance.now(), task.lengths);
  }
  const draft = task.file === undefined ? findGarment(garments, task.garment) : await ownDraft(task.file);
  return (trial) => verdictOf(draft, trial as TrialCase);
}

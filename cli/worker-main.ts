import { parentPort, workerData } from 'node:worker_threads';
import { garments } from '../drafts/garments.ts';
import type { Line } from './lines.ts';
import { findGarment } from './options.ts';
import { walkLine } from './walk-line.ts';
import type { WorkerTask } from './workers.ts';

const task: WorkerTask = workerData;
const draft = findGarment(garments, task.garment);

parentPort?.on('message', (batch: readonly Line[]) => {
  parentPort?.postMessage(
    batch.map((line) => walkLine(draft, task.styling, line, () => performance.now(), task.lengths)),
  );
});

import { bodyLines, sizeOf } from '../input/bodies-file.ts';
import type { FileLine } from '../input/lines.ts';
import { unusable } from '../input/unusable.ts';
import { progress } from '../output/progress.ts';
import type { ExitCode, Session } from '../session.ts';
import { soonerForMany } from './compile-sooner.ts';
import { inBatches, inOrder } from './in-order.ts';
import { faultOf, type WalkedLine } from './walk-line.ts';
import { startWorkers, type WorkerTask } from './workers.ts';

/** Batches on their way for each worker: one in work, one waiting. */
const batchesEach = 2;

/** What is done with every body of a file. */
export interface EachBody {
  /** What the bar says. */
  readonly label: string;
  readonly workers: number;
  /** Lines handed to a worker at once. */
  readonly batchSize: number;
  /** What workers are told to do; none where it can only be done on this thread. */
  readonly task: WorkerTask | undefined;
  /** The same on this thread. */
  readonly here: (line: FileLine) => WalkedLine;
}

/**
 * Prints one result a line for one body a line, in the order of the file, in constant memory: only a few batches are ever on
 * their way. The answer is the gravest exit code of all lines.
 */
export async function eachBody(
  session: Session,
  file: string,
  { label, workers, batchSize, task, here }: EachBody,
): Promise<ExitCode> {
  const size = await sizeOf(file);
  const bar = progress(session, label);
  const pool = workers > 1 && task ? startWorkers(workers, task, session.tell, faultOf) : undefined;
  const work = async (batch: readonly FileLine[]): Promise<readonly WalkedLine[]> =>
    pool ? pool.work(batch) : batch.map(here);
  const drafted = soonerForMany(workers);
  let gravest: ExitCode = 0;
  let any = false;
  try {
    const batches = inBatches(bodyLines(file), batchSize);
    for await (const { item, answer } of inOrder(batches, work, workers * batchesEach)) {
      any = true;
      if (!session.isRead()) break;
      for (const { code } of answer) if (code > gravest) gravest = code;
      await session.write(answer.map(({ text }) => text).join(''));
      const share = size > 0 ? (item.at(-1)?.end ?? 0) / size : 0;
      bar.reached(share);
      drafted(answer.length, share);
    }
    if (!any)
      throw unusable(
        'no-measurements',
        file,
        `There are no measurements in ${file}: write one body a line, as JSON, or a table with one a row.`,
      );
  } finally {
    bar.done();
    await pool?.stop();
  }
  return gravest;
}

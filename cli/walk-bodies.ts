import { garments } from '../drafts/garments.ts';
import { resolveStyling } from '../engine/pattern/styling-values.ts';
import { bodyLines, sizeOf } from './bodies-file.ts';
import type { AskedGarment } from './drafted-garment.ts';
import { inBatches, inOrder } from './in-order.ts';
import type { FileLine } from './lines.ts';
import { progress } from './progress.ts';
import type { ExitCode, Session } from './session.ts';
import { Unusable, unusable } from './unusable.ts';
import { faultOf, type WalkedLine, walkLine } from './walk-line.ts';
import { startWorkers } from './workers.ts';

/** Lines handed to a worker at once: enough to make the hand-over cheap, few enough to keep memory small. */
const batchSize = 16;

/** Batches on their way for each worker: one in work, one waiting. */
const batchesEach = 2;

/**
 * Walks one body a line and prints one result a line, in the order of the file, in constant memory: only a few
 * batches are ever on their way. The answer is the gravest exit code of all lines.
 */
export async function walkBodies(
  session: Session,
  { draft, styling }: AskedGarment,
  file: string,
  { workers, lengths = false }: { readonly workers: number; readonly lengths?: boolean | undefined },
): Promise<ExitCode> {
  // What no body can be drafted with is said once, not on every line.
  const usable = resolveStyling(draft.choices, styling);
  if (!usable.ok) throw new Unusable(usable.issues);
  const clashes = draft.clashes?.(usable.value) ?? [];
  if (clashes.length > 0) throw new Unusable(clashes);
  const size = await sizeOf(file);
  const bar = progress(session, 'walking');
  // Threads know the garments of the program; a draft written elsewhere is walked on this one.
  const threaded = workers > 1 && garments.includes(draft);
  const pool = threaded
    ? startWorkers(workers, { does: 'walk', garment: draft.name, styling, lengths }, session.tell, faultOf)
    : undefined;
  const walk = async (batch: readonly FileLine[]): Promise<readonly WalkedLine[]> =>
    pool ? pool.work(batch) : batch.map((line) => walkLine(draft, styling, line, session.clock, lengths));
  let gravest: ExitCode = 0;
  let walkedAny = false;
  try {
    const batches = inBatches(bodyLines(file), batchSize);
    for await (const { item, answer } of inOrder(batches, walk, workers * batchesEach)) {
      walkedAny = true;
      if (!session.isRead()) break;
      for (const { code } of answer) if (code > gravest) gravest = code;
      await session.write(answer.map(({ text }) => text).join(''));
      bar.reached(size > 0 ? (item.at(-1)?.end ?? 0) / size : 0);
    }
    if (!walkedAny)
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

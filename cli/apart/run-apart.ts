import { resolve } from 'node:path';
import { getHeapStatistics } from 'node:v8';
import { Worker } from 'node:worker_threads';
import type { Issue } from '../../engine/issue.ts';
import { besideProgram } from '../beside.ts';
import { sayIssues } from '../output/say-issues.ts';
import { issuesResult, json } from '../output/walk-result.ts';
import { draftSource } from '../own-draft/draft-source.ts';
import type { RefusalResult } from '../results/issue.ts';
import type { ExitCode, Session } from '../session.ts';
import { type CommandTask, type FromThread, type Signal, signals, type ToThread } from './between.ts';

/** What a draft of one's own may take. */
interface DraftLimits {
  /** A file takes half a second to be read, on a slow machine a few; one that takes so long, ms, runs for ever. */
  readonly reading: number;
  /** No command takes half as much memory, MB; what a draft makes without end would otherwise fill the machine's. */
  readonly memory: number;
}

const usually: DraftLimits = { reading: 20_000, memory: 2048 };

/** Whether a command line has a draft of one's own in it. */
export const hasOwnDraft = (words: readonly string[]): boolean =>
  ownFiles(words).length > 0 || words.includes('--draft');

/** The files of drafts that a command line names. */
function ownFiles(words: readonly string[]): readonly string[] {
  const named = words.flatMap((word, i) => {
    if (word === '--draft') return words[i + 1] ?? [];
    return word.startsWith('--draft=') ? word.slice('--draft='.length) : [];
  });
  const proved = words[0] === 'prove' ? words.slice(1).filter((word) => /\.[cm]?[jt]s$/.test(word)) : [];
  return [...named, ...proved];
}

/**
 * Runs a command line on a thread of its own, in a bounded memory. Where a draft of one's own comes to no end while it is read, or
 * fills that memory, the thread is ended and that is told like any other refusal. Only bugs throw.
 */
export async function runApart(
  words: readonly string[],
  session: Session,
  limits: DraftLimits = usually,
): Promise<ExitCode> {
  const { live, colour, columns } = session;
  const task: CommandTask = { does: 'command', words, live, colour, columns };
  const limit = Math.min(limits.memory, Math.floor(getHeapStatistics().heap_size_limit / 2 ** 20));
  const thread = new Worker(besideProgram('worker.mjs'), {
    workerData: task,
    resourceLimits: { maxOldGenerationSizeMb: limit },
    stdin: words.includes('-'),
  });
  if (thread.stdin) process.stdin.pipe(thread.stdin);
  const signalled = new Map(signals.map((signal) => [signal, () => tell({ tells: 'signal', signal })]));
  const tell = (message: ToThread): void => thread.postMessage(message);
  const heed = (signal: Signal, heeds: boolean): void => {
    const told = signalled.get(signal);
    if (!told) return;
    process.off(signal, told);
    if (heeds) process.on(signal, told);
  };
  let written = false;
  let reading: string | undefined;
  let alarm: NodeJS.Timeout | undefined;
  const refused = async (issue: Issue): Promise<ExitCode> => {
    const refusal: RefusalResult = { ok: false, issues: issuesResult([issue]) };
    if (words.includes('--json') && !written) await session.write(json(refusal));
    sayIssues(session, [issue], 'mm');
    return 2;
  };
  const endless = (file: string): Promise<ExitCode> =>
    refused({
      code: 'draft-endless',
      severity: 'error',
      path: file,
      message: `The draft came to no end in ${limits.reading / 1000} seconds while it was read. Does a loop in it never end, or does it wait for what never comes?`,
    });
  try {
    return await new Promise<ExitCode>((done, failed) => {
      let isOver = false;
      // A thread that was ended is heard to end, too.
      const over = (refusal: () => Promise<ExitCode>): void => {
        if (!isOver) done(refusal());
        isOver = true;
      };
      const heard = async (message: FromThread): Promise<void> => {
        switch (message.says) {
          case 'result':
            written = true;
            await session.write(message.text);
            return tell({ tells: 'taken', isRead: session.isRead() });
          case 'words':
            return session.tell(message.text);
          case 'heeds':
            return heed(message.signal, message.heeds);
          case 'reading': {
            const { file } = message;
            reading = file;
            clearTimeout(alarm);
            if (file === undefined) return;
            alarm = setTimeout(() => {
              over(() => endless(file));
            }, limits.reading);
            return;
          }
          case 'end':
            return done(message.code);
          case 'fault':
            return failed(message.error);
        }
      };
      thread.on('message', (message: FromThread) => void heard(message).catch(failed));
      thread.on('error', (error: NodeJS.ErrnoException) => {
        if (error.code !== 'ERR_WORKER_OUT_OF_MEMORY') return failed(error);
        over(() => refused(overfull(reading, words, limit)));
      });
      thread.on('exit', (code) => {
        if (!isOver) failed(new Error(`its thread ended with ${code}`));
      });
    });
  } finally {
    clearTimeout(alarm);
    for (const signal of signals) heed(signal, false);
    if (thread.stdin) process.stdin.unpipe().destroy();
    await thread.terminate();
  }
}

/** What is told where a draft filled the memory, MB: while it was read, or at the line on which it draws. */
function overfull(reading: string | undefined, words: readonly string[], limit: number): Issue {
  const file = reading ?? ownFiles(words)[0] ?? '';
  const source = reading === undefined ? draftSource(file, resolve(file)).placeOf(['draw']) : undefined;
  const when = reading === undefined ? 'The draft' : 'While it was read, the draft';
  const message = `${when} filled the memory that it may have, ${limit} MB. Does a loop in it keep all that it makes?`;
  return {
    code: 'draft-fills-memory',
    severity: 'error',
    path: source ? 'draw' : file,
    message,
    ...(source && { source }),
  };
}

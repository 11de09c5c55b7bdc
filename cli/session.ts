import type { Draft } from '../engine/pattern/draft.ts';

/** What a command needs of the world around it. Tests hand in their own; `main.ts` hands in the process. */
export interface Session {
  readonly garments: readonly Draft[];
  /** The files of those that are drafts of one's own. */
  readonly draftFiles?: ReadonlyMap<Draft, string>;
  /** Results, on standard output. Resolves when there is room for more. */
  readonly write: (text: string) => Promise<void>;
  /** Whether anybody still reads the results: `bodkin list | head -1` stops early. */
  readonly isRead: () => boolean;
  /** Words for the reader, on standard error. */
  readonly tell: (text: string) => void;
  /** Standard error is a terminal, so a progress bar may be drawn there. */
  readonly live: boolean;
  /** Standard output is a terminal that shows colours, and the reader has not asked for none. */
  readonly colour: boolean;
  /** How many columns the reader's terminal has. */
  readonly columns: number;
  /**
   * Has Ctrl-C told to `told` instead of ending the program, the next one only; returns what ends that. It is heard while the
   * program waits.
   */
  readonly onInterrupt: (told: () => void) => () => void;
  /** Told while a file of one's own is read as a module, which nothing on this thread can end; and of none once it is. */
  readonly reading?: (file: string | undefined) => void;
  /** Milliseconds since some fixed moment. */
  readonly clock: () => number;
}

/** A fault of the program itself (EX_SOFTWARE of sysexits.h), as against 1 and 2, which speak of the input. */
export const FAULT = 70;

/** 0: all true. 1: a check failed. 2: the input cannot be used. A greater one is graver. */
export type ExitCode = 0 | 1 | 2 | typeof FAULT;

/** The columns of a terminal that does not say. */
const usualColumns = 80;

/** No terminal is narrower: a smaller number is no number of columns. */
const fewestColumns = 20;

/**
 * The columns of the terminal that results go to, else as `COLUMNS` says (POSIX.1-2017, chapter 8), else those of the one
 * that words go to, else as usual.
 */
function columnsOf({ stdout, stderr, env }: NodeJS.Process): number {
  const known = [stdout.columns, Number(env.COLUMNS), stderr.columns].find((each) => each >= fewestColumns);
  return known === undefined ? usualColumns : Math.floor(known);
}

/** The session of this process, `isLost` if its standard output leads nowhere. `NO_COLOR` (no-color.org) and terminals called `dumb` get plain text. */
export function processSession(garments: readonly Draft[], isLost: boolean): Session {
  const { stdout, stderr, env } = process;
  const left = new Set<NodeJS.WriteStream>();
  for (const stream of [stdout, stderr])
    stream.on('error', (error) => {
      if (hasLeft(error)) left.add(stream);
    });
  const tell = (text: string): void => {
    if (!left.has(stderr)) stderr.write(text);
  };
  let isFirst = true;
  return {
    garments,
    write: async (text) => {
      if (isFirst && isLost) tell(lost);
      isFirst = false;
      if (!left.has(stdout) && !stdout.write(text)) await roomAgain(stdout);
    },
    isRead: () => !left.has(stdout),
    tell,
    live: stderr.isTTY === true && env.TERM !== 'dumb',
    colour: stdout.isTTY === true && !env.NO_COLOR && env.TERM !== 'dumb',
    columns: columnsOf(process),
    onInterrupt: (told) => {
      process.once('SIGINT', told);
      return () => process.off('SIGINT', told);
    },
    clock: () => performance.now(),
  };
}

/** Told once, for whoever calls the program so may want its exit code alone. */
const lost = 'note: standard output is closed, or leads nowhere; what is printed is lost\n';

/** Whether a stream failed because whoever read it has stopped early (`bodkin list | head`). */
export const hasLeft = (error: NodeJS.ErrnoException): boolean => error.code === 'EPIPE';

/** Waits until a stream has taken what was written, or takes nothing any more. */
const roomAgain = (stream: NodeJS.WriteStream): Promise<void> =>
  new Promise((resolve) => {
    const done = (): void => {
      stream.off('drain', done).off('error', done);
      resolve();
    };
    stream.on('drain', done).on('error', done);
  });

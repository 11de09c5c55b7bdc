import type { Draft } from '../engine/pattern/draft.ts';

/** What a command needs of the world around it. Tests hand in their own; `main.ts` hands in the process. */
export interface Session {
  readonly garments: readonly Draft[];
  /** Results, on standard output. Resolves when there is room for more. */
  readonly write: (text: string) => Promise<void>;
  /** Words for the reader, on standard error. */
  readonly tell: (text: string) => void;
  /** Standard error is a terminal, so a progress bar may be drawn there. */
  readonly live: boolean;
  /** Standard output is a terminal that shows colours, and the reader has not asked for none. */
  readonly colour: boolean;
  /** How many columns the reader's terminal has. */
  readonly columns: number;
  /** Milliseconds since some fixed moment. */
  readonly clock: () => number;
}

/** 0: all true. 1: a check failed. 2: the input cannot be used. */
export type ExitCode = 0 | 1 | 2;

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

/** The session of this process. `NO_COLOR` (no-color.org) and terminals called `dumb` get plain text. */
export function processSession(garments: readonly Draft[]): Session {
  const { stdout, stderr, env } = process;
  return {
    garments,
    write: (text) => (stdout.write(text) ? Promise.resolve() : drained(stdout)),
    tell: (text) => {
      stderr.write(text);
    },
    live: stderr.isTTY === true && env.TERM !== 'dumb',
    colour: stdout.isTTY === true && !env.NO_COLOR && env.TERM !== 'dumb',
    columns: columnsOf(process),
    clock: () => performance.now(),
  };
}

const drained = (stream: NodeJS.WriteStream): Promise<void> =>
  new Promise((resolve) => stream.once('drain', resolve));

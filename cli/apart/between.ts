import type { ExitCode } from '../session.ts';

/*
 * A command line with a draft of one's own is run on a thread apart: only so can the program go on, and say what happened, where
 * the draft runs without end while it is read, or fills the memory. These are the words between the two threads, plain data.
 */

/** What the thread is begun with. */
export interface CommandTask {
  readonly does: 'command';
  readonly words: readonly string[];
  /** What it shows results on. */
  readonly live: boolean;
  readonly colour: boolean;
  readonly columns: number;
}

/** Signals that a command may wait for. */
export const signals = ['SIGINT', 'SIGTERM'] as const;
export type Signal = (typeof signals)[number];

/** What the thread says. */
export type FromThread =
  | { readonly says: 'result'; readonly text: string }
  | { readonly says: 'words'; readonly text: string }
  /** A file is being read as a module, or is not any more. */
  | { readonly says: 'reading'; readonly file: string | undefined }
  /** Whether it waits for a signal itself. */
  | { readonly says: 'heeds'; readonly signal: Signal; readonly heeds: boolean }
  | { readonly says: 'end'; readonly code: ExitCode }
  | { readonly says: 'fault'; readonly error: unknown };

/** What it is told: that the last result was taken, and whether anybody reads on; that a signal came. */
export type ToThread =
  | { readonly tells: 'taken'; readonly isRead: boolean }
  | { readonly tells: 'signal'; readonly signal: Signal };

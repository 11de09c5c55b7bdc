import type { Evaluation } from '../../engine/evaluate.ts';
import { notchesOf } from '../../engine/finishing/notches.ts';
import type { Result } from '../../engine/issue.ts';
import type { ReadAs } from '../../engine/render/print-options.ts';
import { readPaper } from '../../engine/render/tiles/papers.ts';
import type { BodyFiles } from '../body-files.ts';
import { patternPdf } from '../pattern-pdf.ts';

/** Files by their names. */
export type Files = ReadonlyMap<string, string | Uint8Array>;

/** What of an order is drafted, and how it is to be written. */
export interface Drafted {
  readonly made: Evaluation;
  readonly files: BodyFiles;
  readonly as: ReadAs;
  /** The paper of the PDF. */
  readonly paper: string;
}

type Writer = (drafted: Drafted) => Result<Files> | Promise<Result<Files>>;

const written = (value: Files): Result<Files> => ({ ok: true, value, issues: [] });

/** Everything that an order may ask to be written, by the word for it. */
export const writers = {
  report: ({ files }) => written(files.reportFile()),
  svg: ({ files }) => written(files.drawings()),
  dxf: ({ files }) => written(files.cuttingFiles(['dxf'])),
  'dxf-curves': ({ files }) => written(files.cuttingFiles(['dxf-curves'])),
  pdf: async ({ made, paper, as }) => {
    const read = readPaper(paper);
    if (!read.ok) return read;
    const printed = await patternPdf(made, read.value, { ...as, notches: notchesOf(made.styling) });
    return printed.ok ? written(new Map([['pattern.pdf', printed.value.pdf]])) : printed;
  },
} as const satisfies Readonly<Record<string, Writer>>;

export type Writing = keyof typeof writers;

export const writings = Object.keys(writers) as readonly Writing[];

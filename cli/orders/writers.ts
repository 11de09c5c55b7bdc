import type { Evaluation } from '../../engine/evaluate.ts';
import { notchesOf } from '../../engine/finishing/notches.ts';
import type { Result } from '../../engine/issue.ts';
import { pdfOf } from '../../engine/render/pdf/write-pdf.ts';
import { readPaper } from '../../engine/render/tiles/papers.ts';
import { printPages } from '../../engine/render/tiles/print-pages.ts';
import type { BodyFiles } from '../body-files.ts';
import { readFonts } from '../fonts.ts';

/** Files by their names. */
export type Files = ReadonlyMap<string, string | Uint8Array>;

/** What of an order is drafted, and how it is to be written. */
export interface Drafted {
  readonly made: Evaluation;
  readonly files: BodyFiles;
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
  pdf: async ({ made, paper }) => {
    const read = readPaper(paper);
    if (!read.ok) return read;
    const { garment, cutLines } = made;
    const printed = printPages(garment, cutLines, read.value, { notches: notchesOf(made.styling) });
    if (!printed.ok) return printed;
    const title = `${garment.name} for ${garment.body}`;
    return written(new Map([['pattern.pdf', await pdfOf(printed.value.pages, title, await readFonts())]]));
  },
} as const satisfies Readonly<Record<string, Writer>>;

export type Writing = keyof typeof writers;

export const writings = Object.keys(writers) as readonly Writing[];

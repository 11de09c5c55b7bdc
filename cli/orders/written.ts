import type { Evaluation } from '../../engine/evaluate.ts';
import { notchesOf } from '../../engine/finishing/notches.ts';
import type { Issue, Result } from '../../engine/issue.ts';
import { pdfFaults } from '../../engine/proven-pdf.ts';
import type { ReadAs } from '../../engine/render/print-options.ts';
import { readPaper } from '../../engine/render/tiles/papers.ts';
import { bodyFiles } from '../draft/body-files.ts';
import { isAlso } from '../files/cutting-files.ts';
import { readFonts } from '../files/fonts.ts';
import { patternPdf } from '../files/pattern-pdf.ts';
import type { Writing } from '../results/orders.ts';

/** What was written of an order. */
export interface Written {
  readonly files: ReadonlyMap<string, string | Uint8Array>;
  /** What was found, everything that was written read back. */
  readonly report: Evaluation['report'];
  /** Why something could not be written. */
  readonly unwritten: readonly Issue[];
}

/**
 * Writes what an order asks for. The sheet is written and walked whatever that is, for what a draft says must hold for the file;
 * so are cutting files and the joined tiles of a PDF, and what is found there stands in the report.
 */
export async function writtenOf(
  made: Evaluation,
  write: readonly Writing[],
  { paper, ...as }: ReadAs & { readonly paper: string },
): Promise<Written> {
  const asked = new Set(write);
  const pdf = asked.has('pdf') ? await provenPdf(made, paper, as) : undefined;
  const files = bodyFiles(made, {
    ...as,
    also: write.filter(isAlso),
    found: pdf?.ok ? pdf.value.faults : [],
  });
  return {
    files: new Map<string, string | Uint8Array>([
      ...(asked.has('report') ? files.reportFile() : []),
      ...(asked.has('svg') ? files.drawings() : []),
      ...files.cuttingFiles,
      ...(pdf?.ok ? [['pattern.pdf', pdf.value.pdf] as const] : []),
    ]),
    report: files.report,
    unwritten: pdf?.ok === false ? pdf.issues : [],
  };
}

async function provenPdf(
  made: Evaluation,
  paper: string,
  as: ReadAs,
): Promise<Result<{ readonly pdf: Uint8Array; readonly faults: readonly Issue[] }>> {
  const read = readPaper(paper);
  if (!read.ok) return read;
  const options = { ...as, notches: notchesOf(made.styling) };
  const printed = await patternPdf(made, read.value, options, await readFonts());
  if (!printed.ok) return printed;
  const { pdf } = printed.value;
  return { ok: true, value: { pdf, faults: pdfFaults(made, pdf) }, issues: [] };
}

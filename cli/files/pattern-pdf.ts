import type { Evaluation } from '../../engine/evaluate.ts';
import type { Result } from '../../engine/issue.ts';
import type { Fonts } from '../../engine/render/pdf/fonts.ts';
import { pdfOf } from '../../engine/render/pdf/write-pdf.ts';
import type { PrintOptions } from '../../engine/render/print-options.ts';
import type { Paper } from '../../engine/render/tiles/papers.ts';
import { type PrintedPages, printPages } from '../../engine/render/tiles/print-pages.ts';

/** A pattern on its pages, and these as a PDF. */
export interface PatternPdf {
  readonly printed: PrintedPages;
  readonly pdf: Uint8Array;
}

/** The pattern of a garment as a PDF at 1:1; refused where the paper cannot carry it. */
export async function patternPdf(
  { garment, cutLines }: Evaluation,
  paper: Paper,
  options: PrintOptions,
  fonts: Fonts,
): Promise<Result<PatternPdf>> {
  const printed = printPages(garment, cutLines, paper, options);
  if (!printed.ok) return printed;
  const title = `${garment.name} for ${garment.body}`;
  const pdf = await pdfOf(printed.value.pages, title, fonts);
  return { ...printed, value: { printed: printed.value, pdf } };
}

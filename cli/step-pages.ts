import { pdfOf } from '../engine/render/pdf/write-pdf.ts';
import type { Page } from '../engine/render/tiles/page.ts';
import { answer } from './answer.ts';
import type { DraftedGarment, GarmentOptions } from './drafted-garment.ts';
import { readFonts } from './fonts.ts';
import type { ExitCode, Session } from './session.ts';
import { writeFiles } from './write-files.ts';
import { writtenResult } from './written-result.ts';

/** How a garment is made, step by step: the same for a screen and on paper. */
interface StepPages {
  /** Of both files, without what is behind the dot. */
  readonly file: string;
  readonly title: string;
  readonly html: string;
  readonly pages: readonly Page[];
  readonly steps: readonly { readonly title: string }[];
  readonly words: () => Promise<void>;
  /** What is printed as data beside the steps. */
  readonly more?: object;
}

/** Writes steps as HTML and as PDF into the folder, and says so. */
export async function writeStepPages(
  session: Session,
  { report, reader }: DraftedGarment,
  { out, json }: GarmentOptions & { readonly out: string },
  { file, title, html, pages, steps, words, more }: StepPages,
): Promise<ExitCode> {
  const files = new Map<string, string | Uint8Array>([
    [`${file}.html`, html],
    [`${file}.pdf`, await pdfOf(pages, title, await readFonts())],
  ]);
  await writeFiles(out, files);
  return answer(session, json, {
    report,
    reader,
    result: () => ({ ...writtenResult(report, steps, files), ...more }),
    words,
  });
}

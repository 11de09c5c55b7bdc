import { readFonts } from '../files/fonts.ts';
import { writeFiles } from '../files/write-files.ts';
import type { DraftedGarment, GarmentOptions } from '../garment/drafted-garment.ts';
import { answer } from '../output/answer.ts';
import type { ExitCode, Session } from '../session.ts';
import { type StepPages, stepFiles } from './made-step-by-step.ts';
import { writtenResult } from './written-result.ts';

/** Steps to be written, and what is said of them. */
interface WrittenSteps extends StepPages {
  readonly words: () => Promise<void>;
  /** What is printed as data beside the steps. */
  readonly more?: object;
}

/** Writes steps as HTML and as PDF into the folder, and says so. */
export async function writeStepPages(
  session: Session,
  { report, reader }: DraftedGarment,
  { out, json }: GarmentOptions & { readonly out: string },
  { words, more, ...made }: WrittenSteps,
): Promise<ExitCode> {
  const files = await stepFiles(made, await readFonts());
  await writeFiles(out, files);
  return answer(session, json, {
    report,
    reader,
    result: () => ({ ...writtenResult(report, made.steps, files), ...more }),
    words,
  });
}

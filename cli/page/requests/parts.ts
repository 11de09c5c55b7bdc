import { type Choice, type Evaluation, notchesOf, type Report, screenPieces } from '../../../drafts/index.ts';
import type { DraftPart, DraftParts } from '../draft-parts.ts';
import { lessonOf } from '../views/learn/lesson.ts';
import { screenSeams } from './screen-seams.ts';

/** What is made of a drafted garment in the time of a frame. */
export type QuickPart = Exclude<DraftPart, 'proof' | 'files'>;
export type QuickParts = Pick<DraftParts, QuickPart>;

type Makers = {
  readonly [Part in QuickPart]: (
    evaluation: Evaluation,
    units: 'mm' | 'in',
    choices: readonly Choice[],
  ) => DraftParts[Part];
};

const makers: Makers = {
  lines: ({ garment, cutLines, styling }) => screenPieces(garment, cutLines, notchesOf(styling)),
  seams: ({ garment }, units) => screenSeams(garment, units),
  cautions: ({ garment }) => [...new Set(garment.sewing?.flatMap(({ cautions = [] }) => cautions))],
  lesson: (evaluation, units, choices) => lessonOf(evaluation, choices, units),
};

/** Those parts that are wanted of what is made in the time of a frame. */
export const quickParts = (
  evaluation: Evaluation,
  choices: readonly Choice[],
  units: 'mm' | 'in',
  wanted: readonly QuickPart[],
): Partial<QuickParts> =>
  Object.fromEntries(wanted.map((part) => [part, makers[part](evaluation, units, choices)]));

/** Those parts that are wanted, and the report as it is then: of the written sheet, where that was walked too. */
export async function draftParts(
  evaluation: Evaluation,
  choices: readonly Choice[],
  units: 'mm' | 'in',
  wanted: readonly DraftPart[],
): Promise<{
  readonly parts: Partial<DraftParts>;
  readonly report: Report;
  /** Whether all holds of another garment as well, its sheet written and walked too; only where this one's was. */
  readonly holds?: (other: Evaluation) => boolean;
}> {
  const quick = wanted.filter((part) => part !== 'proof' && part !== 'files');
  const parts = quickParts(evaluation, choices, units, quick);
  if (quick.length === wanted.length) return { parts, report: evaluation.report };
  // Writing and reading take three times as long as all the rest, and an eighth of all the code, loaded when first wanted.
  const { written, writtenFiles } = await import('./written-files.ts');
  const sheet = written(evaluation, units);
  const files = wanted.includes('files') ? { files: writtenFiles(evaluation, sheet) } : {};
  return {
    parts: { ...parts, proof: true, ...files },
    report: sheet.report,
    holds: (other) => written(other, units).report.ok,
  };
}

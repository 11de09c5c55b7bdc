import { type Evaluation, notchesOf, type ProvenSheet, provenSheet } from '../../../drafts/index.ts';
import { json, walkResult } from '../../output/walk-result.ts';
import type { TakenFile } from '../taken-file.ts';

/** The sheet of a garment, written, and walked again from its own text. */
export const written = (evaluation: Evaluation, units: 'mm' | 'in'): ProvenSheet =>
  provenSheet(evaluation, { date: undefined, units, notches: notchesOf(evaluation.styling) });

/** The files of a written garment, as `bodkin draft` writes them. */
export const writtenFiles = (
  evaluation: Evaluation,
  { sheet, report, pieces }: ProvenSheet,
): readonly TakenFile[] =>
  [
    ['sheet.svg', sheet] as const,
    ['report.json', json(walkResult(report, evaluation))] as const,
    ...pieces(),
  ].map(([name, text]) => ({ name, text }));

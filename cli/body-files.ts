import type { Report } from '../engine/checks/report.ts';
import { cuttingFile } from '../engine/cutting-file/cutting-file.ts';
import type { Evaluation } from '../engine/evaluate.ts';
import { notchesOf } from '../engine/finishing/notches.ts';
import { provenSheet } from '../engine/proven-sheet.ts';
import type { ReadAs } from '../engine/render/print-options.ts';
import { type Also, alsoWritten } from './also.ts';
import { json, walkResult } from './walk-result.ts';

/** A body as a draft is asked for it: one without a name is called by what the file calls it. */
export const namedBody = (body: unknown, id: string | number): unknown =>
  typeof body === 'object' && body !== null && !Array.isArray(body) ? { name: String(id), ...body } : body;

/** What is written of one body among many, the same as for a body alone. */
export interface BodyFiles {
  /** What was found, the written sheet read back. */
  readonly report: Report;
  /** `report.json`. */
  readonly reportFile: () => ReadonlyMap<string, string>;
  /** `sheet.svg` and one file a piece. */
  readonly drawings: () => ReadonlyMap<string, string>;
  /** The cutting files asked for. */
  readonly cuttingFiles: (also: readonly Also[] | undefined) => ReadonlyMap<string, string>;
}

export function bodyFiles(made: Evaluation, as: ReadAs): BodyFiles {
  const print = { ...as, notches: notchesOf(made.styling) };
  const { sheet, pieces, report } = provenSheet(made, print);
  return {
    report,
    reportFile: () => new Map([['report.json', json(walkResult(report, made))]]),
    drawings: () => new Map([...pieces(), ['sheet.svg', sheet]]),
    cuttingFiles: (also) => alsoWritten(also, 'cutting', (flavour) => cuttingFile(made, flavour, print)),
  };
}

import type { Report } from '../../engine/checks/report.ts';
import { withIssues } from '../../engine/checks/with-issues.ts';
import type { Evaluation } from '../../engine/evaluate.ts';
import { notchesOf } from '../../engine/finishing/notches.ts';
import type { Issue } from '../../engine/issue.ts';
import { provenCuttingFile } from '../../engine/proven-cutting-file.ts';
import { provenSheet } from '../../engine/proven-sheet.ts';
import type { ReadAs } from '../../engine/render/print-options.ts';
import { type Also, alsoWritten } from '../files/cutting-files.ts';
import { json, walkResult } from '../output/walk-result.ts';

/** A body as a draft is asked for it: one without a name is called by what the file calls it. */
export const namedBody = (body: unknown, id: string | number): unknown =>
  typeof body === 'object' && body !== null && !Array.isArray(body) ? { name: String(id), ...body } : body;

/** What is written of one body among many, the same as for a body alone. */
export interface BodyFiles {
  /** What was found, the written sheet and cutting files read back. */
  readonly report: Report;
  /** `report.json`. */
  readonly reportFile: () => ReadonlyMap<string, string>;
  /** `sheet.svg` and one file a piece. */
  readonly drawings: () => ReadonlyMap<string, string>;
  /** The cutting files asked for, by file name. */
  readonly cuttingFiles: ReadonlyMap<string, string>;
}

interface BodyFilesOptions extends ReadAs {
  /** The cutting files asked for. */
  readonly also?: readonly Also[] | undefined;
  /** What was found in other files of this body. */
  readonly found?: readonly Issue[];
}

export function bodyFiles(made: Evaluation, { also: asked, found = [], ...as }: BodyFilesOptions): BodyFiles {
  const print = { ...as, notches: notchesOf(made.styling) };
  const { sheet, pieces, report: ofSheet } = provenSheet(made, print);
  const also = alsoWritten(asked, 'cutting', (flavour) => provenCuttingFile(made, flavour, print));
  const report = withIssues(ofSheet, [...also.issues, ...found]);
  return {
    report,
    reportFile: () => new Map([['report.json', json(walkResult(report, made))]]),
    drawings: () => new Map([...pieces(), ['sheet.svg', sheet]]),
    cuttingFiles: also.files,
  };
}

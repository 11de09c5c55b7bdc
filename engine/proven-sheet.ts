import type { Report } from './checks/report.ts';
import { withIssues } from './checks/with-issues.ts';
import type { Edge } from './geometry/curve.ts';
import type { Issue } from './issue.ts';
import type { Garment } from './pattern/garment.ts';
import { walkSheet } from './reading/walk-sheet.ts';
import { letteredPieces } from './render/lettering.ts';
import type { PrintOptions } from './render/print-options.ts';
import { sheetOf } from './render/sheet.ts';
import { svgsOf } from './render/svg.ts';

/** A checked garment: what there is to write, and what its draft was found to be. */
export interface Checked {
  readonly garment: Garment;
  readonly cutLines: ReadonlyMap<string, Edge>;
  readonly report: Report;
}

/** A sheet as it is to be written, and the report of its garment with whatever its own text says otherwise. */
export interface ProvenSheet {
  readonly sheet: string;
  /** One file a piece: its name and its text. */
  readonly pieces: () => ReadonlyMap<string, string>;
  readonly report: Report;
}

/**
 * Writes the sheet of a garment and walks it again from its own text, as whoever gets the file would: what a draft says
 * of a file must hold for the file.
 */
export function provenSheet({ garment, cutLines, report }: Checked, options: PrintOptions): ProvenSheet {
  const lettered = letteredPieces(garment, cutLines, options);
  const sheet = sheetOf(garment, lettered, options);
  const walked = walkSheet(sheet);
  const known = new Set(report.issues.map(keyOf));
  const found = (walked.ok ? walked.value.issues : walked.issues)
    .filter((issue) => issue.severity === 'error' && !known.has(keyOf(issue)))
    .map((issue): Issue => ({ ...issue, message: `On the written sheet: ${issue.message}` }));
  return {
    sheet,
    pieces: () => svgsOf(garment, lettered, options),
    report: withIssues(report, found),
  };
}

const keyOf = ({ code, path }: Issue): string => JSON.stringify([code, path]);

import type { Issue } from './issue.ts';
import type { Checked } from './proven-sheet.ts';
import { isShown, joinTiles } from './reading/pdf/join-tiles.ts';
import { readPdf } from './reading/pdf/read-pdf.ts';
import { sheetOfLines } from './reading/pdf/sheet-of-lines.ts';
import { walkSheet } from './reading/walk-sheet.ts';

/** Crossing marks, or copies of a line on two tiles, this far apart (mm) would not be seen to differ. */
const JOINED = 0.05;

/**
 * Walks a printed pattern from the bytes of its PDF: the tiles are joined by their crossing marks, as on the floor, and
 * what then lies there is walked as a sheet is. Issues are all that is wrong with it; none of them is the garment's own.
 */
export function pdfFaults({ garment, report }: Checked, bytes: Uint8Array): readonly Issue[] {
  const pages = readPdf(bytes);
  // On several pages the first is the cover.
  const { lines, worstCrossing } = joinTiles(pages.length === 1 ? pages : pages.slice(1));
  const walked = walkSheet(sheetOfLines(lines, garment));
  const known = new Set(report.issues.map(({ code, path }) => JSON.stringify([code, path])));
  const found = (walked.ok ? walked.value.issues : walked.issues).filter(
    ({ code, path, severity }) => severity === 'error' && !known.has(JSON.stringify([code, path])),
  );
  const apart = Math.max(worstCrossing, ...lines.map((line) => line.apart));
  const cutOff = pages.length === 1 ? [] : lines.filter((line) => !isShown(line));
  return [
    ...found.map((issue) => onPaper(issue.code, issue.path, issue.message)),
    ...(apart <= JOINED
      ? []
      : [onPaper('tiles-apart', 'pdf', 'Its tiles do not meet at their crossing marks.')]),
    ...cutOff.map(({ tag }) => onPaper('line-cut-off', tag, 'A line does not show whole on its tiles.')),
  ];
}

const onPaper = (code: Issue['code'], path: string, message: string): Issue => ({
  code,
  severity: 'error',
  path,
  message: `On the printed pages: ${message}`,
});

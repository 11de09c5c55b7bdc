import { decimalCell, fixed, lengthCell, type Report, type Unit } from '../../../drafts/index.ts';
import { bandWords, shapeFigure } from '../../shape-table.ts';
import type { CheckRow, CheckRows } from '../messages.ts';

/** The figures of a report as rows of tables; lengths in the reader's unit. */
export function checkRows(report: Report, units: Unit): CheckRows {
  const length = (mm: number): string => lengthCell(mm, units);
  // What fails a check is an issue, and names the seam, join or level.
  const failed = new Set(
    report.issues.filter(({ severity }) => severity === 'error').map(({ path }) => path),
  );
  const row = (name: string, ...cells: readonly string[]): CheckRow => ({
    cells: [name, ...cells],
    ok: !failed.has(name),
  });
  return {
    girths: report.girths.map(({ level, body, ease, finished, error }) =>
      row(level, length(body), length(ease), length(finished), decimalCell(error, units, 3)),
    ),
    seams: report.seams.map(({ name, lengthA, lengthB, ease, gatherRatio, mismatch }) =>
      row(
        name,
        length(lengthA),
        length(lengthB),
        gatherRatio === 1 ? length(ease) : `${fixed(gatherRatio, 2)} to 1`,
        decimalCell(mismatch, units, 3),
      ),
    ),
    joins: report.joins.map(({ name, angle }) => row(name, `${fixed(angle, 2)}°`)),
    shapes: report.shapes.map((shape) => ({
      cells: [shape.name, shape.piece, shapeFigure(shape.value, shape, units), bandWords(shape, units)],
      ok: shape.ok,
    })),
    notches: report.notches,
  };
}

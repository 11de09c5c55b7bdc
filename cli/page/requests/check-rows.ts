import {
  decimalCell,
  fixed,
  type Garment,
  type Girth,
  type Join,
  lengthCell,
  type Report,
  type Unit,
} from '../../../drafts/index.ts';
import { bandWords, shapeFigure } from '../../garment/shape-table.ts';
import type { CheckRow, CheckRows, DrawnPlace } from '../messages.ts';

/** The figures of a report as rows of tables; lengths in the reader's unit. */
export function checkRows(report: Report, garment: Garment, units: Unit): CheckRows {
  const length = (mm: number): string => lengthCell(mm, units);
  // What fails a check is an issue, and names the seam, join or level.
  const failed = new Set(
    report.issues.filter(({ severity }) => severity === 'error').map(({ path }) => path),
  );
  const row = (name: string, places: readonly DrawnPlace[], ...cells: readonly string[]): CheckRow => ({
    cells: [name, ...cells],
    ok: !failed.has(name),
    places,
  });
  const girths = new Map(garment.girths.map(({ level, parts }) => [level, parts.map(girthPlace)]));
  const joins = new Map(garment.joins.map((join) => [join.name, joinPlaces(join)]));
  return {
    girths: report.girths.map(({ level, body, ease, finished, error }) =>
      row(
        level,
        girths.get(level) ?? [],
        length(body),
        length(ease),
        length(finished),
        decimalCell(error, units, 3),
      ),
    ),
    seams: report.seams.map(({ name, a, b, lengthA, lengthB, ease, gatherRatio, mismatch }) =>
      row(
        name,
        [...a, ...b].map(({ piece, edge }) => ({ piece, line: edge })),
        length(lengthA),
        length(lengthB),
        gatherRatio === 1 ? length(ease) : `${fixed(gatherRatio, 2)} to 1`,
        decimalCell(mismatch, units, 3),
      ),
    ),
    joins: report.joins.map(({ name, angle }) => row(name, joins.get(name) ?? [], `${fixed(angle, 2)}°`)),
    shapes: report.shapes.map((shape) => ({
      cells: [shape.name, shape.piece, shapeFigure(shape.value, shape, units), bandWords(shape, units)],
      ok: shape.ok,
      places: [{ piece: shape.piece }],
    })),
    notches: report.notches,
  };
}

const girthPlace = (part: Girth['parts'][number]): DrawnPlace => ({
  piece: part.piece,
  line: part.kind === 'line' ? part.line : part.edge,
});

function joinPlaces(join: Join): readonly DrawnPlace[] {
  switch (join.kind) {
    case 'across':
      return [join.a, join.b].map(({ piece, edge }) => ({ piece, line: edge }));
    case 'mirror':
      return [{ piece: join.a.piece, line: join.a.edge }];
    case 'along':
      return [join.from, join.to].map((line) => ({ piece: join.piece, line }));
  }
}

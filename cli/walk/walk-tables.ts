import { accountCodes } from '../../engine/checks/accounted.ts';
import type { Report } from '../../engine/checks/report.ts';
import type { EdgeRef } from '../../engine/pattern/seam.ts';
import { counted } from '../../engine/text/counted.ts';
import { fixed } from '../../engine/text/figure.ts';
import { decimalCell, lengthCell, SIXTEENTHS } from '../../engine/text/length.ts';
import { countShapes, shapeTable } from '../garment/shape-table.ts';
import { girthTable } from '../garment/summary.ts';
import { lengthsLine, type Reader } from '../output/reader.ts';
import { countIssues } from '../output/say-issues.ts';
import { type Column, table } from '../output/table.ts';

/** Every seam, join and girth of a report, one a line, and the shapes outside their bands, or all of them. */
export function walkTables(report: Report, bands: 'outside' | 'all', reader: Reader): string {
  const { units, columns } = reader;
  const length = (mm: number, decimals: number): string => lengthCell(mm, units, decimals, SIXTEENTHS);
  const seams = table(
    seamColumns,
    report.seams.map((s) => [
      s.name,
      sides(s.a),
      sides(s.b),
      length(s.lengthA, 2),
      length(s.lengthB, 2),
      s.ease === 0 ? '' : length(s.ease, 1),
      s.gatherRatio === 1 ? '' : fixed(s.gatherRatio, 3),
      decimalCell(s.mismatch, units, 4),
    ]),
    columns,
  );
  const joins = table(
    joinColumns,
    report.joins.map((j) => [j.name, fixed(j.angle, 3), j.pieces.join(', ')]),
    columns,
  );
  const counts = `walked: ${walkedWords(report)}\nshapes: ${countShapes(report.shapes)}\nissues: ${countIssues(report.issues)}\n`;
  const shapes = report.shapes.filter(({ ok }) => bands === 'all' || !ok);
  const shown = shapes.length === 0 ? [] : [shapeTable(shapes, reader)];
  return `${lengthsLine(reader)}\n${[seams, joins, girthTable(report, reader), ...shown, counts].join('\n')}`;
}

/** What was walked, and whether anything was left out of account. */
export function walkedWords({ seams, joins, girths, notches, issues }: Report): string {
  const left = issues.filter(({ code }) => accountCodes.some((known) => known === code)).length;
  const rest = left === 0 ? 'everything accounted for' : `${left} left out of account`;
  return `${counted(seams.length, 'seam')}, ${counted(joins.length, 'corner')}, ${counted(girths.length, 'girth')}, ${counted(notches, 'notch', 'notches')}; ${rest}`;
}

const sides = (refs: readonly EdgeRef[]): string => refs.map((ref) => `${ref.piece}/${ref.edge}`).join(' + ');

const seamColumns: readonly Column[] = [
  { title: 'seam' },
  { title: 'side a' },
  { title: 'side b' },
  { title: 'a', right: true },
  { title: 'b', right: true },
  { title: 'ease', right: true },
  { title: 'gathers', right: true },
  { title: 'mismatch', right: true },
];

const joinColumns: readonly Column[] = [
  { title: 'join' },
  { title: 'corner (°)', right: true },
  { title: 'pieces' },
];

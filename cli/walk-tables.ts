import { accountCodes } from '../engine/checks/accounted.ts';
import type { Report } from '../engine/checks/report.ts';
import type { EdgeRef } from '../engine/pattern/seam.ts';
import { countIssues } from './say-issues.ts';
import { countShapes, shapeTable } from './shape-table.ts';
import { girthTable } from './summary.ts';
import { type Column, fixed, table } from './table.ts';

/** Every seam, join and girth of a report, one a line, and the shapes outside their bands, or all of them. */
export function walkTables(report: Report, bands: 'outside' | 'all'): string {
  const seams = table(
    seamColumns,
    report.seams.map((s) => [
      s.name,
      sides(s.a),
      sides(s.b),
      fixed(s.lengthA, 2),
      fixed(s.lengthB, 2),
      s.ease === 0 ? '' : fixed(s.ease, 1),
      s.gatherRatio === 1 ? '' : fixed(s.gatherRatio, 3),
      fixed(s.mismatch, 4),
    ]),
  );
  const joins = table(
    joinColumns,
    report.joins.map((j) => [j.name, j.pieces.join(', '), fixed(j.angle, 3)]),
  );
  const counts = `walked: ${walkedWords(report)}\nshapes: ${countShapes(report.shapes)}\nissues: ${countIssues(report.issues)}\n`;
  const shapes = report.shapes.filter(({ ok }) => bands === 'all' || !ok);
  const shown = shapes.length === 0 ? [] : [shapeTable(shapes)];
  return [seams, joins, girthTable(report), ...shown, counts].join('\n');
}

/** What was walked, and whether anything was left out of account. */
export function walkedWords({ seams, joins, girths, notches, issues }: Report): string {
  const left = issues.filter(({ code }) => accountCodes.some((known) => known === code)).length;
  const rest = left === 0 ? 'everything accounted for' : `${left} left out of account`;
  return `${counted(seams.length, 'seam')}, ${counted(joins.length, 'corner')}, ${counted(girths.length, 'girth')}, ${counted(notches, 'notch', 'notches')}; ${rest}`;
}

const counted = (count: number, one: string, many = `${one}s`): string =>
  `${count} ${count === 1 ? one : many}`;

const sides = (refs: readonly EdgeRef[]): string => refs.map((ref) => `${ref.piece}/${ref.edge}`).join(' + ');

const seamColumns: readonly Column[] = [
  { title: 'seam' },
  { title: 'side a' },
  { title: 'side b' },
  { title: 'a (mm)', right: true },
  { title: 'b (mm)', right: true },
  { title: 'ease', right: true },
  { title: 'gathers', right: true },
  { title: 'mismatch', right: true },
];

const joinColumns: readonly Column[] = [
  { title: 'join' },
  { title: 'pieces' },
  { title: 'corner (°)', right: true },
];

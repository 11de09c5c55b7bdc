import { cupOf } from '../../engine/body/cup.ts';
import type { Report } from '../../engine/checks/report.ts';
import type { Evaluation } from '../../engine/evaluate.ts';
import { fixed } from '../../engine/text/figure.ts';
import { decimalCell, EIGHTHS, lengthCell } from '../../engine/text/length.ts';
import { lengthsLine, type Reader } from '../output/reader.ts';
import { countIssues } from '../output/say-issues.ts';
import { type Column, table } from '../output/table.ts';
import { countShapes } from './shape-table.ts';

/** The short table: what was drafted, whether it is true, and what it measures finished. */
export function summary({ body, garment, report }: Evaluation, reader: Reader): string {
  const cup = cupOf(body).letter;
  const rows = [
    ['pieces', `${garment.pieces.length}: ${garment.pieces.map((p) => `${p.number} ${p.name}`).join(', ')}`],
    ['seams walked', String(report.seams.length)],
    ['worst mismatch', worstSeam(report, reader)],
    ['worst corner', worstJoin(report)],
    ['cup', cup],
    ['shapes', countShapes(report.shapes)],
    ['issues', countIssues(report.issues)],
  ];
  const width = Math.max(...rows.map(([label]) => (label ?? '').length));
  const facts = rows.map(([label, value]) => `${(label ?? '').padEnd(width)}  ${value}\n`).join('');
  return `${facts}\n${lengthsLine(reader)}${girthTable(report, reader)}`;
}

function worstSeam({ seams }: Report, { units }: Reader): string {
  const worst = seams.reduce((a, b) => (b.mismatch > a.mismatch ? b : a), seams[0] ?? nothing);
  return seams.length === 0 ? 'none' : `${decimalCell(worst.mismatch, units, 4)} ${units} (${worst.name})`;
}

const nothing = { name: '', mismatch: 0 };

function worstJoin({ joins }: Report): string {
  const [first] = joins;
  if (!first) return 'none';
  const worst = joins.reduce((a, b) => (Math.abs(b.angle) > Math.abs(a.angle) ? b : a), first);
  return `${fixed(Math.abs(worst.angle), 3)}° (${worst.name})`;
}

const girthColumns: readonly Column[] = [
  { title: 'finished girth' },
  { title: 'body', right: true },
  { title: 'ease', right: true },
  { title: 'wanted', right: true },
  { title: 'finished', right: true },
  { title: 'off by', right: true },
];

/** Finished girths against body plus ease. */
export const girthTable = ({ girths }: Report, { units, columns }: Reader): string =>
  table(
    girthColumns,
    girths.map(({ level, body, ease, target, finished, error }) => [
      level,
      ...[body, ease, target, finished].map((mm) => lengthCell(mm, units, 1, EIGHTHS)),
      decimalCell(error, units, 3),
    ]),
    columns,
  );

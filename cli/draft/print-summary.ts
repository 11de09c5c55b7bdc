import type { Report } from '../../engine/checks/report.ts';
import type { Paper } from '../../engine/render/tiles/papers.ts';
import type { PrintedPages } from '../../engine/render/tiles/print-pages.ts';
import { rowLetters } from '../../engine/render/tiles/tile-grid.ts';
import { counted } from '../../engine/text/counted.ts';
import { lengthFigure, lengthIn } from '../../engine/text/length.ts';
import type { Reader } from '../output/reader.ts';
import { issuesResult } from '../output/walk-result.ts';
import type { PrintedResult } from '../results/made.ts';

/** What a print takes: pages, how they join, and what the area alone would need. */
export function printSummary({ name }: Paper, printed: PrintedPages, { units }: Reader): string {
  const { pages, tiles, columns, rows, leftOut, fewestByArea } = printed;
  const first = pages[0];
  const size = first && `${name}, ${lengthFigure(first.width, units)} × ${lengthIn(first.height, units)}`;
  const across = counted(columns, 'column');
  const down = rows === 1 ? 'row A' : `rows A to ${rowLetters(rows - 1)}`;
  const facts =
    pages.length === 1
      ? [
          ['paper', size],
          ['pages', '1, with everything on it'],
        ]
      : [
          ['paper', name],
          ['pages', `${pages.length}: the first page and ${counted(tiles.length, 'tile')}`],
          ['tiles', `${across}, ${down}${leftOut > 0 ? `; ${leftOut} without any line left out` : ''}`],
          ['by area', `no fewer than ${counted(fewestByArea, 'tile')}`],
        ];
  return facts.map(([label, value]) => `${(label ?? '').padEnd(8)} ${value}\n`).join('');
}

/** The same for other programs. */
export const printResult = (report: Report, paper: Paper, printed: PrintedPages): PrintedResult => ({
  ok: report.ok,
  garment: report.garment,
  body: report.body,
  paper: paper.name,
  pages: printed.pages.map(({ width, height }) => ({ width, height })),
  tiles: printed.tiles.map(({ name }) => name),
  columns: printed.columns,
  rows: printed.rows,
  leftOut: printed.leftOut,
  fewestByArea: printed.fewestByArea,
  issues: issuesResult(report.issues),
});

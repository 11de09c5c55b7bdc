import { displayWidth, padded } from './display-width.ts';
import { wrapped } from './wrap.ts';

/** A column of a printed table: its heading, and on which side its words stand. */
export interface Column {
  readonly title: string;
  readonly right?: true;
}

type Row = readonly string[];

/** Between two columns. */
const gap = '  ';

/** A last column of words may be broken into lines of so many columns of the terminal, no fewer. */
const leastRoom = 22;

/**
 * Rows of words in columns just wide enough for them, two spaces apart, if that is no wider than `width`. Else the words of
 * the last column are broken into lines; where they have no room for that either, each row becomes a block of its own.
 */
export function table(columns: readonly Column[], rows: readonly Row[], width: number): string {
  const widths = columns.map(({ title }, i) =>
    Math.max(displayWidth(title), ...rows.map((row) => displayWidth(row[i] ?? ''))),
  );
  const last = columns.length - 1;
  const others = widths.slice(0, last).reduce((sum, each) => sum + each + gap.length, 0);
  if (others + (widths[last] ?? 0) <= width) return inColumns(columns, rows, widths);
  const room = width - others;
  if (columns[last]?.right || room < leastRoom) return inBlocks(columns, rows, width);
  const broken = rows.flatMap((row) =>
    wrapped(row[last] ?? '', room)
      .split('\n')
      .map((line, i) => [...(i === 0 ? row.slice(0, last) : columns.slice(1).map(() => '')), line]),
  );
  return inColumns(columns, broken, [...widths.slice(0, last), room]);
}

function inColumns(columns: readonly Column[], rows: readonly Row[], widths: readonly number[]): string {
  const line = (cells: Row): string =>
    columns
      .map(({ right }, i) => padded(cells[i] ?? '', widths[i] ?? 0, right ? 'right' : 'left'))
      .join(gap)
      .trimEnd();
  return [columns.map(({ title }) => title), ...rows].map((cells) => `${line(cells)}\n`).join('');
}

/** Each row below its first cell: a line for words, figures that follow each other on one line. */
function inBlocks(columns: readonly Column[], rows: readonly Row[], width: number): string {
  return rows.map((row) => wrapped(block(columns, row), width, 4)).join('\n');
}

function block(columns: readonly Column[], row: Row): string {
  const lines: string[] = [];
  let figures: string[] = [];
  const put = (): void => {
    if (figures.length > 0) lines.push(figures.join(', '));
    figures = [];
  };
  for (const [i, { title, right }] of columns.entries()) {
    const cell = (row[i] ?? '').trim();
    if (cell === '') continue;
    const said = title === '' ? cell : `${title.trim()}: ${cell}`;
    if (right) figures.push(said);
    else {
      put();
      lines.push(said);
    }
  }
  put();
  return lines.map((line, i) => `${i === 0 ? '' : gap}${line}\n`).join('');
}

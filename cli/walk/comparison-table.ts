import type { Comparison } from '../../engine/comparison/compare.ts';
import { unitLabel } from '../../engine/text/units.ts';
import { withLengthsIn } from '../../engine/text/with-lengths-in.ts';
import type { Reader } from '../output/reader.ts';
import { type Column, table } from '../output/table.ts';
import { type ChangeRow, figureRows, pieceRows } from './change-rows.ts';

const columnsOf = (what: string, detail: string): readonly Column[] => [
  { title: what },
  { title: detail },
  { title: 'before', right: true },
  { title: 'after', right: true },
  { title: 'more by', right: true },
];

const pieceColumns: readonly Column[] = [
  ...columnsOf('piece', 'edge, notch, line'),
  { title: 'moved', right: true },
];

/**
 * What changed since an earlier draft, in tables: what it was made from, its pieces, and its figures. What is the same
 * is said at the end, and so is what was not compared.
 */
export function comparisonTables(comparison: Comparison, since: string, reader: Reader): string {
  const { units, columns } = reader;
  const { before, after, notCompared } = comparison;
  const pieces = comparison.pieces.map((move) => ({ name: move.piece, rows: pieceRows(move, units) }));
  const sections = figureRows(comparison, units);
  const shown = [
    ...sections.from.map(({ title, rows }) => titled(title, rows, columns)),
    rowsOf(pieces) === 0
      ? ''
      : table(
          pieceColumns,
          pieces.flatMap(({ rows }) => rows),
          columns,
        ),
    ...sections.figures.map(({ title, rows }) => titled(title, rows, columns)),
  ].filter((text) => text !== '');
  const still = pieces.filter(({ rows }) => rows.length === 0).map(({ name }) => name);
  const same = [...sections.from, ...sections.figures].filter(
    ({ rows, count }) => rows.length === 0 && count > 0,
  );
  const nameOf = ({ garment, body }: Comparison['before']): string => `${garment} for ${body}`;
  return [
    `since ${since}: ${nameOf(before)}, now ${nameOf(after)}; ${unitLabel[units]} unless a row says otherwise\n`,
    withLengthsIn(layWords, units),
    ...shown,
    [
      still.length > 0 ? `not moved by so much: ${still.join(', ')}\n` : '',
      same.length > 0 ? `the same: ${same.map(({ title, count }) => `${count} ${title}`).join(', ')}\n` : '',
      ...notCompared.map(({ what, why }) => `not compared: ${what} (${why})\n`),
    ].join(''),
  ]
    .filter((text) => text !== '')
    .join('\n');
}

const layWords = `Each old piece is laid on the new one, fold on fold, or so that as much as can be of the edges both have lies on itself.
What differs by less than 0.5 mm (a pencil line) on paper, or by less than any other figure shows, is not shown.
`;

const rowsOf = (pieces: readonly { readonly rows: readonly unknown[] }[]): number =>
  pieces.reduce((sum, { rows }) => sum + rows.length, 0);

const titled = (title: string, rows: readonly ChangeRow[], width: number): string =>
  rows.length === 0 ? '' : table(columnsOf(title, ''), rows, width);

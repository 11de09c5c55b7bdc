import type { PieceMove } from '../engine/checks/moves.ts';
import { lengthCell, SIXTEENTHS } from '../engine/text/length.ts';
import { type Unit, unitWords } from '../engine/text/units.ts';
import type { Reader } from './reader.ts';
import { type Column, table } from './table.ts';

/** What moved less than this (mm) is left out: a pencil line is as wide. */
const unseen = 0.5;

const columns: readonly Column[] = [
  { title: 'piece' },
  { title: 'edge, or notch' },
  { title: 'before', right: true },
  { title: 'after', right: true },
  { title: 'more by', right: true },
  { title: 'moved', right: true },
];

/** What moved since an earlier draft, edge by edge and notch by notch; pieces that did not are named at the end. */
export function movesTable(moves: readonly PieceMove[], since: string, reader: Reader): string {
  const pieces = moves.map((move) => ({ name: move.piece, rows: rowsOf(move, reader.units) }));
  const rows = pieces.flatMap((piece) => piece.rows);
  const still = pieces.filter((piece) => piece.rows.length === 0).map(({ name }) => name);
  const unmoved = still.length > 0 ? `\nnot moved: ${still.join(', ')}\n` : '';
  return `since ${since}, lengths and places along an edge in ${unitWords[reader.units]}\n\n${rows.length > 0 ? table(columns, rows, reader.columns) : ''}${unmoved}`;
}

function rowsOf(move: PieceMove, units: Unit): readonly (readonly string[])[] {
  if (move.kind !== 'redrawn')
    return [[move.piece, move.kind === 'new' ? 'a new piece' : 'no longer there', '', '', '', '']];
  const row = (what: string, before: number, after: number, moved: number) => {
    if (Math.max(moved, Math.abs(after - before)) < unseen) return [];
    const figures = [before, after, after - before, moved].map((mm) => lengthCell(mm, units, 1, SIXTEENTHS));
    return [[move.piece, what, ...figures]];
  };
  return [
    ...move.edges.flatMap(({ edge, before, after, moved }) => row(edge, before, after, moved)),
    ...move.notches.flatMap(({ notch, edge, before, after }) =>
      row(`notch on ${edge}: ${notch}`, before, after, Math.abs(after - before)),
    ),
  ];
}

import type { PieceMove } from '../engine/checks/moves.ts';
import { type Column, fixed, table } from './table.ts';

/** What moved less than this (mm) is left out: a pencil line is as wide. */
const unseen = 0.5;

const columns: readonly Column[] = [
  { title: 'piece' },
  { title: 'edge, or notch' },
  { title: 'before', right: true },
  { title: 'after', right: true },
  { title: 'more by', right: true },
  { title: 'moved (mm)', right: true },
];

/** What moved since an earlier draft, edge by edge and notch by notch; pieces that did not are named at the end. */
export function movesTable(moves: readonly PieceMove[], since: string): string {
  const pieces = moves.map((move) => ({ name: move.piece, rows: rowsOf(move) }));
  const rows = pieces.flatMap((piece) => piece.rows);
  const still = pieces.filter((piece) => piece.rows.length === 0).map(({ name }) => name);
  const unmoved = still.length > 0 ? `\nnot moved: ${still.join(', ')}\n` : '';
  return `since ${since}, lengths and places along an edge in mm\n\n${rows.length > 0 ? table(columns, rows) : ''}${unmoved}`;
}

function rowsOf(move: PieceMove): readonly (readonly string[])[] {
  if (move.kind !== 'redrawn')
    return [[move.piece, move.kind === 'new' ? 'a new piece' : 'no longer there', '', '', '', '']];
  const row = (what: string, before: number, after: number, moved: number) =>
    Math.max(moved, Math.abs(after - before)) < unseen
      ? []
      : [[move.piece, what, ...[before, after, after - before, moved].map((value) => fixed(value, 1))]];
  return [
    ...move.edges.flatMap(({ edge, before, after, moved }) => row(edge, before, after, moved)),
    ...move.notches.flatMap(({ notch, edge, before, after }) =>
      row(`notch on ${edge}: ${notch}`, before, after, Math.abs(after - before)),
    ),
  ];
}

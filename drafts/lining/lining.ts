import type { InsideLine, Piece } from '../../engine/pattern/piece.ts';
import type { EdgeRef, Girth, Join } from '../../engine/pattern/seam.ts';
import type { LiningTable } from './choices.ts';
import type { InsideParts, Unfinished } from './inside.ts';
import { isFinished, liningPiece } from './lining-pieces.ts';
import { liningGirths, liningJoins, liningSeams } from './lining-seams.ts';
import { panelsOf, partOf } from './panels.ts';

/** Draws a lining for every panel of a bodice, and says how it is sewn in. */
export function drawLining(table: LiningTable, unfinished: Unfinished): InsideParts {
  const { bodice, cut, setting } = unfinished;
  const panels = panelsOf(bodice.pieces);
  const lined = new Set(panels.map(({ name }) => name));
  const areLined = (parts: readonly { readonly piece: string }[]): boolean =>
    parts.every(({ piece }) => lined.has(piece));
  const panelSeams = bodice.seams.filter(({ a, b }) => areLined([...a, ...b]));
  const { turnOfCloth } = table.styling;
  const girths = liningGirths(bodice.girths.filter(({ parts }) => areLined(parts)));
  const pieces = panels.map((panel) =>
    saysGirths(
      liningPiece(panel, { setting, panelSeams, turnOfCloth, allowance: cut.allowance.seam }),
      girths,
    ),
  );
  table.heading('The lining');
  table.say`Lining: the panels once more, set back by ${table.choice.turnOfCloth} at necklines, armholes and strap ends, so that the seams roll inside; insert and straps face themselves [turn of cloth, common practice, no source]`;
  for (const { name, edges } of pieces)
    for (const edge of edges.filter(isFinished))
      table.line(partOf(name), `${name}, ${edge.name}`, edge.curves);
  return {
    pieces,
    seams: liningSeams([...bodice.pieces, ...pieces], panelSeams, unfinished),
    joins: liningJoins(bodice.joins.filter((join) => areLined(edgesOf(join)))).filter((join) =>
      edgesOf(join).every(({ piece, edge }) => hasEdge(pieces, piece, edge)),
    ),
    girths,
  };
}

/** A lining panel whose level lines tell only of girths that its lining closes: over a gathered front there is no bust. */
const saysGirths = (piece: Piece, girths: readonly Girth[]): Piece => ({
  ...piece,
  lines: piece.lines.map((line): InsideLine => {
    const counted = girths.some(({ parts }) =>
      parts.some((part) => part.kind === 'line' && part.piece === piece.name && part.line === line.name),
    );
    return counted ? line : { name: line.name, kind: line.kind, curves: line.curves };
  }),
});

/** The edges that a join is about. */
const edgesOf = (join: Join): readonly EdgeRef[] => {
  switch (join.kind) {
    case 'across':
      return [join.a, join.b];
    case 'mirror':
      return [join.a];
    case 'along':
      return [join.from, join.to].map((edge) => ({ piece: join.piece, edge }));
  }
};

/** The lining of a gathered front has fewer edges than what it lines. */
const hasEdge = (pieces: readonly Piece[], name: string, edge: string): boolean =>
  pieces.some((piece) => piece.name === name && piece.edges.some((own) => own.name === edge));

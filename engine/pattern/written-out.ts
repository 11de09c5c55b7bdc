import type { Piece, PieceEdge } from './piece.ts';
import type { EdgeRef, Seam } from './seam.ts';

/*
 * Drafts make pieces, edges and seams in dozens of places, many by copying another and changing something. However alike such
 * copies are, V8 takes those from each place for a kind of their own, and whatever reads objects of more than four kinds
 * looks every field up. Written out anew, all in one place, they are of one kind, or of two where something may be left out.
 */

/** The same piece, written out. */
export function pieceWrittenOut(piece: Piece): Piece {
  const { name, number, edges, grain, notches, lines, marks, cut, oneOf } = piece;
  const own = edges.map(edgeWrittenOut);
  return oneOf
    ? { name, number, edges: own, grain, notches, lines, marks, cut, oneOf }
    : { name, number, edges: own, grain, notches, lines, marks, cut };
}

function edgeWrittenOut({ name, curves, turn, allowance, rank, inflections, open }: PieceEdge): PieceEdge {
  return open
    ? { name, curves, turn, allowance, rank, inflections, open }
    : { name, curves, turn, allowance, rank, inflections };
}

/** The same seam, written out. */
export function seamWrittenOut({ name, a, b, ease, gatherRatio, felled, side }: Seam): Seam {
  const [one, other] = [a.map(refWrittenOut), b.map(refWrittenOut)];
  if (felled)
    return side
      ? { name, a: one, b: other, ease, gatherRatio, felled, side }
      : { name, a: one, b: other, ease, gatherRatio, felled };
  return side
    ? { name, a: one, b: other, ease, gatherRatio, side }
    : { name, a: one, b: other, ease, gatherRatio };
}

const refWrittenOut = ({ piece, edge, reversed }: EdgeRef): EdgeRef =>
  reversed ? { piece, edge, reversed } : { piece, edge };

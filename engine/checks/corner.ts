import { rankOf } from '../finishing/cut-line.ts';
import { SHARPEST } from '../finishing/turn-corner.ts';
import { endDirection, startDirection } from '../geometry/edge.ts';
import { cross, dot, type Vector } from '../geometry/vector.ts';
import type { Piece, PieceEdge } from '../pattern/piece.ts';

/** Angle turned from one heading to the other, radians in (-pi, pi]; positive is clockwise as drawn. */
export const turnBetween = (from: Vector, to: Vector): number => Math.atan2(cross(from, to), dot(from, to));

/** Angle turned at the vertex from the end of one edge to the start of the next, radians. */
export const turnInto = (from: PieceEdge, to: PieceEdge): number =>
  turnBetween(endDirection(from), startDirection(to));

/**
 * Angle inside the cloth at the corner where two neighbouring edges of a piece meet, in either order, radians
 * in [0, 2 pi). Undefined when the two are no neighbours. Where two edges meet at both their ends, the corner
 * at the end of the first named counts.
 */
export function insideAngle(piece: Piece, first: string, second: string): number | undefined {
  const a = piece.edges.findIndex((edge) => edge.name === first);
  const b = piece.edges.findIndex((edge) => edge.name === second);
  const edgeA = piece.edges[a];
  const edgeB = piece.edges[b];
  if (!edgeA || !edgeB) return undefined;
  if ((a + 1) % piece.edges.length === b) return Math.PI - turnInto(edgeA, edgeB);
  if ((b + 1) % piece.edges.length === a) return Math.PI - turnInto(edgeB, edgeA);
  return undefined;
}

/**
 * Whether at a corner the allowance of `through` ends square: it is sewn before `across`, the corner is an outward
 * one, and neither so sharp nor so blunt that the end would reach out of all proportion; however blunt, it ends on a fold.
 */
export function endsSquare(through: PieceEdge, across: PieceEdge, turn: number): boolean {
  const limit = SHARPEST * Math.max(through.allowance, across.allowance);
  const endsOnFold = through.turn === 'fold' && turn < Math.PI / 2;
  return (
    rankOf(through) < rankOf(across) && turn > 0 && (endsOnFold || across.allowance <= limit * Math.sin(turn))
  );
}

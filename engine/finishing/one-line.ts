import { edgeEnd, edgeLength, edgeStart, endDirection, startDirection } from '../geometry/edge.ts';
import { distance } from '../geometry/point.ts';
import { SMOOTH_ANGLE } from '../geometry/tolerance.ts';
import { cross, dot } from '../geometry/vector.ts';
import type { Piece } from '../pattern/piece.ts';

/** How well it is known whether a line is as long as an allowance is wide, mm. */
const ROUGHLY = 0.1;

/** A place among the edges, counted on round the outline. */
export const around = (i: number, count: number): number => (i + count) % count;

/**
 * The edges that arrive at the corner after place `i` as one line, and those that leave it, in the order of the outline:
 * at least as far as an allowance reaches.
 */
export function linesAt(
  piece: Piece,
  i: number,
): { readonly before: readonly number[]; readonly after: readonly number[] } {
  const { edges } = piece;
  const next = around(i + 1, edges.length);
  const reach = Math.max(edges[i]?.allowance ?? 0, edges[next]?.allowance ?? 0);
  // Most edges are longer than that.
  if (isAsLong(piece, i, reach) && isAsLong(piece, next, reach)) return { before: [i], after: [next] };
  const walk = (from: number, step: 1 | -1): readonly number[] => {
    const line = [from];
    let far = lengthAt(piece, from);
    for (let at = from; far < reach && line.length < edges.length; far += lengthAt(piece, at)) {
      if (!isOneLine(piece, step === 1 ? at : around(at - 1, edges.length))) break;
      at = around(at + step, edges.length);
      line.push(at);
    }
    return line;
  };
  const [before, after] = [walk(i, -1).toReversed(), walk(next, 1)];
  return before.some((place) => after.includes(place)) ? { before: [i], after: [next] } : { before, after };
}

const lengthAt = ({ edges }: Piece, place: number): number => {
  const edge = edges[place];
  return edge ? edgeLength(edge, ROUGHLY) : 0;
};

/** Whether an edge is as long as an allowance reaches: nearly all are even from end to end. */
const isAsLong = (piece: Piece, place: number, reach: number): boolean => {
  const edge = piece.edges[place];
  return (
    edge !== undefined &&
    (distance(edgeStart(edge), edgeEnd(edge)) >= reach || lengthAt(piece, place) >= reach)
  );
};

/** Whether the edge at place `i` runs on into the next without a corner, at the same allowance. Darts keep edges apart. */
export function isOneLine({ edges }: Piece, i: number): boolean {
  const [edge, next] = [edges[i], edges[around(i + 1, edges.length)]];
  if (!edge || !next || edge === next || edges.some(({ turn }) => turn === 'dart')) return false;
  const [into, outOf] = [endDirection(edge), startDirection(next)];
  return (
    edge.turn === next.turn &&
    edge.allowance === next.allowance &&
    Math.abs(Math.atan2(cross(into, outOf), dot(into, outOf))) < SMOOTH_ANGLE
  );
}

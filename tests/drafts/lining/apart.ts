import { edgeLength, pointAlong } from '../../../engine/geometry/edge.ts';
import { nearestOnEdge } from '../../../engine/geometry/nearest.ts';
import type { PieceEdge } from '../../../engine/pattern/piece.ts';

/** How far seventeen places along an edge lie from the nearest of several others, mm. */
export function apart(edge: PieceEdge, others: readonly PieceEdge[]): readonly number[] {
  const length = edgeLength(edge);
  return Array.from({ length: 17 }, (_, i) => {
    const { point } = pointAlong(edge, (length * i) / 16);
    return Math.min(...others.map((other) => nearestOnEdge(other, point).distance));
  });
}

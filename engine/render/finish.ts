import { pointAlong } from '../geometry/edge.ts';
import { outlineCurves } from '../geometry/outline.ts';
import { moved } from '../geometry/point.ts';
import { outward, scaled } from '../geometry/vector.ts';
import type { Piece } from '../pattern/piece.ts';
import type { FinishedPiece } from './finished-piece.ts';

export const finish = (piece: Piece): FinishedPiece => ({
  piece,
  cut: outlineCurves(piece.edges),
  notches: piece.notches.flatMap((notch) => {
    const edge = piece.edges.find(({ name }) => name === notch.edge);
    if (!edge) return [];
    const at = pointAlong(edge, notch.at);
    const to = moved(at.point, scaled(outward(at.direction), 8));
    return [{ notch, strokes: [[{ kind: 'line' as const, from: at.point, to }]] }];
  }),
});

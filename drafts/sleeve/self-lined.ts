import { edgeLength } from '../../engine/geometry/edge.ts';
import type { Piece } from '../../engine/pattern/piece.ts';
import { edgeNamed } from '../piece-edges.ts';
import { sewingRank } from '../sewing-rank.ts';

/**
 * A puff that lines itself: cut double, its straight hem on a fold of the cloth. Turned end for end it is its own
 * mirror image, so left and right are cut alike.
 */
export const selfLined = (sleeve: Piece): Piece => ({
  ...sleeve,
  edges: sleeve.edges.map((edge) =>
    edge.turn === 'hem' ? { ...edge, turn: 'fold', allowance: 0, rank: sewingRank.fold } : edge,
  ),
  notches: [
    ...sleeve.notches,
    {
      name: 'hem fold',
      edge: 'front seam',
      at: edgeLength(edgeNamed(sleeve, 'front seam')),
      mark: 'fold',
    },
    { name: 'hem fold', edge: 'back seam', at: 0, mark: 'fold' },
  ],
  cut: [{ cloth: 'self', count: 2, onFold: true, pair: false }],
});

import { edgeLength } from '../engine/geometry/edge.ts';
import type { Notion } from '../engine/pattern/garment.ts';
import type { Piece } from '../engine/pattern/piece.ts';
import { edgeNamed, pieceNamed } from './piece-edges.ts';

/** What keeps the back neckline from stretching. */
export const neckStay = 'stay tape for the back neckline';

/** What keeps the straps from stretching. */
export const strapStay = 'stay tape for the straps';

/** Tapes along edges that would stretch and must not, as long as these: a back neckline each side, and each strap. */
export const stayNotions = (panels: readonly Piece[], strapLength: number): readonly Notion[] => [
  {
    name: neckStay,
    count: 2,
    length: edgeLength(edgeNamed(pieceNamed(panels, 'centre back'), 'neckline')),
    note: 'narrow, on the wrong side over the stitching line',
  },
  { name: strapStay, count: 2, length: strapLength, note: 'narrow, laid into the fold from end to end' },
];

import { notchDepth } from '../../finishing/notch-depth.ts';
import { notchStrokes } from '../../finishing/notches.ts';
import type { Piece } from '../../pattern/piece.ts';
import type { Measured, MeasureOf } from './measured.ts';

/**
 * How deep the deepest notch of a garment is cut, mm, or as a share of the allowance it is cut into; 0 where there is
 * none. As it was read from a file, else as it would be written there. Marks where there is no allowance do not count.
 */
export const deepestNotch = (
  { say }: MeasureOf<'notch depth'>,
  { garment }: Measured,
): { readonly value: number; readonly piece: string } =>
  garment.pieces
    .flatMap((piece) =>
      depths(piece).map(({ depth, allowance }) => ({
        value: say === 'mm' ? depth : depth / allowance,
        piece: piece.name,
      })),
    )
    .reduce((deepest, notch) => (notch.value > deepest.value ? notch : deepest), { value: 0, piece: '' });

interface Depth {
  readonly depth: number;
  readonly allowance: number;
}

const depths = (piece: Piece): readonly Depth[] =>
  notchStrokes(piece, 'slit').flatMap(({ notch, strokes }): readonly Depth[] => {
    const edge = piece.edges.find(({ name }) => name === notch.edge);
    if (!edge || edge.allowance === 0) return [];
    return [{ depth: notch.depth ?? notchDepth(strokes), allowance: edge.allowance }];
  });

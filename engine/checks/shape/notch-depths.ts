import { notchDepth } from '../../finishing/notches.ts';
import { flatMapped } from '../../flat-mapped.ts';
import type { Piece } from '../../pattern/piece.ts';

/** How deep a notch is cut into its allowance, mm. */
export interface NotchDepth {
  readonly piece: string;
  readonly depth: number;
  readonly allowance: number;
}

/**
 * How deep each notch of a piece is cut: as it was read from a file, else as it would be written there. Marks where
 * there is no allowance do not count.
 */
export const notchDepthsOf = (piece: Piece): readonly NotchDepth[] =>
  flatMapped(piece.notches, (notch): readonly NotchDepth[] => {
    const allowance = piece.edges.find(({ name }) => name === notch.edge)?.allowance ?? 0;
    if (allowance === 0) return [];
    return [{ piece: piece.name, depth: notch.depth ?? notchDepth(allowance), allowance }];
  });

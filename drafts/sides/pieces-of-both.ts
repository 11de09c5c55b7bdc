import { type Side, sides } from '../../engine/body/side.ts';
import type { Piece } from '../../engine/pattern/piece.ts';
import type { EdgeRef, SeamCorner } from '../../engine/pattern/seam.ts';
import { alike, inPairs } from './alike.ts';
import { isMirrored, ofOneSide, sided } from './as-worn.ts';

/** The pieces of both sides, and what each pair is now called. */
export interface PiecesOfBoth {
  readonly pieces: readonly Piece[];
  /** Whether left and right of these differ. */
  readonly differ: (piece: string) => boolean;
  /** The names of a piece: its own, or those of its right and its left. */
  readonly namesOf: (piece: string) => readonly string[];
  /** An edge as the seams of one side name it; walked the other way where it is mirrored. */
  readonly edgeOn: (side: Side, ref: EdgeRef) => EdgeRef;
  readonly cornerOn: (side: Side, corner: SeamCorner) => SeamCorner;
}

/**
 * Pairs that came out alike on both sides stay one piece; those that differ become two, numbered anew. A piece that is
 * cut whole must be alike: what is fitted on one side only may not reach it.
 */
export function piecesOfBoth(right: readonly Piece[], left: readonly Piece[]): PiecesOfBoth {
  const pairs = inPairs(right, left, ({ name }) => name);
  const unlike = pairs.filter((pair) => !alike(pair.right, pair.left));
  for (const { right: piece } of unlike)
    if (piece.cut.some(({ count }) => count !== 2))
      throw new Error(`The ${piece.name} is cut whole, but its left and right differ.`);
  const names = new Set(unlike.map(({ right: { name } }) => name));
  const differ = (piece: string): boolean => names.has(piece);
  const nameOn = (side: Side, piece: string): string => (differ(piece) ? sided(side, piece) : piece);
  const made = pairs.flatMap((pair) =>
    differ(pair.right.name) ? sides.map((side) => ofOneSide(pair[side], side)) : [pair.right],
  );
  return {
    pieces: names.size === 0 ? right : made.map((piece, i) => ({ ...piece, number: i + 1 })),
    differ,
    namesOf: (piece) => (differ(piece) ? sides.map((side) => sided(side, piece)) : [piece]),
    edgeOn: (side, { piece, edge, reversed }) => {
      const turned = differ(piece) && isMirrored(piece, side);
      const walked = { piece: nameOn(side, piece), edge };
      return turned === (reversed ?? false) ? walked : { ...walked, reversed: true };
    },
    cornerOn: (side, corner) => ({ ...corner, piece: nameOn(side, corner.piece) }),
  };
}

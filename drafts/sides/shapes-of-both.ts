import { type Side, sides } from '../../engine/body/side.ts';
import type { ShapeClaim } from '../../engine/pattern/shape.ts';
import { piecesOf, renamed } from '../../engine/pattern/shape-parts.ts';
import { alike, inPairs } from './alike.ts';
import { sided } from './as-worn.ts';
import type { PiecesOfBoth } from './pieces-of-both.ts';

/**
 * The shapes claimed of both sides: those of pieces that differ, and those that were drafted to other figures, are there
 * twice, each with its side.
 */
export const shapesOfBoth = (
  right: readonly ShapeClaim[],
  left: readonly ShapeClaim[],
  both: PiecesOfBoth,
): readonly ShapeClaim[] =>
  inPairs(right, left, ({ name }) => name).flatMap((pair) =>
    alike(pair.right, pair.left) && !piecesOf(pair.right).some(both.differ)
      ? [pair.right]
      : sides.map((side) => ({
          ...claimOn(side, pair[side], both),
          name: sided(side, pair.right.name),
        })),
  );

const claimOn = (side: Side, claim: ShapeClaim, { differ, edgeOn }: PiecesOfBoth): ShapeClaim =>
  renamed(claim, {
    edge: (ref) => edgeOn(side, ref),
    piece: (name) => (differ(name) ? sided(side, name) : name),
  });

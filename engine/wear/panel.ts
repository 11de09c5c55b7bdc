import type { Side } from '../body/side.ts';
import { outlineBounds } from '../geometry/outline.ts';
import type { Garment } from '../pattern/garment.ts';
import { mirrorImage } from '../pattern/mirror-image.ts';
import type { Piece, PieceEdge } from '../pattern/piece.ts';

/** One piece of cloth as it is worn: a piece, or its mirror image, or half of one that is cut on a fold down its middle. */
export interface Panel {
  readonly name: string;
  /** What its pair is called, where left and right differ; else its own name. */
  readonly pair: string;
  /** As drawn; the mirror image of a left panel is drawn from the other side, its edges still walked as on the left. */
  readonly piece: Piece;
  /** `whole`: it lies across the middle of the body. */
  readonly side: Side | 'whole';
  /** Of cloth: two where it is folded double along an edge, and one more where it is lined. */
  readonly layers: number;
}

/** In the order in which panels are listed. */
export const leftAndRight: readonly Side[] = ['left', 'right'];

/** What of a garment hangs on the body: linings and facings lie inside, and bear nothing. */
const inside = /\b(lining|facing)\b/;

/** The panels of a garment's outside. */
export function panelsOf(garment: Garment): readonly Panel[] {
  const middles = middleEdges(garment);
  return garment.pieces
    .filter(({ name, cut }) => !inside.test(name) && cut.some(({ cloth }) => cloth === 'self'))
    .flatMap((piece): readonly Panel[] => {
      const middle = piece.edges.some(
        ({ turn, name }) => turn === 'fold' && middles.has(`${piece.name}/${name}`),
      );
      const pair = piece.cut.some(({ cloth, pair: paired }) => cloth === 'self' && paired);
      const folded = piece.edges.some(
        ({ turn, name }) => turn === 'fold' && !middles.has(`${piece.name}/${name}`),
      );
      const lined =
        piece.cut.some(({ cloth }) => cloth === 'lining') ||
        garment.pieces.some(({ name }) => name === `${piece.name} lining`);
      const layers = (folded ? 2 : 1) + (lined ? 1 : 0);
      const { name, oneOf } = piece;
      if (oneOf) return [{ name, pair: oneOf.pair, piece: asPair(piece), side: oneOf.side, layers }];
      if (!middle && !pair) return [{ name, pair: name, piece, side: 'whole', layers }];
      return leftAndRight.map((side) => ({ name, pair: name, piece, side, layers }));
    });
}

/** A piece of one side as its pair is drawn. */
export const asPair = (piece: Piece): Piece => (piece.oneOf?.mirrored ? mirrorImage(piece) : piece);

/** An edge on the middle of the body is drawn no further from x = 0 than this, mm: a centre back seam is shaped. */
const NEAR_MIDDLE = 30;

/**
 * Edges that lie on the middle of the body, where a left half meets its right: folds, and the seam under a zip. A line runs on
 * across them to its own mirror image, as it does across a fold that doubles a piece, which lies elsewhere.
 */
export const middleEdges = ({ joins, pieces }: Garment): ReadonlySet<string> =>
  new Set(
    joins.flatMap((join) => {
      if (join.kind !== 'mirror') return [];
      const piece = pieces.find(({ name }) => name === join.a.piece);
      const edge = piece?.edges.find(({ name }) => name === join.a.seam);
      if (!edge) return [];
      const { left, right } = outlineBounds([edge]);
      const onMiddle = Math.max(Math.abs(left), Math.abs(right)) < NEAR_MIDDLE;
      return onMiddle ? [`${join.a.piece}/${join.a.seam}`] : [];
    }),
  );

export const edgeOfPanel = ({ piece }: Panel, name: string): PieceEdge => {
  const edge = piece.edges.find((e) => e.name === name);
  if (!edge) throw new RangeError(`${piece.name} has no edge “${name}”.`);
  return edge;
};

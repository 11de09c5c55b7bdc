import type { Edge } from '../geometry/curve.ts';
import { edgeLength, pointAlong } from '../geometry/edge.ts';
import { laidOn } from '../geometry/laid-on.ts';
import { distance, type Point } from '../geometry/point.ts';
import type { Garment } from '../pattern/garment.ts';
import type { Piece } from '../pattern/piece.ts';
import { mirrorImage } from '../shaping/mirror-image.ts';

/** What became of a piece from one draft of a garment to the next, mm. */
export type PieceMove =
  | {
      readonly kind: 'redrawn';
      readonly piece: string;
      readonly edges: readonly EdgeMove[];
      readonly notches: readonly NotchMove[];
    }
  | { readonly kind: 'new' | 'gone'; readonly piece: string };

/** What became of one stitching edge, mm. */
export interface EdgeMove {
  readonly edge: string;
  readonly before: number;
  readonly after: number;
  /** The farthest that any place of the edge moved, the old piece laid on the new one. */
  readonly moved: number;
}

/** Where a notch stands on its edge, from the edge's start, mm. */
export interface NotchMove {
  readonly notch: string;
  readonly edge: string;
  readonly before: number;
  readonly after: number;
}

/** Places looked at along each edge, its ends among them. */
const places = 25;

/**
 * What moved between two drafts of one garment, piece by piece in the new order, by name; where left and right have
 * come to differ, each is laid on what the pair was before. The old piece is laid on
 * the new one so that as much as can be lies on itself: where a piece stands on the paper is no move.
 */
export function movesBetween(before: Garment, after: Garment): readonly PieceMove[] {
  const old = new Map(before.pieces.map((piece) => [piece.name, piece]));
  const now = new Set(after.pieces.flatMap(({ name, oneOf }) => (oneOf ? [name, oneOf.pair] : [name])));
  return [
    ...after.pieces.map((piece): PieceMove => {
      const was = old.get(piece.name) ?? pairBefore(piece, old);
      return was
        ? {
            kind: 'redrawn',
            piece: piece.name,
            edges: edgeMoves(was, piece),
            notches: notchMoves(was, piece),
          }
        : { kind: 'new', piece: piece.name };
    }),
    ...before.pieces
      .filter(({ name }) => !now.has(name))
      .map(({ name }): PieceMove => ({ kind: 'gone', piece: name })),
  ];
}

/** The pair that a piece was once one of, drawn the same way round. */
function pairBefore({ oneOf }: Piece, old: ReadonlyMap<string, Piece>): Piece | undefined {
  const pair = oneOf && old.get(oneOf.pair);
  return pair && oneOf.mirrored ? mirrorImage(pair) : pair;
}

function edgeMoves(before: Piece, after: Piece): readonly EdgeMove[] {
  const pairs = after.edges.flatMap((edge) => {
    const was = before.edges.find(({ name }) => name === edge.name);
    return was ? [{ edge: edge.name, was, old: sampled(was), now: edge, fresh: sampled(edge) }] : [];
  });
  const lay = laidOn(
    pairs.flatMap(({ old }) => old),
    pairs.flatMap(({ fresh }) => fresh),
  );
  return pairs.map(({ edge, was, old, now, fresh }) => ({
    edge,
    before: edgeLength(was),
    after: edgeLength(now),
    moved: Math.max(...old.map((p, i) => distance(lay(p), fresh[i] ?? p))),
  }));
}

const notchMoves = (before: Piece, after: Piece): readonly NotchMove[] =>
  after.notches.flatMap(({ name, edge, at }) => {
    const was = before.notches.find((notch) => notch.name === name && notch.edge === edge);
    return was ? [{ notch: name, edge, before: was.at, after: at }] : [];
  });

function sampled(edge: Edge): readonly Point[] {
  const length = edgeLength(edge);
  return Array.from({ length: places }, (_, i) => pointAlong(edge, (i / (places - 1)) * length).point);
}

import type { Edge } from '../geometry/curve.ts';
import { edgeLength, pointAlong } from '../geometry/edge.ts';
import { laidOn } from '../geometry/laid-on.ts';
import { distance, type Point } from '../geometry/point.ts';
import type { Garment } from '../pattern/garment.ts';
import { mirrorImage } from '../pattern/mirror-image.ts';
import type { Piece } from '../pattern/piece.ts';

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
 * come to differ, or have ceased to, each of them is laid on the pair. The old piece is laid on the new one so that as
 * much as can be lies on itself: where a piece stands on the paper is no move.
 */
export function movesBetween(before: Garment, after: Garment): readonly PieceMove[] {
  const laid = after.pieces.map((piece) => ({ piece, earlier: earlierOf(piece, before.pieces) }));
  const kept = new Set(laid.flatMap(({ earlier }) => earlier.map(({ from }) => from)));
  return [
    ...laid.flatMap(({ piece, earlier }): readonly PieceMove[] =>
      earlier.length === 0
        ? [{ kind: 'new', piece: piece.name }]
        : earlier.map(({ named, was }) => ({
            kind: 'redrawn',
            piece: named,
            edges: edgeMoves(was, piece),
            notches: notchMoves(was, piece),
          })),
    ),
    ...before.pieces
      .filter((piece) => !kept.has(piece))
      .map(({ name }): PieceMove => ({ kind: 'gone', piece: name })),
  ];
}

/** An earlier piece, drawn the same way round as the one it became, and what the move is called by. */
interface Earlier {
  readonly named: string;
  readonly from: Piece;
  readonly was: Piece;
}

/** What a piece was: the same, the pair that it is now one of, or the right and the left that are now a pair. */
function earlierOf(piece: Piece, before: readonly Piece[]): readonly Earlier[] {
  const same = before.find(({ name }) => name === piece.name);
  if (same) return [{ named: piece.name, from: same, was: same }];
  const pair = before.find(({ name }) => name === piece.oneOf?.pair);
  if (pair) return [{ named: piece.name, from: pair, was: piece.oneOf?.mirrored ? mirrorImage(pair) : pair }];
  return before.flatMap((side) =>
    side.oneOf?.pair === piece.name
      ? [{ named: side.name, from: side, was: side.oneOf.mirrored ? mirrorImage(side) : side }]
      : [],
  );
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

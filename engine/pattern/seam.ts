import type { Side } from '../body/side.ts';

/** A whole edge of a piece, walked from its start, or from its end when `reversed`. */
export interface EdgeRef {
  readonly piece: string;
  readonly edge: string;
  readonly reversed?: true;
}

/**
 * Two chains of edges sewn together, both walked from the same end of the seam.
 * The length of `a` is `gatherRatio` times the length of `b`, plus `ease` (mm, less than
 * nothing where a is held short). A plain seam has ratio 1, ease 0.
 */
export interface Seam {
  readonly name: string;
  readonly a: readonly EdgeRef[];
  readonly b: readonly EdgeRef[];
  readonly ease: number;
  readonly gatherRatio: number;
  /** Side a is turned under and sewn by hand onto side b, over whatever seams b has been sewn in before. */
  readonly felled?: true;
  /**
   * Sewn on this side only, because a piece that is cut whole has an edge for each; all others are sewn on both. None
   * on a seam read from a file.
   */
  readonly side?: Side;
}

/** The corner of a piece between a running edge (a waist, an armhole) and the seam that ends there. */
export interface SeamCorner {
  readonly piece: string;
  readonly edge: string;
  readonly seam: string;
}

/** A place where a line goes on once sewn: without a corner, unless it `turns` there, as it is meant to. */
export type Join = {
  readonly name: string;
  readonly turns?: true;
} & JoinPlace;

export type JoinPlace =
  /** Across a seam, from one piece to its neighbour. */
  | { readonly kind: 'across'; readonly a: SeamCorner; readonly b: SeamCorner }
  /** Across a fold or centre line, to its own mirror image. */
  | { readonly kind: 'mirror'; readonly a: SeamCorner }
  /** From one edge of a piece to the next edge of the same piece. */
  | { readonly kind: 'along'; readonly piece: string; readonly from: string; readonly to: string };

/** A finished girth: what the pieces measure around the body at a level must be body plus ease. */
export interface Girth {
  readonly level: string;
  /** mm */
  readonly body: number;
  /** mm */
  readonly ease: number;
  /** Round one of two arms, so that what is cut as a pair counts once. */
  readonly limb?: true;
  readonly parts: readonly GirthPart[];
}

/** A level line of a piece (less the fullness gathered away there), or a whole edge, counted `times`. */
export type GirthPart =
  | { readonly kind: 'line'; readonly piece: string; readonly line: string; readonly times: number }
  | { readonly kind: 'edge'; readonly piece: string; readonly edge: string; readonly times: number };

/** The pieces whose edges a join speaks of. */
export const piecesOfJoin = (join: Join): readonly string[] =>
  join.kind === 'along'
    ? [join.piece]
    : join.kind === 'across'
      ? [join.a.piece, join.b.piece]
      : [join.a.piece];

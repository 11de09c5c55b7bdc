import type { NotchStrokes } from '../finishing/notches.ts';
import { boundingBox, boundsAbout } from '../geometry/bounds.ts';
import type { Curve } from '../geometry/curve.ts';
import { type Point, point } from '../geometry/point.ts';
import type { Piece } from '../pattern/piece.ts';
import type { Ink } from './ink.ts';
import { inkBounds } from './ink-bounds.ts';
import type { Size } from './layout.ts';

/** A piece as it goes on paper: with its cutting line and the strokes of its notches. */
export interface FinishedPiece {
  readonly piece: Piece;
  /** A closed chain. */
  readonly cut: readonly Curve[];
  readonly notches: readonly NotchStrokes[];
  /** Its words, once it has any: on it, or beside it with a leader. */
  readonly lettering: readonly Ink[];
  /** What it was in an earlier draft, drawn under it: closed stitching lines. */
  readonly earlier?: readonly (readonly Curve[])[];
}

/** The upright rectangle about everything that is printed of a piece: its top left corner and its size. */
export function boxOf({
  piece,
  cut,
  notches,
  lettering,
  earlier = [],
}: FinishedPiece): Size & { readonly corner: Point } {
  const lines = boundingBox([
    ...cut,
    ...piece.edges.flatMap((edge) => edge.curves),
    ...notches.flatMap(({ strokes }) => strokes.flat()),
    ...earlier.flat(),
  ]);
  const { left, right, top, bottom } = boundsAbout([lines, ...lettering.map(inkBounds)]);
  return { corner: point(left, top), width: right - left, height: bottom - top };
}

/** The line around a piece: the cutting line, or the stitching line where there is none. */
export const lineAround = ({ piece, cut }: FinishedPiece): readonly Curve[] =>
  cut.length > 0 ? cut : piece.edges.flatMap(({ curves }) => curves);

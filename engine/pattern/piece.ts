import type { Side } from '../body/side.ts';
import type { Curve, Edge } from '../geometry/curve.ts';
import type { Point } from '../geometry/point.ts';

/** One part of a garment, drawn flat: what is stitched, what is cut, and every mark that goes on the cloth. */
export interface Piece {
  readonly name: string;
  /** The number printed on the piece, in the order in which pieces are listed. */
  readonly number: number;
  /** The stitching line: a closed chain, clockwise as drawn. */
  readonly edges: readonly PieceEdge[];
  readonly grain: { readonly from: Point; readonly to: Point };
  readonly notches: readonly Notch[];
  readonly lines: readonly InsideLine[];
  readonly marks: readonly Mark[];
  readonly cut: readonly CutCount[];
  /**
   * Which pair this is one of, where left and right differ, on which side of hers it is worn, and whether it is drawn as
   * the mirror image of what the pair is drawn as. None on a piece read from a file.
   */
  readonly oneOf?: { readonly pair: string; readonly side: Side; readonly mirrored: boolean };
}

/** An edge with what becomes of it. */
export interface PieceEdge extends Edge {
  /**
   * `seam`: sewn to another edge. `fold`: lies on a fold of the cloth. `hem`: turned up. `finished`: faced or bound.
   * `dart`: one of two legs, one after the other, that are sewn to each other; the cloth between them stays.
   */
  readonly turn: 'seam' | 'fold' | 'hem' | 'finished' | 'dart';
  /** Width of cloth beyond the stitching line, mm; none on a fold or a dart's leg. */
  readonly allowance: number;
  /** Which is sewn first: at a corner, the edge with the lower rank runs through and its allowance ends square. */
  readonly rank: number;
  /** How often the edge changes from hollow to round by design. */
  readonly inflections: number;
  /** Sewn to nothing in this garment: it waits for what is made apart. */
  readonly open?: true;
}

/** A balance mark on a stitching line; the same name stands on the edge it is sewn to. */
export interface Notch {
  readonly name: string;
  readonly edge: string;
  /** Distance along the edge from its start, mm. */
  readonly at: number;
  /**
   * `single` at the front, `double` at the back, `fold` where a fold begins, `level` on long seams, `dart` at either
   * side of a dart's mouth.
   */
  readonly mark: 'single' | 'double' | 'fold' | 'level' | 'gather' | 'dart';
  /** How deep it is cut into the allowance, mm; only on a piece read from a file. */
  readonly depth?: number;
}

/** A line drawn inside the piece. */
export interface InsideLine {
  readonly name: string;
  readonly kind: 'level' | 'casing' | 'gathering' | 'slash' | 'fold';
  readonly curves: readonly Curve[];
  /** Level lines: width that gathers take away again at this level, mm. */
  readonly fullness?: number;
  /** The level of the finished girth that a level line is part of. */
  readonly girth?: string;
  /** What the line carries in words: a level line the finished girth it belongs to, a casing its elastic. */
  readonly text?: string;
}

/** A mark at a place: a buttonhole (with its length along `angle`), a drill hole, or a cross with its name beside it. */
export interface Mark {
  readonly name: string;
  readonly kind: 'buttonhole' | 'drill' | 'cross';
  readonly at: Point;
  /** Radians; none of a drill hole. */
  readonly angle: number;
  /** mm; none of a drill hole. */
  readonly length: number;
}

/** How many to cut of one cloth. */
export interface CutCount {
  readonly cloth: 'self' | 'lining' | 'interfacing';
  readonly count: number;
  /** Cut with the piece's fold edge on a fold of the cloth. */
  readonly onFold: boolean;
  /** Cut in mirrored pairs, a left and a right. */
  readonly pair: boolean;
  /** Which way the printed side faces on cloth laid right side up, where that is not the cutter's choice. */
  readonly printedSide?: 'up' | 'down';
}

import type { Curve } from '../geometry/curve.ts';
import type { Point } from '../geometry/point.ts';
import type { Issue } from '../issue.ts';
import type { Piece } from './piece.ts';
import type { Ground, Unit } from './quantity.ts';
import type { SewingStep } from './sewing.ts';
import type { ShapeClaim } from './shape.ts';
import type { Side } from './side.ts';

/**
 * Everything a draft makes: pieces, how they are sewn together, what must come out, and the construction log.
 * Plain data that can be written to a file and read back.
 */
export interface Garment {
  readonly name: string;
  readonly body: string;
  /** Whose measurements it was drawn for; none on a garment read from a file or of unknown size. */
  readonly wearer?: Wearer;
  readonly pieces: readonly Piece[];
  readonly seams: readonly Seam[];
  readonly joins: readonly Join[];
  readonly girths: readonly Girth[];
  readonly notions: readonly Notion[];
  readonly steps: readonly Step[];
  /** What a pattern cutter would look at, with the band each figure should lie in. */
  readonly shapes: readonly ShapeClaim[];
  /** The order in which it is sewn; none on a garment read from a file. */
  readonly sewing?: readonly SewingStep[];
  readonly issues: readonly Issue[];
}

/** What tells one wearer's pieces from another's: her cup and her girths, mm. */
export interface Wearer {
  readonly cup: string;
  readonly bust: number;
  readonly underBust: number;
  readonly waist: number;
  readonly hip: number;
}

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
export interface Corner {
  readonly piece: string;
  readonly edge: string;
  readonly seam: string;
}

/** A place where a line must run on without a corner once sewn. */
export type Join =
  /** Across a seam, from one piece to its neighbour. */
  | { readonly kind: 'across'; readonly name: string; readonly a: Corner; readonly b: Corner }
  /** Across a fold or centre line, to its own mirror image. */
  | { readonly kind: 'mirror'; readonly name: string; readonly a: Corner }
  /** From one edge of a piece to the next edge of the same piece. */
  | {
      readonly kind: 'along';
      readonly name: string;
      readonly piece: string;
      readonly from: string;
      readonly to: string;
    };

/** A finished girth: what the pieces measure around the body at a level must be body plus ease. */
export interface Girth {
  readonly level: string;
  /** mm */
  readonly body: number;
  /** mm */
  readonly ease: number;
  readonly parts: readonly GirthPart[];
}

/** A level line of a piece (less the fullness gathered away there), or a whole edge, counted `times`. */
export type GirthPart =
  | { readonly kind: 'line'; readonly piece: string; readonly line: string; readonly times: number }
  | { readonly kind: 'edge'; readonly piece: string; readonly edge: string; readonly times: number };

/** Something to buy or cut that is no piece of pattern: elastic, cord. */
export interface Notion {
  readonly name: string;
  readonly count: number;
  /** mm */
  readonly length: number;
  readonly note: string;
}

/** One step of the construction: what was done, with the numbers of this body, and on whose word. */
export interface Step {
  readonly number: number;
  /** The part of the drawing it belongs to; none where the draft names none. */
  readonly heading?: string;
  readonly title: string;
  /** For a dressmaker: the sentence with the numbers of this body, and what it comes to. */
  readonly text: string;
  /** The same without numbers: words, and where a number stands, its place in `from`. */
  readonly says: readonly (string | number)[];
  readonly source: string;
  /** For a program: the formula with its numbers, where the step gives one. See drafts/sentences.md. */
  readonly formula?: string;
  /** What it comes to (mm, radians, or a plain number). */
  readonly value?: number;
  readonly unit?: Unit;
  /** What it was found from, each once. */
  readonly from: readonly Ground[];
  /** What it puts on paper, where it draws anything. */
  readonly draws?: Drawn;
}

/** Points placed and lines drawn by a step, each on a named drawing, such as `back`. */
export interface Drawn {
  readonly points: readonly PlacedPoint[];
  readonly lines: readonly PlacedLine[];
}

export interface PlacedPoint {
  readonly on: string;
  readonly name: string;
  readonly at: Point;
}

export interface PlacedLine {
  readonly on: string;
  readonly name: string;
  readonly curves: readonly Curve[];
}

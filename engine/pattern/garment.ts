import type { Body } from '../body/body.ts';
import type { Curve } from '../geometry/curve.ts';
import type { Point } from '../geometry/point.ts';
import type { Issue } from '../issue.ts';
import type { Dimension } from './dimension.ts';
import type { Piece } from './piece.ts';
import type { Ground, QuantityUnit } from './quantity.ts';
import type { Girth, Join, Seam } from './seam.ts';
import type { SewingStep } from './sewing.ts';
import type { ShapeClaim } from './shape.ts';
import type { Styling } from './styling.ts';

/**
 * Everything a draft makes: pieces, how they are sewn together, what must come out, and the construction log.
 * Plain data that can be written to a file and read back.
 */
export interface Garment {
  readonly name: string;
  readonly body: string;
  /** Whose measurements it was drawn for; none on a garment of unknown size. */
  readonly wearer?: Wearer;
  /** The choices that were made otherwise than usual; none where nobody knows, as on one read from an earlier sheet. */
  readonly choices?: Styling;
  /** The measurements it was drawn for, and what was found at a fitting; none where nobody knows, as on an earlier sheet. */
  readonly drawnFor?: DrawnFor;
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

/** All of a body that a draft draws for. */
export type DrawnFor = Pick<Body, 'wearer' | 'size' | 'fitting'>;

/** What tells one wearer's pieces from another's: her cup and her girths, mm. */
export interface Wearer {
  readonly cup: string;
  readonly bust: number;
  readonly underBust: number;
  readonly waist: number;
  readonly hip: number;
}

/** Something to buy or cut that is no piece of pattern: elastic, cord. */
export interface Notion {
  readonly name: string;
  readonly count: number;
  /** mm */
  readonly length: number;
  /** Once its ends are joined, mm: what it draws the cloth up to. As long as it is cut, where it is not said. */
  readonly finished?: number;
  readonly note: string;
  /** What has a length and is yet not sold off a reel: sold one by one, or cut off a cloth. None on one read from a file. */
  readonly got?: 'singly' | 'off interfacing';
}

/** One step of the construction: what was done, with the numbers of this body, and on whose word. */
export interface Step {
  readonly number: number;
  /** The part of the drawing it belongs to; none where the draft names none. */
  readonly heading?: string;
  readonly title: string;
  /** What it says, without numbers: words, and where a number stands, its place in `from`; read by `stepText`. */
  readonly says: readonly (string | number)[];
  readonly source: string;
  /** For a program: the formula with its numbers, where the step gives one. See drafts/sentences.md. */
  readonly formula?: string;
  /** What it comes to (mm, radians, or a plain number). */
  readonly value?: number;
  readonly unit?: QuantityUnit;
  /** What it was found from, each once. */
  readonly from: readonly Ground[];
  /** What it puts on paper, where it draws anything. */
  readonly draws?: StepDrawing;
  /** Lengths and angles that can be seen on a drawing by what has been drawn with it, its own or those of others. */
  readonly dimensions?: readonly Dimension[];
}

/** Points placed and lines drawn by a step, each on a named drawing, such as `back`. */
export interface StepDrawing {
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

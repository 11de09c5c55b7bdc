import type { EdgeRef, ScreenPiece } from '../../drafts/index.ts';
import type { TakenFile } from './taken-file.ts';
import type { Lesson } from './views/learn/lesson.ts';

/** What can be asked of a draft beyond its figures, by name. Each has its maker in `requests/parts.ts`. */
export interface DraftParts {
  /** The pieces as they are drawn on the screen. */
  readonly lines: readonly ScreenPiece[];
  /** Which edges are sewn to which. */
  readonly seams: readonly ScreenSeam[];
  /** That the sheet was written, and walked again from its own text. */
  readonly proof: true;
  /** The sheet, `report.json`, and each piece as a file of its own, to the byte as the command line writes them. */
  readonly files: readonly TakenFile[];
  /** What its sewing order warns of. */
  readonly cautions: readonly string[];
  /** Its construction, step by step. */
  readonly lesson: Lesson;
}

export type DraftPart = keyof DraftParts;

/** A seam to be walked on the screen; lengths in mm. */
export interface ScreenSeam {
  readonly name: string;
  readonly a: SeamSide;
  readonly b: SeamSide;
  /** Where both sides meet: start, notches and end, how far along either. */
  readonly stops: readonly { readonly a: number; readonly b: number }[];
  /** How much longer side a is than b where it is gathered: 1 where it is not. */
  readonly gatherRatio: number;
  /** What is told of it: how long both sides are, and what becomes of the difference. */
  readonly says: string;
}

export interface SeamSide {
  readonly edges: readonly (EdgeRef & { readonly length: number })[];
  /** In the reader's unit. */
  readonly length: string;
}

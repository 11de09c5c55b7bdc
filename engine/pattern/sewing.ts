import type { SeamFinish } from './finishes.ts';
import type { EdgeRef } from './seam.ts';
import type { SeamClass, StitchType } from './stitches.ts';

/**
 * One step of sewing a garment, as data that can be proved. What can be measured on the pieces (allowances,
 * lengths, gathers, partner notches) is not repeated here: it is read off the seams that the step names.
 */
export interface SewingStep {
  /** What is done, as an order; no two steps have the same. */
  readonly title: string;
  /** Seams of the garment that are sewn. */
  readonly sews?: readonly string[];
  /** Seams whose allowances are pressed once the step is sewn. */
  readonly presses?: readonly string[];
  /** Edges that are turned up, faced or bound. */
  readonly turns?: readonly EdgeRef[];
  /** Edges that are caught in the same stitching, such as the underside of what is sewn on double. */
  readonly catches?: readonly EdgeRef[];
  /** What must have been done in an earlier step. */
  readonly needs?: readonly State[];
  /** What is done once the step is. */
  readonly brings?: readonly State[];
  /** What cannot be done any more once the step is. */
  readonly closes?: readonly State[];
  /** Notions that are used, by name. */
  readonly uses?: readonly string[];
  readonly stitch?: StitchType;
  readonly seamClass?: SeamClass;
  /** How the raw edges of what is sewn or turned are kept from fraying. */
  readonly finish?: SeamFinish;
  /** What to do, sentence by sentence. */
  readonly how: readonly string[];
  readonly amounts?: readonly Amount[];
  readonly cautions?: readonly string[];
}

/** What a piece has been brought to, as a whole or at one of its edges or inside lines. */
export interface State {
  readonly piece: string;
  readonly is: Condition;
  readonly at?: string;
}

/** `cut` and `marked` are said of whole pieces, all others of a place on one. */
export type Condition =
  | 'cut'
  | 'marked'
  | 'stay-stitched'
  | 'folded'
  | 'rows stitched'
  | 'gathered'
  | 'buttonholes made'
  | 'casing stitched'
  | 'opening left'
  | 'threaded'
  | 'casing closed'
  | 'tacked'
  | 'zip set in';

/** A length that is no edge of a piece: how wide, how far apart, how much; mm, and on whose word where it is no choice of this garment. */
export interface Amount {
  readonly says: string;
  readonly mm: number;
  readonly source?: string;
}

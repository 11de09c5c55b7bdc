import type { EdgeRef, GirthPart } from './garment.ts';

/**
 * A shape that a garment claims to have: what is measured on its written pieces, and the band the figure should lie
 * in. Plain data, so that a sheet read back can be measured again.
 */
export type ShapeClaim = Band & Measure;

/** What a claim is called, and between which limits its figure should lie, in the unit of its measure. */
export interface Band {
  readonly name: string;
  /** No limit on a side where there is none. */
  readonly low?: number;
  readonly high?: number;
  /** Outside the band the draft fails. All other bands are said and never refuse: what is a wish must not be a law. */
  readonly bound?: true;
  /** What usually is the reason, or what it would mean in cloth, when the figure lies outside. */
  readonly outside: string;
}

/** A line that runs over whole edges of one or more pieces, walked from the first to the last. */
export interface Chain {
  readonly edges: readonly EdgeRef[];
  /** Notches on it between which alone it counts. */
  readonly from?: string;
  readonly to?: string;
}

/** A length that can be added up: a level line, a whole edge or a chain, `times` it, less than 0 to take it off. */
export type LengthPart =
  | GirthPart
  | { readonly kind: 'chain'; readonly chain: Chain; readonly times: number };

/** How a figure is found, by the kind of measure. */
export type Measure =
  /** Known to the draft alone and not measured on paper: it is left out of a written sheet. */
  | {
      readonly kind: 'drafted';
      readonly piece: string;
      readonly value: number;
      readonly unit: ShapeUnit;
    }
  /** mm: how far two lines part at the most, laid on each other start on start, the cloth on the same side. */
  | { readonly kind: 'laid on'; readonly a: Chain; readonly b: Chain }
  /** mm: the radius of the tightest bend of a line; 0 at a corner. */
  | { readonly kind: 'tightest bend'; readonly of: Chain }
  /** mm: lengths added up, and `plus`. */
  | { readonly kind: 'length'; readonly parts: readonly LengthPart[]; readonly plus?: number };

export type ShapeUnit = 'mm' | 'degrees' | 'share' | 'ratio';

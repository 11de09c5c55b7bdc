import type { EdgeRef, GirthPart, SeamCorner } from './seam.ts';

/**
 * A shape that a garment claims to have: what is measured on its written pieces, and the band the figure should lie
 * in. Plain data, so that a sheet read back can be measured again.
 */
export type ShapeClaim = Band & ShapeMeasure;

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
export interface EdgeChain {
  readonly edges: readonly EdgeRef[];
  /** Notches on it between which alone it counts. */
  readonly from?: string;
  readonly to?: string;
}

/** A length that can be added up: a level line, a whole edge or a chain, `times` it, less than 0 to take it off. */
export type LengthPart =
  | GirthPart
  | { readonly kind: 'chain'; readonly chain: EdgeChain; readonly times: number };

/** A corner, and the level of its piece that it is measured from: a level line, or a straight edge. */
export interface CornerFromLevel {
  readonly corner: SeamCorner;
  readonly level: { readonly kind: 'line' | 'edge'; readonly name: string };
}

/** How a figure is found, by the kind of measure. */
export type ShapeMeasure =
  /** Known to the draft alone and not measured on paper: it is left out of a written sheet. */
  | {
      readonly kind: 'drafted';
      readonly piece: string;
      readonly value: number;
      readonly unit: ShapeUnit;
    }
  /** mm: how far two lines part at the most, laid on each other start on start, the cloth on the same side. */
  | { readonly kind: 'laid on'; readonly a: EdgeChain; readonly b: EdgeChain }
  /** mm: the radius of the tightest bend of a line; 0 at a corner. */
  | { readonly kind: 'tightest bend'; readonly of: EdgeChain }
  /** mm: lengths added up, and `plus`. */
  | { readonly kind: 'length'; readonly parts: readonly LengthPart[]; readonly plus?: number }
  /** Share: how far up a line, square to the heading of its start, a notch on it stands. */
  | { readonly kind: 'notch height'; readonly of: EdgeChain; readonly notch: string }
  /**
   * mm, across the grain: how far a cap's highest place, or its grainline, lies from a notch, towards the cap's end.
   */
  | {
      readonly kind: 'cap top';
      readonly of: EdgeChain;
      readonly notch: string;
      readonly say: 'top' | 'grain';
    }
  /** mm, and `plus`: how much farther one corner lies from a level than another does from its own. */
  | {
      readonly kind: 'dip';
      readonly at: CornerFromLevel;
      readonly than: CornerFromLevel;
      readonly plus?: number;
    }
  /** Degrees between an edge, where it leaves a corner, and the grain of its piece. */
  | { readonly kind: 'lean'; readonly at: SeamCorner }
  /** Degrees between a piece's grain and the upright to a level of it. */
  | { readonly kind: 'grain'; readonly piece: string; readonly line: string }
  /**
   * mm: how much narrower a width is than a straight taper from one above it to one below. How far down it lies is
   * taken from the notches on an edge that runs down from the upper level to the lower one, at its end.
   */
  | {
      readonly kind: 'taper';
      readonly upper: readonly LengthPart[];
      readonly middle: readonly LengthPart[];
      readonly lower: readonly LengthPart[];
      readonly down: EdgeRef;
      readonly notches: readonly [upper: string, middle: string];
    }
  /**
   * mm: where a line on one piece stands out farthest beyond its chord: how far past a level of the piece, in the
   * direction in which the line runs, or how far from the chord.
   */
  | {
      readonly kind: 'fullest';
      readonly of: EdgeChain;
      readonly line: string;
      readonly say: 'past level' | 'beyond chord';
    }
  /**
   * Degrees that a seam takes up over a bulge: the most that both its edges together turn to the cloth from one place
   * of it to another. Both chains are walked from the same end of the seam.
   */
  | { readonly kind: 'sewn-in angle'; readonly a: EdgeChain; readonly b: EdgeChain }
  /**
   * mm, and `plus`: from a centre line square across to the place a share up an armhole, side panel and centre panel laid
   * together along their seam where the line crosses it. Both chains of the seam are walked up from the same place.
   */
  | {
      readonly kind: 'across';
      readonly armhole: EdgeChain;
      readonly share: number;
      readonly side: EdgeChain;
      readonly centre: EdgeChain;
      readonly middle: EdgeRef;
      readonly plus?: number;
    }
  /** The deepest that any notch is cut: mm, or share of the allowance it is cut into. */
  | { readonly kind: 'notch depth'; readonly say: 'mm' | 'share' };

export type ShapeUnit = 'mm' | 'degrees' | 'share' | 'ratio';

import type { Slashing } from './slash-lines.ts';

/** So many mm, or such a share of the whole. */
export type LengthOrShare = { readonly mm: number } | { readonly share: number };

/** A place on an edge, measured from the end at which one comes to it clockwise. */
export interface PlaceOnEdge {
  readonly edge: string;
  readonly at: LengthOrShare;
}

/** One thing that is done to a piece on paper, as data. Lengths in mm. */
export type Alteration =
  /** Slashed and spread by so much in all; less than nothing laps the strips over each other. */
  | { readonly kind: 'spread'; readonly slashing: Slashing; readonly amount: number }
  /** Spread from the cup it was made for to another one: `whole` where it goes right across both sides. */
  | {
      readonly kind: 'another cup';
      readonly slashing: Slashing;
      readonly from: string;
      readonly to: string;
      readonly whole: boolean;
    }
  /**
   * Spread until an edge is `ratio` times as long as its seam: as the edge it is sewn to (`seam`), or as it was itself. It is
   * the first slashed edge that opens, unless another is named.
   */
  | {
      readonly kind: 'gather';
      readonly slashing: Slashing;
      readonly ratio: number;
      readonly edge?: string;
      readonly seam?: number;
    }
  /** A dart turned to another place by a share of its angle, its point drawn so far `short` of the pin. */
  | {
      readonly kind: 'pivot dart';
      readonly to: PlaceOnEdge;
      readonly dart?: string;
      readonly share: number;
      readonly short?: number;
    }
  /** Cut across at a level, measured from the top, and let down by so much; less than nothing takes it up. */
  | { readonly kind: 'lengthen'; readonly amount: number; readonly at: LengthOrShare }
  | { readonly kind: 'move notch'; readonly notch: string; readonly to: PlaceOnEdge }
  /** The other half drawn, mirrored in a straight edge. */
  | { readonly kind: 'mirror'; readonly edge: string };

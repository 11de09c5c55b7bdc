import type { CutCount } from '../pattern/piece.ts';

/** The cloths that pieces are cut of. */
export type ClothName = CutCount['cloth'];

/** How the cloth lies and what it asks for. Lengths in mm. */
export interface Cloth {
  /** From selvedge to selvedge as it is bought. */
  readonly width: number;
  /** Folded lengthwise, right sides together, selvedge on selvedge; else open in one layer, right side up. */
  readonly folded: boolean;
  /** It looks different upside down (pile, print), so that all pieces run the same way. */
  readonly nap: boolean;
  /** Kept free along each selvedge. */
  readonly selvedge: number;
  /** Kept free between cutting lines. */
  readonly gap: number;
  /** The share of length and width that is lost in the wash before cutting. */
  readonly shrink: number;
  /** After so much of its length stripes across the cloth repeat, as it is bought; 0 for none. */
  readonly stripe: number;
  /** After so much of its width stripes along the cloth repeat, as it is bought; none on cloth without. */
  readonly stripeAlong?: number;
  /** The colours of those follow each other in one order: there is no place about which they are their own mirror image. */
  readonly oneOrder?: boolean;
}

/** Width of the cloth when it is cut, mm: washed, from selvedge to selvedge. */
export const washedWidth = ({ width, shrink }: Cloth): number => width * (1 - shrink);

/**
 * Width of the strip on which pieces may lie, mm: one layer, without the margin at the selvedges. Stripes along the cloth take a
 * repeat of it: it is folded on the stripe nearest to its middle, half a repeat from there at most, and open
 * the first stripe lies a repeat from the margin at most.
 */
export const stripWidth = (cloth: Cloth): number => {
  const repeat = washedRepeatAcross(cloth);
  return cloth.folded
    ? (washedWidth(cloth) - repeat) / 2 - cloth.selvedge
    : washedWidth(cloth) - repeat - 2 * cloth.selvedge;
};

/** Where the strip begins across the cloth, mm: on the fold, or beside the selvedge; with stripes along the cloth on one. */
export const stripStart = ({ folded, selvedge }: Cloth): number => (folded ? 0 : selvedge);

/** The repeat of stripes once the cloth is washed, mm; 0 for none. */
export const washedRepeat = ({ stripe, shrink }: Cloth): number => stripe * (1 - shrink);

/** The repeat across the cloth of stripes along it, once it is washed, mm; 0 for none. */
export const washedRepeatAcross = ({ stripeAlong = 0, shrink }: Cloth): number => stripeAlong * (1 - shrink);

/** Whether all pieces must run the same way: stripes across the cloth need not look the same upside down, nor do colours in one order. */
export const oneWay = ({ nap, stripe, oneOrder = false }: Cloth): boolean => nap || stripe > 0 || oneOrder;

/** Length to buy for a lay of some length (mm): unwashed, and of stripes a repeat more, so that the lay can begin with one. */
export const lengthNeeded = (cloth: Cloth, laid: number): number =>
  (laid + washedRepeat(cloth)) / (1 - cloth.shrink);

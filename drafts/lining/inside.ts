import type { Curve } from '../../engine/geometry/curve.ts';
import type { Piece } from '../../engine/pattern/piece.ts';
import type { BodiceAllowances } from '../allowances.ts';

/** What a bodice is sewn to, and so which of its edges are finished inside, and when. */
export interface BodiceSetting {
  /** Sleeves finish the armholes. */
  readonly sleeves: boolean;
  /** A skirt hangs from the waist; else it is left raw. */
  readonly skirt: boolean;
  readonly opening: 'back' | 'side';
}

/** What lining and facings are drawn from: the panels as they were cut. */
export interface BodiceInside {
  readonly panels: readonly Piece[];
  /** Each armhole from the strap to the underarm, in one curve, and the share of it that is sewn flat to a sleeve. */
  readonly armholes: { readonly front: Armhole; readonly back: Armhole };
  /** How far the finished edges are set back, mm. */
  readonly turnOfCloth: number;
  readonly setting: BodiceSetting;
  readonly allowance: BodiceAllowances;
  /** What the free edges of facings are turned under by, mm. */
  readonly facingEdge: number;
}

export interface Armhole {
  readonly curve: Curve;
  readonly flat: number;
}

import type { Piece } from '../../engine/pattern/piece.ts';
import type { Seam } from '../../engine/pattern/seam.ts';
import type { PanelCut } from '../bodice/panel-cut.ts';
import type { Style } from '../bodice/style.ts';
import type { Finishing } from '../finishing.ts';
import type { Parts } from '../parts.ts';

/** What a bodice is sewn to, and so which of its edges are finished inside, and when. */
export interface BodiceSetting {
  /** Sleeves finish the armholes. */
  readonly sleeve: 'puff' | 'long puff' | 'plain' | 'none';
  /** A skirt hangs from the waist; else it is left raw. */
  readonly skirt: boolean;
  readonly opening: 'back' | 'side';
}

/** A bodice that is to be finished inside: as it is sewn, as it was cut, and what it is sewn to. */
export interface Unfinished {
  readonly bodice: Parts;
  readonly cut: PanelCut;
  readonly setting: BodiceSetting;
}

/** What lining or facings add to a bodice. */
export type InsideParts = Pick<Parts, 'pieces' | 'seams' | 'joins' | 'girths'>;

/** How lining or facings are made up, sewn to the finished edges, and caught down inside. */
export interface InsideWork {
  readonly kind: 'lining' | 'facings';
  readonly pieces: readonly Piece[];
  readonly seams: readonly Seam[];
  readonly style: Style;
  readonly setting: BodiceSetting;
  readonly turnOfCloth: number;
  /** What the free edges of facings are turned under by, mm. */
  readonly facingEdge: number;
  /** For edges that stay to be seen inside. */
  readonly exposed: Finishing;
}

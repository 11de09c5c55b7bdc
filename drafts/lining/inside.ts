/** What a bodice is sewn to, and so which of its edges are finished inside, and when. */
export interface BodiceSetting {
  /** Sleeves finish the armholes. */
  readonly sleeve: 'puff' | 'long puff' | 'plain' | 'none';
  /** A skirt hangs from the waist; else it is left raw. */
  readonly skirt: boolean;
  readonly opening: 'back' | 'side';
}

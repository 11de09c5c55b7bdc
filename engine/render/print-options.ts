import type { NotchType } from '../finishing/notches.ts';
import type { Curve } from '../geometry/curve.ts';

/** What the caller wants printed besides the garment itself. */
export interface PrintOptions {
  /** Printed as given; the engine has no clock. */
  readonly date?: string | undefined;
  /** How notches are drawn; slits unless said otherwise. */
  readonly notches?: NotchType;
  /** Stitching lines of an earlier draft, closed chains by the name of the piece they are drawn under on the sheet. */
  readonly earlier?: ReadonlyMap<string, readonly (readonly Curve[])[]>;
}

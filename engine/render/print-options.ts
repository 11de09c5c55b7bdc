import type { NotchType } from '../finishing/notches.ts';
import type { Curve } from '../geometry/curve.ts';
import type { Unit } from '../text/units.ts';

/** How a garment is put into words for its reader. */
export interface ReadAs {
  /** Printed as given; the engine has no clock. */
  readonly date?: string | undefined;
  /** The unit that lengths are written in; mm unless said otherwise. */
  readonly units?: Unit | undefined;
}

/** What the caller wants printed besides the garment itself. */
export interface PrintOptions extends ReadAs {
  /** How notches are drawn; slits unless said otherwise. */
  readonly notches?: NotchType;
  /** Stitching lines of an earlier draft, closed chains by the name of the piece they are drawn under on the sheet. */
  readonly earlier?: ReadonlyMap<string, readonly (readonly Curve[])[]>;
}

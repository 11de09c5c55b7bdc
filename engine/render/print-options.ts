import type { NotchType } from '../finishing/notches.ts';

/** What the caller wants printed besides the garment itself. */
export interface PrintOptions {
  /** Printed as given; the engine has no clock. */
  readonly date?: string | undefined;
  /** How notches are drawn; slits unless said otherwise. */
  readonly notches?: NotchType;
}

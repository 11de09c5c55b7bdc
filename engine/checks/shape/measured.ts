import type { Garment } from '../../pattern/garment.ts';
import type { Measure } from '../../pattern/shape.ts';
import type { Tape } from '../tape.ts';

/** What shapes are measured on: the pieces of a garment as written, and a tape for them. */
export interface Measured {
  readonly garment: Garment;
  readonly tape: Tape;
}

/** One kind of measure by its name. */
export type MeasureOf<Kind extends Measure['kind']> = Extract<Measure, { readonly kind: Kind }>;

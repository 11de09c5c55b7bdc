import type { Garment } from '../../pattern/garment.ts';
import type { ShapeMeasure } from '../../pattern/shape.ts';
import type { Tape } from '../tape.ts';
import { type NotchDepth, notchDepthsOf } from './notch-depths.ts';

/** What shapes are measured with: a tape for the pieces of a garment as written, and the depths of their notches. */
export interface Measured {
  readonly tape: Tape;
  /** How deep every notch is cut; looked for once. */
  readonly notchDepths: () => readonly NotchDepth[];
}

/** A garment to measure shapes on. */
export function measuredOn(garment: Garment, tape: Tape): Measured {
  let depths: readonly NotchDepth[] | undefined;
  return {
    tape,
    notchDepths: () => {
      depths ??= garment.pieces.flatMap(notchDepthsOf);
      return depths;
    },
  };
}

/** One kind of measure by its name. */
export type MeasureOf<Kind extends ShapeMeasure['kind']> = Extract<ShapeMeasure, { readonly kind: Kind }>;

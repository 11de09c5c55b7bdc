import type { Curve } from './curve.ts';
import { distance } from './point.ts';

/** A length (mm) that no part of a curve, by its share of the parameter, exceeds: quickly found, and up to three times too long. */
export const roughLength = (curve: Curve): number =>
  curve.kind === 'line'
    ? distance(curve.from, curve.to)
    : 3 *
      Math.max(
        distance(curve.from, curve.handle1),
        distance(curve.handle1, curve.handle2),
        distance(curve.handle2, curve.to),
      );

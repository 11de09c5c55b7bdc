import type { SketchBuilder } from '../../engine/constraints/sketch-builder.ts';
import { type Point, vectorBetween } from '../../engine/geometry/point.ts';
import { angleOf } from '../../engine/geometry/vector.ts';
import { bodiceRules as rules } from './rules.ts';

/**
 * The heading of a princess edge at the waist, guessed as that of its way from or to the under-bust level: it leans no
 * further, so that the waist may run level across the seam.
 */
export function nearUpright(sketch: SketchBuilder, name: string, from: Point, to: Point): string {
  const chord = angleOf(vectorBetween(from, to));
  const upright = chord < 0 ? -Math.PI / 2 : Math.PI / 2;
  const most = (rules.leanAtWaist.value * Math.PI) / 180;
  const [min, max] = [upright - most, upright + most];
  return sketch.angle(name, Math.min(Math.max(chord, min), max), { min, max });
}

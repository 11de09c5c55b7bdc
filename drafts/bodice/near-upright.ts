import type { SketchBuilder } from '../../engine/constraints/sketch-builder.ts';
import { type Point, vectorBetween } from '../../engine/geometry/point.ts';
import { angleOf } from '../../engine/geometry/vector.ts';
import { bodiceRules as rules } from './rules.ts';

/**
 * The heading of a princess edge at the waist, guessed as that of its way from or to the under-bust level: it leans no
 * further from `upright`, the grain of its panel (radians, up or down the paper where nothing is said), so that the waist
 * may run level across the seam.
 */
export function nearUpright(
  sketch: SketchBuilder,
  name: string,
  from: Point,
  to: Point,
  upright = from.y > to.y ? -Math.PI / 2 : Math.PI / 2,
): string {
  const chord = angleOf(vectorBetween(from, to));
  const most = (rules.leanAtWaist.value * Math.PI) / 180;
  const [min, max] = [upright - most, upright + most];
  return sketch.angle(name, Math.min(Math.max(chord, min), max), { min, max });
}

import type { SketchBuilder } from '../../engine/constraints/sketch-builder.ts';
import { type Point, vectorBetween } from '../../engine/geometry/point.ts';
import { angleOf } from '../../engine/geometry/vector.ts';
import { bodiceRules as rules } from './rules.ts';
import type { StyleLines } from './style-lines.ts';

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

/**
 * The heading with which a side panel's waist reaches its princess seam, guessed as that of its way from the side seam: near
 * level. Nothing else keeps it from arriving along the seam, where the two panels' corners would be none and a whole turn.
 */
export function nearLevel(sketch: SketchBuilder, name: string, side: Point, princess: Point): string {
  const chord = angleOf(vectorBetween(side, princess));
  const towardsCentre = chord < 0 ? -Math.PI : Math.PI;
  const most = (rules.waistSlants.value * Math.PI) / 180;
  const [min, max] = [towardsCentre - most, towardsCentre + most];
  return sketch.angle(name, Math.min(Math.max(chord, min), max), { min, max });
}

/**
 * How a plain centre front's princess edge leaves a neckline, down to its pivot at bust level: no further aside from the way there
 * than the rule has it, or a facing laid together there would lie across its own fold. Free where it begins elsewhere.
 */
export function leavingNeckline(
  sketch: SketchBuilder,
  { style, front }: StyleLines,
  pivot: Point,
): { readonly start?: { readonly angle: string } } {
  if (style.princess.front !== 'neckline') return {};
  const way = angleOf(vectorBetween(front.princess.centre, pivot));
  const most = (rules.princessAside.value * Math.PI) / 180;
  const angle = sketch.angle('centre front princess at the neckline', way, {
    min: way - most,
    max: way + most,
  });
  return { start: { angle } };
}

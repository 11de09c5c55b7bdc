import type { SketchBuilder } from '../../engine/constraints/sketch-builder.ts';
import { atLeastRound } from '../../engine/constraints/statements.ts';
import { vectorBetween } from '../../engine/geometry/point.ts';
import { angleOf } from '../../engine/geometry/vector.ts';
import { fairLine } from '../fair-lines.ts';
import type { Foundation } from '../foundation/foundation.ts';
import type { StyleLines } from './style-lines.ts';
import { turnable } from './turnable.ts';

/**
 * Asks for the back neckline, from the centre to the corner at the strap or to the shoulder. A round one bends no tighter
 * than its allowance (mm) lets it be turned.
 */
export function planBackNeckline(
  sketch: SketchBuilder,
  foundation: Foundation,
  { style, back }: StyleLines,
  allowance: number,
): string {
  const centre = sketch.fixed('centre back neck', back.centre);
  const centreUp = angleOf(vectorBetween(foundation.back.centreWaist, back.centre));
  const square = {
    angle: sketch.fixedAngle('back neckline square to the centre back', centreUp + Math.PI / 2),
  };
  const round = style.backNeckline !== 'pointed';
  const plan = (): string => {
    if (style.shoulder === 'strap') {
      const corner = sketch.fixed('back neckline, outer end', back.corner);
      return round
        ? sketch.curve('back neckline', centre, corner, { start: square })
        : sketch.line('back neckline', centre, corner);
    }
    const shoulder = sketch.fixed('back neckline at the shoulder', back.atCentre.inner);
    const up = sketch.fixedAngle('back neckline square to the shoulder', back.atCentre.square - Math.PI);
    return sketch.curve('back neckline', centre, shoulder, {
      ...(round ? { start: square } : {}),
      end: { angle: up },
    });
  };
  const curve = plan();
  if (round || style.shoulder === 'whole') fairLine(sketch, curve);
  if (style.backNeckline === 'round')
    sketch.relation(atLeastRound('back neckline can be turned', curve, turnable(allowance)));
  return curve;
}

import type { SketchBuilder } from '../../engine/constraints/sketch-builder.ts';
import { atLeastRound } from '../../engine/constraints/statements.ts';
import type { Curve } from '../../engine/geometry/curve.ts';
import { fairLine } from '../fair-lines.ts';
import { easedLine } from './eased-line.ts';
import { bodiceRules as rules } from './rules.ts';
import type { StyleLines } from './style-lines.ts';
import { turnable } from './turnable.ts';

/** Asks for the front neckline of a plain front, from the fold to its corner or to the shoulder. */
export function planFrontNeckline(
  sketch: SketchBuilder,
  { style, front }: StyleLines,
  allowance: number,
): string {
  const centre = sketch.fixed('centre front neck', front.centre);
  const round = style.neckline === 'round' || style.neckline === 'natural';
  const square = { angle: sketch.fixedAngle('neckline square to the centre front', 0) };
  const toShoulder = style.princess.front !== 'neckline' && hasNoCorner(style);
  const end = sketch.fixed('front neckline, outer end', toShoulder ? front.atCentre.inner : front.corner);
  if (style.neckline === 'square') return sketch.line('front neckline', centre, end);
  const upTheShoulder = {
    angle: sketch.fixedAngle('front neckline square to the shoulder', front.atCentre.square - Math.PI),
  };
  const curve = sketch.curve('front neckline', centre, end, {
    ...(round ? { start: square } : {}),
    ...(style.neckline === 'sweetheart'
      ? {
          start: { angle: sketch.fixedAngle('sweetheart rises', -rules.sweetheartRises.quantity.value) },
          end: { angle: sketch.fixedAngle('sweetheart falls', rules.sweetheartFalls.quantity.value) },
        }
      : {}),
    ...(toShoulder ? { end: upTheShoulder } : {}),
  });
  fairLine(sketch, curve);
  if (style.neckline === 'round')
    sketch.relation(atLeastRound('front neckline can be turned', curve, turnable(allowance)));
  return curve;
}

/** Whether a neckline runs on to the shoulder without a corner. */
export const hasNoCorner = ({ neckline }: StyleLines['style']): boolean =>
  neckline === 'round' || neckline === 'pointed' || neckline === 'natural';

/**
 * The side of a neckline, from a whole shoulder down to its corner: on the centre front, or on the side front where the
 * princess line begins at the corner. None where the neckline itself runs up to the shoulder, or a strap begins.
 */
export function necklineSide({ style, front }: StyleLines): Curve | undefined {
  if (style.shoulder === 'strap') return undefined;
  if (style.princess.front === 'neckline') return easedLine(front.inner, front.sideCorner, front.neckHeading);
  return hasNoCorner(style)
    ? undefined
    : easedLine(front.atCentre.inner, front.corner, front.atCentre.square);
}

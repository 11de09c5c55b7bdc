import { type Point, point, turnedAbout } from '../../engine/geometry/point.ts';
import type { Angle, Mm } from '../../engine/pattern/quantity.ts';
import type { BackNeck } from './neck-and-shoulder.ts';
import { foundationRules as rules } from './rules.ts';
import type { FoundationTable } from './table.ts';

/** The bust dart: what the front is longer than the back, as an angle about `pivot`, where the princess line is. */
export function bustDart(
  table: FoundationTable,
  neck: BackNeck,
  frontWidth: Mm,
  princess: Mm,
  pivot: Point,
): Angle {
  const { size } = table;
  const roundBack = table.fitted('round back');
  const backLength =
    roundBack.value === 0
      ? table.mm`Back length from the side neck: back neck point to waist ${size.backNeckPointToWaist} + side neck above it ${neck.rise}`
      : table.mm`Back length from the side neck: back neck point to waist ${size.backNeckPointToWaist} + side neck above it ${neck.rise} - round back ${roundBack}; which the front does not share`;
  const intake = table.mm`Bust dart at the side seam: neck over bust to waist ${size.neckShoulderPointToWaist} - back length ${backLength} + ${rules.frontHang}`;
  const leg = table.mm`Bust dart, from bust point to side seam: front width ${frontWidth} - princess line ${princess}`;
  const dart = table.angle`Bust dart angle: 2 x arc sine of (dart at the side seam ${intake} / (2 x its length ${leg})) [chord of a circle]`;
  const atSide = point(frontWidth.value, pivot.y);
  table.dimension('front', leg, pivot, atSide);
  const otherLeg = turnedAbout(atSide, pivot, -dart.value);
  table.dimension('front', intake, atSide, otherLeg);
  table.angleAt('front', dart, pivot, atSide, otherLeg);
  return dart;
}

/** The bust dart with what is folded out of a front armhole on straps that no sleeve fills, towards the bust point. */
export function heldIn(table: FoundationTable, dart: Angle, pivot: Point, atSide: Point): Angle {
  const { bustGirth, upperChestGirth } = table.size;
  const held = table.angle`Bust dart with the armhole held in: ${dart} + ${rules.armholeHeld} x (1 - square of ((bust girth ${bustGirth} - upper chest girth ${upperChestGirth}) / ${rules.armholeOverfull})), at least ${dart}; on straps without sleeves`;
  table.angleAt('front', held, pivot, atSide, turnedAbout(atSide, pivot, -held.value));
  return held;
}

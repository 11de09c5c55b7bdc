import { arc } from '../../engine/geometry/arc.ts';
import type { Curve } from '../../engine/geometry/curve.ts';
import { moved, type Point, point } from '../../engine/geometry/point.ts';
import { reversed } from '../../engine/geometry/split.ts';
import { COINCIDENCE, RELATION_ANGLE } from '../../engine/geometry/tolerance.ts';
import { transformedCurve } from '../../engine/geometry/transform.ts';
import { heading, scaled, type Vector } from '../../engine/geometry/vector.ts';
import { type GoreName, isHalf, seamsOf } from './by-gore.ts';
import type { SkirtTable } from './choices.ts';
import type { GoreFrame } from './gore-frame.ts';
import type { GoreSizes } from './gore-sizes.ts';
import { skirtRules as rules } from './rules.ts';

/** Where the seams of a gore, on their way down, turn out into the flare. */
export interface FlareTurn {
  /** Where the right seam begins to turn; at the hip where it leans no less above it. */
  readonly from: Point;
  /** By how much the seams lean out there, radians. */
  readonly lean: number;
  /** The turn itself as the outline runs, the right one down to the hip, the left one up from it; nothing where there is none. */
  readonly right: readonly Curve[];
  readonly left: readonly Curve[];
  /** How long it is, mm. */
  readonly length: number;
}

/**
 * Turns the seams of a gore into the flare, just above its hip. A body is rounder than a straight line from waist to hip: seams
 * that came in by the flare's lean from further down would leave less room above the hip than she takes.
 */
export function drawTurn(
  table: SkirtTable,
  gore: GoreName,
  { waist, hip, toHip }: GoreSizes,
  frame: GoreFrame,
): FlareTurn {
  const on = `skirt ${gore}`;
  const right = seamsOf[gore][1];
  const { hipRight, out, lean } = frame;
  const above = table.angle`Seams of the ${gore} gore lean out above the hip: arc sine of (hip straight out ${out} x (1 - waist ${waist[gore]} / hip ${hip[gore]}) / (waist to hip ${toHip[right]} - ${rules.flareTurn}), at most 1), at most the lean below ${lean}`;
  const leansFrom = (at: Point): void =>
    table.angleAt(on, above, at, moved(at, upwards(0)), moved(at, upwards(above.value)));
  const turn = lean.value - above.value;
  if (turn < RELATION_ANGLE) {
    leansFrom(hipRight);
    return { from: hipRight, lean: above.value, right: [], left: [], length: 0 };
  }
  const length = rules.flareTurn.value;
  const centre = moved(hipRight, scaled(heading(-lean.value), length / turn));
  const { curves } = arc(centre, scaled(heading(-above.value), -length / turn), -turn, COINCIDENCE);
  const from = curves[0]?.from ?? hipRight;
  table.say`Turn of the ${gore} gore: over the last ${rules.flareTurn} above the hip the ${right} seam turns from that lean into the one below, as an arc`;
  table.point(on, `turn at the ${right}`, from);
  table.line(on, `${right}, turn`, curves);
  leansFrom(from);
  const left = isHalf(gore)
    ? []
    : curves.map((curve) => reversed(transformedCurve(curve, mirrored))).toReversed();
  if (left.length > 0) table.line(on, `${seamsOf[gore][0]}, turn`, left);
  return { from, lean: above.value, right: curves, left, length };
}

/** Up along a right seam that leans out by an angle. */
const upwards = (lean: number): Vector => ({ x: -Math.sin(lean), y: -Math.cos(lean) });

const mirrored = (p: Point): Point => point(-p.x, p.y);

import type { Curve } from '../../engine/geometry/curve.ts';
import { edgeEnd, edgeLength, edgeOf, endDirection, splitEdgeAt } from '../../engine/geometry/edge.ts';
import { type Point, point, turnedAbout } from '../../engine/geometry/point.ts';
import { transformedCurve } from '../../engine/geometry/transform.ts';
import { angleOf } from '../../engine/geometry/vector.ts';
import type { ArmholeHalf } from '../bodice/armhole-parts.ts';

/** One half of an armhole as a sleeve meets it: laid down with the underarm at the origin, level there. */
export interface HalfArmhole {
  /** From the notch to the underarm: what is sewn flat. The front comes from the left, the back from the right. */
  readonly flat: readonly Curve[];
  readonly flatLength: number;
  /** From the shoulder to the notch, mm. */
  readonly upper: number;
}

export interface Armhole {
  readonly front: HalfArmhole;
  readonly back: HalfArmhole;
  /** All round, mm. */
  readonly girth: number;
}

/** Lays the armhole of a bodice down for its sleeve. */
export function laidDown(armholes: { readonly front: ArmholeHalf; readonly back: ArmholeHalf }): Armhole {
  const front = halfLaidDown(armholes.front, 1);
  const back = halfLaidDown(armholes.back, -1);
  return { front, back, girth: front.flatLength + front.upper + back.flatLength + back.upper };
}

function halfLaidDown({ laid, toNotch }: ArmholeHalf, across: 1 | -1): HalfArmhole {
  const whole = edgeOf('armhole', laid);
  const [, flat] = splitEdgeAt(whole, toNotch, ['upper', 'flat']);
  const foot = edgeEnd(whole);
  const level = angleOf(endDirection(whole));
  const down = (p: Point): Point => {
    const turned = turnedAbout(p, foot, -level);
    return point(across * (turned.x - foot.x), turned.y - foot.y);
  };
  return {
    flat: flat.curves.map((curve) => transformedCurve(curve, down)),
    flatLength: edgeLength(flat),
    upper: toNotch,
  };
}

/** An armhole of the same form, so many times as large. */
export function scaledArmhole({ front, back, girth }: Armhole, times: number): Armhole {
  const half = ({ flat, flatLength, upper }: HalfArmhole): HalfArmhole => ({
    flat: flat.map((curve) => transformedCurve(curve, ({ x, y }) => point(x * times, y * times))),
    flatLength: flatLength * times,
    upper: upper * times,
  });
  return { front: half(front), back: half(back), girth: girth * times };
}

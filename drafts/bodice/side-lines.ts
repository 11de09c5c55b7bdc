import type { SketchBuilder } from '../../engine/constraints/sketch-builder.ts';
import { sewnEqual } from '../../engine/constraints/statements.ts';
import { vectorBetween } from '../../engine/geometry/point.ts';
import { angleOf } from '../../engine/geometry/vector.ts';
import { fairLines } from '../fair-lines.ts';
import type { Foundation } from '../foundation/foundation.ts';
import type { SideSeam } from '../foundation/side-seam.ts';
import { type ArmholeLine, sideHeading } from './armholes.ts';

/** A side seam in the sketch, from underarm to waist, and the heading with which the waist leaves it there. */
export interface SideLine {
  readonly curves: readonly string[];
  /** Its place at the under-bust level, where it bends there. */
  readonly underBust: string | undefined;
  readonly waist: string;
  readonly waistLeaves: string;
}

/** What a half's princess lines and waist are drawn beside. */
export interface Beside {
  readonly armhole: ArmholeLine;
  readonly side: SideLine;
}

export interface SideLines {
  readonly front: SideLine;
  readonly back: SideLine;
}

/**
 * Asks for the side seams: straight, or where they give in under the bust, bent there, front and back alike. The waist
 * leaves both square, so that it runs on over the seam, and neither half feels the curves of the other.
 */
export function planSides(
  sketch: SketchBuilder,
  foundation: Foundation,
  underarms: { readonly front: string; readonly back: string },
): SideLines {
  const squareTo = (part: 'front' | 'back', arriving: number): string =>
    sketch.fixedAngle(`waist square to the ${part} side seam`, arriving + Math.PI / 2);
  const straight = (part: 'front' | 'back'): SideLine => {
    const { side } = foundation[part];
    const waist = sketch.fixed(`${part} side at waist`, side.waist);
    const line = sketch.line(`${part} side`, underarms[part], waist);
    return { curves: [line], underBust: undefined, waist, waistLeaves: squareTo(part, sideHeading(side)) };
  };
  if (!foundation.front.side.bent) return { front: straight('front'), back: straight('back') };
  const front = planBent(sketch, foundation, 'front', underarms.front);
  const back = planBent(sketch, foundation, 'back', underarms.back);
  sketch.relation(
    sewnEqual('side seams equal above the under-bust level', [front.curves[1]], [back.curves[1]]),
    sewnEqual('side seams equal below the under-bust level', [front.curves[2]], [back.curves[2]]),
  );
  const waistLeaves = (part: 'front' | 'back'): string =>
    squareTo(part, headingAtWaist(foundation[part].side));
  return {
    front: { ...front, waistLeaves: waistLeaves('front') },
    back: { ...back, waistLeaves: waistLeaves('back') },
  };
}

/** The heading with which a bent side seam reaches the waist. */
const headingAtWaist = ({ underBust, waist }: SideSeam): number => angleOf(vectorBetween(underBust, waist));

/** A side seam in three, bent under the bust. */
interface BentSide extends Pick<SideLine, 'underBust' | 'waist'> {
  readonly curves: readonly [straight: string, above: string, below: string];
}

/** Straight down to the bust level, in to the under-bust level, and out again to the waist. */
function planBent(
  sketch: SketchBuilder,
  foundation: Foundation,
  part: 'front' | 'back',
  underarm: string,
): BentSide {
  const { side } = foundation[part];
  const bust = sketch.fixed(`${part} side at bust level`, side.bust);
  const bend = sketch.fixed(`${part} side under bust`, side.underBust);
  const waist = sketch.fixed(`${part} side at waist`, side.waist);
  const along = { angle: sketch.fixedAngle(`${part} side runs`, sideHeading(side)) };
  const above = sketch.curve(`${part} side 2`, bust, bend, { start: along, end: along });
  const below = sketch.curve(`${part} side 3`, bend, waist, {
    start: along,
    end: { angle: sketch.fixedAngle(`${part} side opens to the waist`, headingAtWaist(side)) },
  });
  fairLines(sketch, [above, below]);
  return { curves: [sketch.line(`${part} side 1`, underarm, bust), above, below], underBust: bend, waist };
}

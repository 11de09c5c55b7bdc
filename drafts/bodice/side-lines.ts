import { lengthOf, type SketchBuilder } from '../../engine/constraints/sketch-builder.ts';
import { vectorBetween } from '../../engine/geometry/point.ts';
import { angleOf } from '../../engine/geometry/vector.ts';
import { fairLines } from '../fair-lines.ts';
import type { Foundation } from '../foundation/foundation.ts';
import { sideHeading } from './armholes.ts';

/** The side seams of front and back in the sketch, from underarm to waist. */
export interface SideLines {
  readonly front: readonly string[];
  readonly back: readonly string[];
}

/** Asks for the side seams: straight, or where they give in under the bust, bent there, front and back alike. */
export function planSides(sketch: SketchBuilder, { front, back }: Foundation): SideLines {
  const lines = (part: 'front' | 'back'): readonly string[] => {
    const { side } = part === 'front' ? front : back;
    const waist = sketch.fixed(`${part} side at waist`, side.waist);
    if (!side.bent) return [sketch.line(`${part} side`, `${part} underarm`, waist)];
    const bust = sketch.fixed(`${part} side at bust level`, side.bust);
    const bend = sketch.fixed(`${part} side under bust`, side.underBust);
    const along = sketch.fixedAngle(`${part} side runs`, sideHeading(side));
    const curves = [
      sketch.curve(`${part} side 2`, bust, bend, { start: { angle: along }, end: { angle: along } }),
      sketch.curve(`${part} side 3`, bend, waist, {
        start: { angle: along },
        end: {
          angle: sketch.fixedAngle(
            `${part} side at the waist`,
            angleOf(vectorBetween(side.underBust, side.waist)),
          ),
        },
      }),
    ];
    fairLines(sketch, curves);
    return [sketch.line(`${part} side 1`, `${part} underarm`, bust), ...curves];
  };
  const sides = { front: lines('front'), back: lines('back') };
  if (front.side.bent)
    for (const [i, stretch] of ['above', 'below'].entries())
      sketch.relation({
        kind: 'length',
        name: `side seams equal ${stretch} the under-bust level`,
        terms: [lengthOf(sides.front.slice(i + 1, i + 2)), lengthOf(sides.back.slice(i + 1, i + 2), -1)],
        mm: 0,
      });
  return sides;
}

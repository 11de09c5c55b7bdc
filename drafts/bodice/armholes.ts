import { endOf, type SketchBuilder, startOf, xOf, yOf } from '../../engine/constraints/sketch-builder.ts';
import { atLeastRound, bendsEvenly, runsAcross, turns } from '../../engine/constraints/statements.ts';
import { point, turnedAbout, vectorBetween } from '../../engine/geometry/point.ts';
import { angleOf } from '../../engine/geometry/vector.ts';
import { fairLines } from '../fair-lines.ts';
import type { Foundation } from '../foundation/foundation.ts';
import type { SideSeam } from '../foundation/side-seam.ts';
import { keepNear } from '../keep-near.ts';
import { leastRadius, bodiceRules as rules } from './rules.ts';
import type { StyleLines } from './style-lines.ts';

/** An armhole's two curves in the sketch, from the shoulder past the fold of the arm to the underarm. */
export type ArmholeCurves = readonly [upper: string, lower: string];

/** An armhole in the sketch: its curves and points by their names there. */
export interface ArmholeLine {
  readonly curves: ArmholeCurves;
  readonly underarm: string;
  /** Where a princess line begins at the fold of the arm, on the panel at the centre and on the one at the side. */
  readonly fold: { readonly centre: string; readonly side: string } | undefined;
}

/**
 * Asks for one half of the armhole: square to the shoulder, past the fold of the arm, square to the side seam. Where
 * the princess line begins at the fold of the arm, the upper curve belongs to the panel at the centre; `runsOn` says
 * that it goes on into the lower one once they are sewn together.
 */
export function planArmhole(
  sketch: SketchBuilder,
  part: 'front' | 'back',
  { levels, ...foundation }: Foundation,
  { style, onShoulder, ...lines }: StyleLines,
  allowance: number,
): ArmholeLine {
  const half = lines[part];
  const { across, side, shoulder } = foundation[part];
  const parted = style.princess[part] === 'armhole';
  const inset = rules.armholeInset.value * (shoulder.length.value - onShoulder.outer);
  const fold = point(across.x - inset, across.y);
  const pivot = part === 'front' ? foundation.front.pivot : foundation.back.blade;
  const foldAtSide = turnedAbout(fold, pivot, half.turned);
  const underarm = sketch.fixed(`${part} underarm`, side.underarm);
  const end = {
    angle: sketch.fixedAngle(`${part} armhole square to the side`, sideHeading(side) - Math.PI / 2),
  };
  const shaped = (curves: ArmholeCurves, at?: ArmholeLine['fold']): ArmholeLine => {
    fairLines(sketch, curves);
    for (const curve of curves)
      sketch.relation(atLeastRound(`${curve} can be turned`, curve, leastRadius(allowance)));
    return { curves, underarm, fold: at };
  };
  if (parted) {
    const top = sketch.fixed(`${part} shoulder point`, half.atCentre.outer);
    const upperEnd = sketch.fixed(`${part} arm fold, centre`, turnedAbout(fold, pivot, -half.turnedIn));
    const lowerEnd = sketch.fixed(`${part} arm fold, side`, foldAtSide);
    const down = angleOf(vectorBetween(fold, side.underarm));
    const above = sketch.angle(`${part} armhole at the arm fold, centre`, Math.PI / 2);
    const below = sketch.angle(
      `${part} armhole at the arm fold, side`,
      (Math.PI / 2 + half.turned + down) / 2,
    );
    const curves = [
      sketch.curve(`${part} armhole 1`, top, upperEnd, {
        start: { angle: sketch.fixedAngle(`${part} armhole square to the shoulder`, half.atCentre.square) },
        end: { angle: above },
      }),
      sketch.curve(`${part} armhole 2`, lowerEnd, underarm, { start: { angle: below }, end }),
    ] as const;
    return shaped(curves, { centre: upperEnd, side: lowerEnd });
  }
  const top = sketch.fixed(`${part} armhole at the shoulder`, half.outer);
  const middle = sketch.point(`${part} arm fold`, foldAtSide);
  keepNear(sketch, `${part} arm fold across`, [xOf(middle)], foldAtSide.x, 'firm');
  keepNear(sketch, `${part} arm fold down`, [yOf(middle)], foldAtSide.y, 'faint');
  const [upper, lower] = sketch.smoothLine(`${part} armhole`, [top, middle, underarm], {
    start: { angle: sketch.fixedAngle(`${part} armhole square to the shoulder`, half.square) },
    end,
  });
  sketch.relation(bendsEvenly(`${part} armhole bends evenly at the arm fold`, upper, lower));
  return shaped([upper, lower]);
}

/** The heading with which a side seam leaves the underarm. */
export const sideHeading = ({ underarm, waist }: SideSeam): number => angleOf(vectorBetween(underarm, waist));

/** An armhole that a princess seam crosses runs on over it without a corner, and the seam leaves it near square. */
export function runsOn(
  sketch: SketchBuilder,
  part: 'front' | 'back',
  [upper, lower]: ArmholeCurves,
  princess: { readonly centre: string; readonly side: string },
): void {
  sketch.relation(
    runsAcross(`${part} armhole across the princess seam`, [upper, princess.centre], [princess.side, lower]),
    turns(
      `${part} princess seam leaves the armhole`,
      endOf(upper),
      startOf(princess.centre),
      rules.leavesArmhole.quantity.value,
    ),
  );
}

import { endOf, type SketchBuilder, startOf, xOf, yOf } from '../../engine/constraints/sketch-builder.ts';
import { atLeastRound, bendsEvenly, runsAcross, turns } from '../../engine/constraints/statements.ts';
import { type Point, point, turnedAbout, vectorBetween } from '../../engine/geometry/point.ts';
import { angleOf } from '../../engine/geometry/vector.ts';
import { fairLines } from '../fair-lines.ts';
import type { Foundation } from '../foundation/foundation.ts';
import type { SideSeam } from '../foundation/side-seam.ts';
import { keepNear } from '../keep-near.ts';
import { bodiceRules as rules } from './rules.ts';
import type { HalfStyle, StyleLines } from './style-lines.ts';
import { leastRadius } from './turnable.ts';

/** An armhole's two curves in the sketch, from the shoulder past the fold of the arm to the underarm. */
export type ArmholeCurves = readonly [upper: string, lower: string];

/** An armhole in the sketch: its curves and points by their names there. */
export interface ArmholeLine {
  readonly curves: ArmholeCurves;
  readonly underarm: string;
  /** Where a princess line begins at the fold of the arm, on the panel at the centre and on the one at the side. */
  readonly fold: { readonly centre: string; readonly side: string } | undefined;
}

/** Where one half of an armhole is drawn: from the shoulder past the fold of the arm, as each panel lies, to the underarm. */
interface ArmholePlaces {
  readonly part: 'front' | 'back';
  readonly half: HalfStyle;
  /** The fold of the arm before darts and wedges close; then on the panel at the centre, and on the one at the side. */
  readonly fold: Point;
  readonly foldAtCentre: Point;
  readonly foldAtSide: Point;
  readonly side: SideSeam;
}

/** Finds these places. Where a strap begins inside the shoulder point, the armhole passes inside the fold of the arm. */
function placesOfArmhole(
  part: 'front' | 'back',
  foundation: Foundation,
  { onShoulder, ...lines }: StyleLines,
): ArmholePlaces {
  const half = lines[part];
  const { across, side, shoulder } = foundation[part];
  const inside = rules.armholeInset.value * (shoulder.length.value - onShoulder.outer);
  const fold = point(across.x - inside, across.y);
  const pivot = part === 'front' ? foundation.front.pivot : foundation.back.blade;
  const foldAtCentre = turnedAbout(fold, pivot, -half.turnedIn);
  return { part, half, fold, foldAtCentre, foldAtSide: turnedAbout(fold, pivot, half.turned), side };
}

/** Asks for one half of the armhole: square to the shoulder, past the fold of the arm, square to the side seam. */
export function planArmhole(
  sketch: SketchBuilder,
  part: 'front' | 'back',
  foundation: Foundation,
  lines: StyleLines,
  allowance: number,
): ArmholeLine {
  const places = placesOfArmhole(part, foundation, lines);
  const underarm = sketch.fixed(`${part} underarm`, places.side.underarm);
  const squareToSide = sketch.fixedAngle(
    `${part} armhole square to the side`,
    sideHeading(places.side) - Math.PI / 2,
  );
  const plan = lines.style.princess[part] === 'armhole' ? planCrossed : planInOne;
  const { curves, fold } = plan(sketch, places, { underarm, squareToSide });
  fairLines(sketch, curves);
  for (const curve of curves)
    sketch.relation(atLeastRound(`${curve} can be turned`, curve, leastRadius(allowance)));
  return { curves, underarm, fold };
}

/** Where an armhole ends, and the heading with which it arrives there, by their names in the sketch. */
interface AtUnderarm {
  readonly underarm: string;
  readonly squareToSide: string;
}

type Drawn = Pick<ArmholeLine, 'curves' | 'fold'>;

/** An armhole on one panel, which passes near the fold of the arm: near it across, and where it will up and down. */
function planInOne(
  sketch: SketchBuilder,
  { part, half, foldAtSide }: ArmholePlaces,
  { underarm, squareToSide }: AtUnderarm,
): Drawn {
  const top = sketch.fixed(`${part} armhole at the shoulder`, half.outer);
  const middle = sketch.point(`${part} arm fold`, foldAtSide);
  keepNear(sketch, `${part} arm fold across`, [xOf(middle)], foldAtSide.x, 'firm');
  keepNear(sketch, `${part} arm fold down`, [yOf(middle)], foldAtSide.y, 'faint');
  const [upper, lower] = sketch.smoothLine(`${part} armhole`, [top, middle, underarm], {
    start: { angle: sketch.fixedAngle(`${part} armhole square to the shoulder`, half.square) },
    end: { angle: squareToSide },
  });
  sketch.relation(bendsEvenly(`${part} armhole bends evenly at the arm fold`, upper, lower));
  return { curves: [upper, lower], fold: undefined };
}

/**
 * An armhole that a princess seam crosses at the fold of the arm: the upper curve belongs to the panel at the centre, the
 * lower one to the panel at the side. `runsOn` says that one goes on into the other once they are sewn together.
 */
function planCrossed(
  sketch: SketchBuilder,
  { part, half, fold, foldAtCentre, foldAtSide, side }: ArmholePlaces,
  { underarm, squareToSide }: AtUnderarm,
): Drawn {
  const top = sketch.fixed(`${part} shoulder point`, half.atCentre.outer);
  const atCentre = sketch.fixed(`${part} arm fold, centre`, foldAtCentre);
  const atSide = sketch.fixed(`${part} arm fold, side`, foldAtSide);
  const toUnderarm = angleOf(vectorBetween(fold, side.underarm));
  const above = sketch.angle(`${part} armhole at the arm fold, centre`, Math.PI / 2);
  const below = sketch.angle(
    `${part} armhole at the arm fold, side`,
    (Math.PI / 2 + half.turned + toUnderarm) / 2,
  );
  const upper = sketch.curve(`${part} armhole 1`, top, atCentre, {
    start: { angle: sketch.fixedAngle(`${part} armhole square to the shoulder`, half.atCentre.square) },
    end: { angle: above },
  });
  const lower = sketch.curve(`${part} armhole 2`, atSide, underarm, {
    start: { angle: below },
    end: { angle: squareToSide },
  });
  return { curves: [upper, lower], fold: { centre: atCentre, side: atSide } };
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

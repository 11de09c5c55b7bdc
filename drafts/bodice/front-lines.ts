import { type SketchBuilder, scalarOf, xOf, yOf } from '../../engine/constraints/sketch-builder.ts';
import { bendsEvenly, runsAcross, sum } from '../../engine/constraints/statements.ts';
import { vectorBetween } from '../../engine/geometry/point.ts';
import { angleOf } from '../../engine/geometry/vector.ts';
import { fairLine, fairLines } from '../fair-lines.ts';
import type { Foundation } from '../foundation/foundation.ts';
import { keepNear } from '../keep-near.ts';
import { type ArmholeCurves, type ArmholeLine, runsOn } from './armholes.ts';
import { type CentrePrincess, canBeSewn, climbing, type SidePrincess, sewTogether } from './front-seam.ts';
import { planUnderBust } from './front-under-bust.ts';
import { leavingNeckline, nearLevel, nearUpright } from './near-upright.ts';
import { bodiceRules as rules } from './rules.ts';
import { runsOverShoulder } from './shoulder-line.ts';
import type { Beside, SideLine } from './side-lines.ts';
import type { StyleLines } from './style-lines.ts';

/** The names of the front's lines in the sketch, each along its panel's outline. */
export interface FrontLines {
  readonly centrePrincess: CentrePrincess;
  readonly centreWaist: string;
  readonly sidePrincess: SidePrincess;
  readonly armhole: ArmholeCurves;
  readonly side: readonly string[];
  readonly sideWaist: string;
  /** Where the princess edges begin, cross the under-bust level and end, and where the waist meets the centre front. */
  readonly ends: PrincessEnds;
  readonly foldAtWaist: string;
}

/** Where the princess edges of the front begin and end in the sketch. */
type PrincessEnds = Readonly<
  Record<'top' | 'underBust' | 'waist', { readonly centre: string; readonly side: string }>
>;

/**
 * Asks for the front's curves: fair, equal where they are sewn together, without corners across a seam, and round enough
 * for the allowance of the princess seam (mm).
 */
export function planFront(
  sketch: SketchBuilder,
  foundation: Foundation,
  lines: StyleLines,
  { armhole, side }: Beside,
  allowance: number,
): FrontLines {
  const { front } = foundation;
  const ends: PrincessEnds = {
    top: planTop(sketch, lines, armhole),
    underBust: planUnderBust(sketch, front, lines.style, side),
    waist: {
      centre: sketch.point('centre front waist', front.waist.centre),
      side: sketch.point('side front waist', front.waist.side),
    },
  };
  const sidePrincess = planSidePrincess(sketch, foundation, lines, ends);
  const centrePrincess = planCentrePrincess(sketch, foundation, lines, ends);
  const [, middle, upper] = sidePrincess;
  const { overBust, below } = centrePrincess;
  const bent = overBust ? [...sidePrincess, ...overBust, below] : [middle, upper];
  sketch.relation(...bent.map((curve) => canBeSewn(curve, allowance)));
  sewTogether(sketch, sidePrincess, centrePrincess);
  if (lines.style.princess.front === 'armhole' && centrePrincess.overBust)
    runsOn(sketch, 'front', armhole.curves, { centre: centrePrincess.overBust[0], side: sidePrincess[2] });
  if (lines.style.princess.front === 'shoulder' && overBust)
    runsOverShoulder(sketch, 'front', lines.front, { centre: overBust[0], side: upper });
  const waist = planWaist(sketch, foundation, ends.waist, side, [sidePrincess[0], centrePrincess.below]);
  return { ...waist, centrePrincess, sidePrincess, armhole: armhole.curves, side: side.curves, ends };
}

/** Where the princess line begins: at the fold of the arm, or where the style has it. */
function planTop(sketch: SketchBuilder, { front }: StyleLines, { fold }: ArmholeLine): PrincessEnds['top'] {
  if (fold) return fold;
  return {
    centre: sketch.fixed('centre front princess, top', front.princess.centre),
    side: sketch.fixed('side front princess, top', front.princess.side),
  };
}

/** The side front's edge, up from the waist: near upright there, and fullest over the bust point. */
function planSidePrincess(
  sketch: SketchBuilder,
  { front }: Foundation,
  lines: StyleLines,
  { top, underBust, waist }: PrincessEnds,
): SidePrincess {
  const bust = sketch.fixed('side front bust', front.pivot);
  const leaving = nearUpright(
    sketch,
    'side front princess at the waist',
    front.waist.side,
    front.underBust.side,
  );
  const curves = sketch.smoothLine('side front princess', [waist.side, underBust.side, bust, top.side], {
    start: { angle: leaving },
    joints: { [underBust.side]: climbing(-1) },
  });
  const [lower, middle, upper] = curves;
  const gathered = lines.style.front === 'gathered';
  fairLine(sketch, lower);
  fairLine(sketch, middle, gathered ? 1 : rules.breastStraightness.value);
  fairLine(sketch, upper, gathered ? rules.chestStraightness.value : 1);
  const topAt =
    lines.style.princess.front === 'armhole' ? front.closed(front.across) : lines.front.princess.side;
  // Where it is fullest it runs along its chord.
  const alongChord = angleOf(vectorBetween(front.waist.side, topAt));
  sketch.relation(
    sum(
      'side front princess is fullest over the bust',
      [scalarOf(`side front princess at ${bust}`)],
      alongChord,
    ),
    bendsEvenly('side front princess bends evenly under the bust', lower, middle),
    bendsEvenly('side front princess bends evenly over the bust', middle, upper),
  );
  return curves;
}

/** The centre front's edge, down from where it begins: from the top over the bust, or from the under-bust seam. */
function planCentrePrincess(
  sketch: SketchBuilder,
  { front }: Foundation,
  lines: StyleLines,
  { top, underBust, waist }: PrincessEnds,
): CentrePrincess {
  const { style } = lines;
  const arriving = nearUpright(
    sketch,
    'centre front princess at the waist',
    front.underBust.centre,
    front.waist.centre,
  );
  const end = { angle: arriving };
  if (style.front === 'gathered') {
    const below = sketch.curve('centre front princess', underBust.centre, waist.centre, { end });
    fairLines(sketch, [below]);
    return { overBust: undefined, below };
  }
  const bust = sketch.fixed('centre front bust', front.pivot);
  const curves = sketch.smoothLine(
    'centre front princess',
    [top.centre, bust, underBust.centre, waist.centre],
    { ...leavingNeckline(sketch, lines, front.pivot), end, joints: { [underBust.centre]: climbing(1) } },
  );
  const [toBust, toUnderBust, below] = curves;
  fairLines(sketch, [toBust, below]);
  fairLine(sketch, toUnderBust, rules.breastStraightness.value);
  sketch.relation(
    bendsEvenly('centre front princess bends evenly over the bust', toBust, toUnderBust),
    bendsEvenly('centre front princess bends evenly under the bust', toUnderBust, below),
  );
  return { overBust: [toBust, toUnderBust], below };
}

/** The waist of the front: square to side seam and fold, and without a corner over the princess seam. */
function planWaist(
  sketch: SketchBuilder,
  { front }: Foundation,
  ends: PrincessEnds['waist'],
  side: SideLine,
  [sideEdge, centreEdge]: readonly [side: string, centre: string],
): Pick<FrontLines, 'centreWaist' | 'sideWaist' | 'foldAtWaist'> {
  const level = front.waist.centre.y;
  const { centreWaist: centre } = front;
  const fold = sketch.point('centre front fold at waist', centre, 'y');
  const sideWaist = sketch.curve('side front waist', side.waist, ends.side, {
    start: { angle: side.waistLeaves },
    end: { angle: nearLevel(sketch, 'side front waist end angle', front.side.waist, front.waist.side) },
  });
  const centreWaist = sketch.curve('centre front waist', ends.centre, fold, {
    end: { angle: sketch.fixedAngle('waist square to the centre front', Math.PI) },
  });
  fairLines(sketch, [sideWaist, centreWaist]);
  sketch.relation(
    runsAcross('waist across the front princess seam', [sideWaist, sideEdge], [centreEdge, centreWaist]),
  );
  for (const panel of ['side', 'centre'] as const) {
    keepNear(sketch, `${panel} front waist across`, [xOf(ends[panel])], front.waist[panel].x, 'firm');
    keepNear(sketch, `${panel} front waist down`, [yOf(ends[panel])], level, 'firm');
    const strays = rules.waistStrays.value;
    const off = sketch.length(`${panel} front waist off its level`, 0, { min: -strays, max: strays });
    sketch.relation(sum(`${panel} front waist is about level`, [yOf(ends[panel]), scalarOf(off, -1)], level));
  }
  keepNear(sketch, 'centre front waist level', [yOf(fold)], centre.y, 'firm');
  return { centreWaist, sideWaist, foldAtWaist: fold };
}

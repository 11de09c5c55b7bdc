import { type SketchBuilder, xOf, yOf } from '../../engine/constraints/sketch-builder.ts';
import { bendsEvenly, runsAcross, sewnEqual, sum } from '../../engine/constraints/statements.ts';
import { type Point, point, vectorBetween } from '../../engine/geometry/point.ts';
import { angleOf } from '../../engine/geometry/vector.ts';
import { fairLine, fairLines } from '../fair-lines.ts';
import type { Foundation } from '../foundation/foundation.ts';
import { keepNear } from '../keep-near.ts';
import { type ArmholeCurves, type ArmholeLine, runsOn } from './armholes.ts';
import { nearUpright } from './near-upright.ts';
import { bodiceRules as rules } from './rules.ts';
import { runsOverShoulder } from './shoulder-line.ts';
import type { Beside } from './side-lines.ts';
import type { StyleLines } from './style-lines.ts';

/** The names of the back's lines in the sketch, each along its panel's outline. */
export interface BackLines {
  /** Down from the top: to the bust level, to the under-bust level, to the waist. */
  readonly centrePrincess: readonly [upper: string, middle: string, lower: string];
  readonly centreWaist: string;
  /** Up from the waist: to the under-bust level, to the bust level, to the top. */
  readonly sidePrincess: readonly [lower: string, middle: string, upper: string];
  readonly armhole: ArmholeCurves;
  readonly side: readonly string[];
  readonly sideWaist: string;
  /** Where the princess line crosses the levels. */
  readonly levels: Readonly<Record<'bust' | 'underBust' | 'waist', AtLevel>>;
}

/** The princess line at a level: a place on the centre back and one on the side back, and their names in the sketch. */
interface AtLevel {
  readonly centre: string;
  readonly side: string;
  readonly placed: { readonly centre: Point; readonly side: Point };
}

/** Asks for the back's curves: fair, equal where they are sewn together, and without corners across a seam. */
export function planBack(
  sketch: SketchBuilder,
  foundation: Foundation,
  lines: StyleLines,
  { armhole, side }: Beside,
): BackLines {
  const { back } = foundation;
  const levels = planLevels(sketch, foundation);
  const centreDown = angleOf(vectorBetween(lines.back.centre, back.centreWaist));
  const princess = planPrincess(sketch, lines, armhole, levels, centreDown);
  if (lines.style.princess.back === 'armhole')
    runsOn(sketch, 'back', armhole.curves, {
      centre: princess.centrePrincess[0],
      side: princess.sidePrincess[2],
    });
  if (lines.style.princess.back === 'shoulder')
    runsOverShoulder(sketch, 'back', lines.back, {
      centre: princess.centrePrincess[0],
      side: princess.sidePrincess[2],
    });
  const sideWaist = sketch.curve('side back waist', side.waist, levels.waist.side, {
    start: { angle: side.waistLeaves },
  });
  const centreWaist = sketch.curve(
    'centre back waist',
    levels.waist.centre,
    sketch.fixed('centre back at waist', back.centreWaist),
    { end: { angle: sketch.fixedAngle('waist square to the centre back', centreDown + Math.PI / 2) } },
  );
  fairLines(sketch, [sideWaist, centreWaist]);
  sketch.relation(
    runsAcross(
      'waist across the back princess seam',
      [sideWaist, princess.sidePrincess[0]],
      [princess.centrePrincess[2], centreWaist],
    ),
  );
  return { ...princess, centreWaist, armhole: armhole.curves, side: side.curves, sideWaist, levels };
}

/**
 * The princess line at bust level, under the bust and at the waist. What its two edges take in between them is the
 * foundation's; where the line passes may give way a little for the curves. A sway back lifts the waist towards the centre.
 */
function planLevels(sketch: SketchBuilder, { back, levels, widths }: Foundation): BackLines['levels'] {
  const [bust, underBust, waist] = [levels.bust.value, levels.underBust.value, levels.waist.value];
  const share = (underBust - bust) / (waist - bust);
  const middle = back.blade.x + share * (back.princessAtWaist.value - back.blade.x);
  const fromSide = 1 - back.princessAtWaist.value / back.side.waist.x;
  const swayed = fromSide * (back.centreWaist.y - waist);
  const { backPrincess } = widths;
  const at = (level: string, x: number, y: number, takes: number, free: 'x' | 'both'): AtLevel => {
    const placed = { centre: point(x - takes / 2, y), side: point(x + takes / 2, y) };
    const put = (panel: 'centre' | 'side'): string => {
      const name = sketch.point(`${panel} back ${level}`, placed[panel], free);
      keepNear(sketch, `${name} near its place`, [xOf(name)], placed[panel].x, 'firm');
      if (free === 'both') keepNear(sketch, `${name} level`, [yOf(name)], y, 'firm');
      return name;
    };
    const [centre, side] = [put('centre'), put('side')];
    if (free === 'x')
      sketch.relation(sum(`back princess takes its share, ${level}`, [xOf(side), xOf(centre, -1)], takes));
    return { centre, side, placed };
  };
  return {
    bust: at('bust', back.blade.x, bust, backPrincess.bust.value, 'x'),
    underBust: at('under bust', middle, underBust, backPrincess.underBust.value, 'x'),
    waist: at('waist', back.princessAtWaist.value, waist + swayed, backPrincess.waist.value, 'both'),
  };
}

/**
 * The princess edges: straight above the bust level, near the grain at the waist, which in the centre panel runs down the
 * centre back, and equal from level to level.
 */
function planPrincess(
  sketch: SketchBuilder,
  { back }: StyleLines,
  { fold }: ArmholeLine,
  { bust, underBust, waist }: BackLines['levels'],
  centreDown: number,
): Pick<BackLines, 'centrePrincess' | 'sidePrincess'> {
  const top = (panel: 'centre' | 'side'): string =>
    fold?.[panel] ?? sketch.fixed(`${panel} back princess, top`, back.princess[panel]);
  const atWaist = (panel: 'centre' | 'side', from: AtLevel, to: AtLevel, upright?: number) => ({
    angle: nearUpright(
      sketch,
      `${panel} back princess at the waist`,
      from.placed[panel],
      to.placed[panel],
      upright,
    ),
  });
  const centrePrincess = sketch.smoothLine(
    'centre back princess',
    [top('centre'), bust.centre, underBust.centre, waist.centre],
    { end: atWaist('centre', underBust, waist, centreDown) },
  );
  const sidePrincess = sketch.smoothLine(
    'side back princess',
    [waist.side, underBust.side, bust.side, top('side')],
    { start: atWaist('side', waist, underBust) },
  );
  const [upper, middle, lower] = centrePrincess;
  const [sideLower, sideMiddle, sideUpper] = sidePrincess;
  fairLines(sketch, [middle, lower, sideLower, sideMiddle]);
  for (const curve of [upper, sideUpper]) fairLine(sketch, curve, rules.bladeStraightness.value);
  sketch.relation(
    sewnEqual('back princess edges equal to the bust level', [upper], [sideUpper]),
    sewnEqual('back princess edges equal to the under-bust level', [middle], [sideMiddle]),
    sewnEqual('back princess edges equal to the waist', [lower], [sideLower]),
    bendsEvenly('centre back princess bends evenly at the bust level', upper, middle),
    bendsEvenly('centre back princess bends evenly at the under-bust level', middle, lower),
    bendsEvenly('side back princess bends evenly at the under-bust level', sideLower, sideMiddle),
    bendsEvenly('side back princess bends evenly at the bust level', sideMiddle, sideUpper),
  );
  return { centrePrincess, sidePrincess };
}

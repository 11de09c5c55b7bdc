import {
  endOf,
  lengthOf,
  type SketchBuilder,
  startOf,
  xOf,
  yOf,
} from '../../engine/constraints/sketch-builder.ts';
import { type Point, point, vectorBetween } from '../../engine/geometry/point.ts';
import { angleOf } from '../../engine/geometry/vector.ts';
import { fairLine, fairLines } from '../fair-lines.ts';
import type { Foundation } from '../foundation/foundation.ts';
import { keepNear } from '../keep-near.ts';
import { type ArmholeCurves, runsOn } from './armholes.ts';
import { nearUpright } from './near-upright.ts';
import { bodiceRules as rules } from './rules.ts';
import type { StyleLines } from './style-lines.ts';

/** The names of the back's lines in the sketch, each along its panel's outline. */
export interface BackLines {
  /** None where a pointed neckline is straight. */
  readonly neckline: string;
  /** Down from the top: to the bust level, to the under-bust level, to the waist. */
  readonly centrePrincess: readonly string[];
  readonly centreWaist: string;
  /** Up from the waist: to the under-bust level, to the bust level, to the top. */
  readonly sidePrincess: readonly string[];
  readonly armhole: ArmholeCurves;
  readonly side: readonly string[];
  readonly sideWaist: string;
}

/** Asks for the back's curves: fair, equal where they are sewn together, and without corners across a seam. */
export function planBack(
  sketch: SketchBuilder,
  { back, levels, widths }: Foundation,
  { style, ...lines }: StyleLines,
  armhole: ArmholeCurves,
  side: readonly string[],
): BackLines {
  const parted = style.princess.back === 'armhole';
  const top = {
    centre: parted
      ? 'back arm fold, centre'
      : sketch.fixed('centre back princess, top', lines.back.princess.centre),
    side: parted ? 'back arm fold, side' : sketch.fixed('side back princess, top', lines.back.princess.side),
  };
  const centreWaistEnd = sketch.fixed('centre back at waist', back.centreWaist);

  const [bust, underBust, waist] = [levels.bust.value, levels.underBust.value, levels.waist.value];
  const share = (underBust - bust) / (waist - bust);
  const middle = back.blade.x + share * (back.princessAtWaist.value - back.blade.x);
  const pair = (level: string, x: number, y: number, taken: number) => {
    const free = level === 'waist' ? 'both' : 'x';
    const put = (panel: string, at: Point): string => {
      const name = sketch.point(`${panel} ${level}`, at, free);
      keepNear(sketch, `${name} near its place`, [xOf(name)], at.x, 'firm');
      if (level === 'waist') keepNear(sketch, `${name} level`, [yOf(name)], y, 'firm');
      return name;
    };
    return {
      centre: put('centre back', point(x - taken / 2, y)),
      side: put('side back', point(x + taken / 2, y)),
    };
  };
  const { backPrincess } = widths;
  const atBust = pair('bust', back.blade.x, bust, backPrincess.bust.value);
  const atUnderBust = pair('under bust', middle, underBust, backPrincess.underBust.value);
  const swayed = back.centreWaist.y - waist;
  const fromSide = 1 - back.princessAtWaist.value / back.side.waist.x;
  const atWaist = pair(
    'waist',
    back.princessAtWaist.value,
    waist + swayed * fromSide,
    backPrincess.waist.value,
  );
  sketch.relation(
    {
      kind: 'sum',
      name: 'back princess takes its share at bust level',
      terms: [xOf(atBust.side), xOf(atBust.centre, -1)],
      value: backPrincess.bust.value,
    },
    {
      kind: 'sum',
      name: 'back princess takes its share under the bust',
      terms: [xOf(atUnderBust.side), xOf(atUnderBust.centre, -1)],
      value: backPrincess.underBust.value,
    },
  );

  const placed = (x: number, level: number, taken: number): Point => point(x + taken / 2, level);
  const guess = (side: 1 | -1) => ({
    underBust: placed(middle, underBust, side * backPrincess.underBust.value),
    waist: placed(back.princessAtWaist.value, waist, side * backPrincess.waist.value),
  });
  const [centreGuess, sideGuess] = [guess(-1), guess(1)];
  const centrePrincess = sketch.smoothLine(
    'centre back princess',
    [top.centre, atBust.centre, atUnderBust.centre, atWaist.centre],
    {
      end: {
        angle: nearUpright(
          sketch,
          'centre back princess at the waist',
          centreGuess.underBust,
          centreGuess.waist,
        ),
      },
    },
  );
  const sidePrincess = sketch.smoothLine(
    'side back princess',
    [atWaist.side, atUnderBust.side, atBust.side, top.side],
    {
      start: {
        angle: nearUpright(sketch, 'side back princess at the waist', sideGuess.waist, sideGuess.underBust),
      },
    },
  );
  fairLines(sketch, [...centrePrincess.slice(1), ...sidePrincess.slice(0, 2)]);
  for (const upper of [...centrePrincess.slice(0, 1), ...sidePrincess.slice(2)])
    fairLine(sketch, upper, rules.bladeStraightness.value);
  const stretches = ['to the bust level', 'to the under-bust level', 'to the waist'];
  for (const [i, stretch] of stretches.entries()) {
    const centre = centrePrincess[i] ?? '';
    const sideEdge = sidePrincess[2 - i] ?? '';
    sketch.relation({
      kind: 'length',
      name: `back princess edges equal ${stretch}`,
      terms: [lengthOf([centre]), lengthOf([sideEdge], -1)],
      mm: 0,
    });
    if (i > 0)
      sketch.relation(
        {
          kind: 'curvature',
          name: `centre back princess bends evenly before the stretch ${stretch}`,
          a: endOf(centrePrincess[i - 1] ?? ''),
          b: startOf(centre),
        },
        {
          kind: 'curvature',
          name: `side back princess bends evenly before the stretch ${stretch}`,
          a: endOf(sideEdge),
          b: startOf(sidePrincess[3 - i] ?? ''),
        },
      );
  }

  if (parted)
    runsOn(sketch, 'back', armhole, { centre: centrePrincess[0] ?? '', side: sidePrincess[2] ?? '' });

  const centreUp = angleOf(vectorBetween(back.centreWaist, lines.back.centre));
  const sideWaist = sketch.curve('side back waist', 'back side at waist', atWaist.side);
  const centreWaist = sketch.curve('centre back waist', atWaist.centre, centreWaistEnd, {
    end: { angle: sketch.fixedAngle('waist square to the centre back', centreUp - Math.PI / 2) },
  });
  fairLines(sketch, [sideWaist, centreWaist]);
  sketch.relation({
    kind: 'smooth across seam',
    name: 'waist across the back princess seam',
    a: { from: endOf(sideWaist), to: startOf(sidePrincess[0] ?? '') },
    b: { from: endOf(centrePrincess[2] ?? ''), to: startOf(centreWaist) },
  });
  return {
    neckline: planBackNeckline(sketch, centreUp, { style, ...lines }),
    centrePrincess,
    centreWaist,
    sidePrincess,
    armhole,
    side,
    sideWaist,
  };
}

/** Asks for the back neckline, from the centre to the corner at the strap or to the shoulder. */
function planBackNeckline(sketch: SketchBuilder, centreUp: number, { style, back }: StyleLines): string {
  const centre = sketch.fixed('centre back neck', back.centre);
  const square = {
    angle: sketch.fixedAngle('back neckline square to the centre back', centreUp + Math.PI / 2),
  };
  if (style.shoulder === 'strap') {
    const corner = sketch.fixed('back neckline, outer end', back.corner);
    if (style.backNeckline === 'pointed') return sketch.line('back neckline', centre, corner);
    const curve = sketch.curve('back neckline', centre, corner, { start: square });
    fairLine(sketch, curve);
    return curve;
  }
  const shoulder = sketch.fixed('back neckline at the shoulder', back.atCentre.inner);
  const curve = sketch.curve('back neckline', centre, shoulder, {
    ...(style.backNeckline === 'pointed' ? {} : { start: square }),
    end: { angle: sketch.fixedAngle('back neckline square to the shoulder', back.atCentre.square - Math.PI) },
  });
  fairLine(sketch, curve);
  return curve;
}

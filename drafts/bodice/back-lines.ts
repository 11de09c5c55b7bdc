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
import { keepNear } from '../keep-near.ts';
import type { BackFoundation } from './back-foundation.ts';
import type { BodiceStyling } from './choices.ts';
import type { Levels } from './levels.ts';
import { leastRadius, bodiceRules as rules } from './rules.ts';
import type { Widths } from './widths.ts';

/** The names of the back's lines in the sketch, each along its panel's outline. */
export interface BackLines {
  readonly neckline: string;
  /** Down from the strap: to the bust level, to the under-bust level, to the waist. */
  readonly centrePrincess: readonly string[];
  readonly centreWaist: string;
  /** Up from the waist: to the under-bust level, to the bust level, to the strap. */
  readonly sidePrincess: readonly string[];
  readonly armhole: string;
  readonly side: string;
  readonly sideWaist: string;
}

/** Asks for the back's curves: fair, equal where they are sewn together, and without corners across a seam. */
export function planBack(
  sketch: SketchBuilder,
  back: BackFoundation,
  levels: Levels,
  widths: Widths,
  { backNeckline, armholeAllowance }: BodiceStyling,
): BackLines {
  const pointed = backNeckline === 'pointed';
  const strapInner = sketch.fixed('back strap, inner end', back.strap.inner);
  const strapOuter = sketch.fixed('back strap, outer end', back.strap.outer);
  const neckCorner = sketch.fixed('back neckline, outer end', back.neckCorner);
  const centreNeck = sketch.fixed('centre back neck', back.centreNeck);
  const centreWaistEnd = sketch.fixed('centre back at waist', back.centreWaist);
  const underarm = sketch.fixed('back underarm', back.underarm);
  const sideAtWaist = sketch.fixed('back side at waist', back.sideWaist);

  const share = (levels.underBust - levels.bust) / (levels.waist - levels.bust);
  const middle = back.princessAtBust + share * (back.princessAtWaist - back.princessAtBust);
  const pair = (level: string, x: number, y: number, taken: number) => {
    const free = level === 'waist' ? 'both' : 'x';
    const put = (panel: string, at: Point): string => {
      const name = sketch.point(`${panel} ${level}`, at, free);
      keepNear(sketch, `${name} near its place`, [xOf(name)], at.x, 'firm');
      if (level === 'waist') keepNear(sketch, `${name} level`, [yOf(name)], y, 'loose');
      return name;
    };
    return {
      centre: put('centre back', point(x - taken / 2, y)),
      side: put('side back', point(x + taken / 2, y)),
    };
  };
  const atBust = pair('bust', back.princessAtBust, levels.bust, widths.backPrincess.bust);
  const atUnderBust = pair('under bust', middle, levels.underBust, widths.backPrincess.underBust);
  const swayed = back.centreWaist.y - levels.waist;
  const fromSide = 1 - back.princessAtWaist / back.sideWaist.x;
  const atWaist = pair(
    'waist',
    back.princessAtWaist,
    levels.waist + swayed * fromSide,
    widths.backPrincess.waist,
  );
  sketch.relation(
    {
      kind: 'sum',
      name: 'back princess takes its share at bust level',
      terms: [xOf(atBust.side), xOf(atBust.centre, -1)],
      value: widths.backPrincess.bust,
    },
    {
      kind: 'sum',
      name: 'back princess takes its share under the bust',
      terms: [xOf(atUnderBust.side), xOf(atUnderBust.centre, -1)],
      value: widths.backPrincess.underBust,
    },
  );

  const centrePrincess = sketch.smoothLine('centre back princess', [
    neckCorner,
    atBust.centre,
    atUnderBust.centre,
    atWaist.centre,
  ]);
  const sidePrincess = sketch.smoothLine('side back princess', [
    atWaist.side,
    atUnderBust.side,
    atBust.side,
    strapInner,
  ]);
  fairLines(sketch, [...centrePrincess.slice(1), ...sidePrincess.slice(0, 2)]);
  for (const upper of [...centrePrincess.slice(0, 1), ...sidePrincess.slice(2)])
    fairLine(sketch, upper, rules.bladeStraightness.value);
  const stretches = ['to the bust level', 'to the under-bust level', 'to the waist'];
  for (const [i, stretch] of stretches.entries()) {
    const centre = centrePrincess[i] ?? '';
    const side = sidePrincess[2 - i] ?? '';
    sketch.relation({
      kind: 'length',
      name: `back princess edges equal ${stretch}`,
      terms: [lengthOf([centre]), lengthOf([side], -1)],
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
          a: endOf(side),
          b: startOf(sidePrincess[3 - i] ?? ''),
        },
      );
  }

  const centreUp = angleOf(vectorBetween(back.centreWaist, back.centreNeck));
  const square = sketch.fixedAngle('back neckline square to the centre back', centreUp + Math.PI / 2);
  const neckline = pointed
    ? sketch.line('back neckline', centreNeck, neckCorner)
    : sketch.curve('back neckline', centreNeck, neckCorner, { start: { angle: square } });
  const side = sketch.line('back side', underarm, sideAtWaist);
  const sideHeading = angleOf(vectorBetween(back.underarm, back.sideWaist));
  const armhole = sketch.curve('back armhole', strapOuter, underarm, {
    start: { angle: sketch.fixedAngle('back armhole along the strap', angleOf(back.strap.down)) },
    end: { angle: sketch.fixedAngle('back armhole square to the side', sideHeading - Math.PI / 2) },
  });
  sketch.relation(
    { kind: 'no inflection', name: 'back armhole is hollow throughout', curve: armhole, turns: -1 },
    {
      kind: 'least radius',
      name: 'back armhole can be turned',
      curve: armhole,
      mm: leastRadius(armholeAllowance),
    },
  );
  const sideWaist = sketch.curve('side back waist', sideAtWaist, atWaist.side);
  const centreWaist = sketch.curve('centre back waist', atWaist.centre, centreWaistEnd, {
    end: { angle: sketch.fixedAngle('waist square to the centre back', centreUp - Math.PI / 2) },
  });
  for (const curve of [...(pointed ? [] : [neckline]), armhole, sideWaist, centreWaist])
    fairLine(sketch, curve);
  sketch.relation({
    kind: 'smooth across seam',
    name: 'waist across the back princess seam',
    a: { from: endOf(sideWaist), to: startOf(sidePrincess[0] ?? '') },
    b: { from: endOf(centrePrincess[2] ?? ''), to: startOf(centreWaist) },
  });
  return {
    neckline,
    centrePrincess,
    centreWaist,
    sidePrincess,
    armhole,
    side,
    sideWaist,
  };
}

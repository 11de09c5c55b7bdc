import {
  endOf,
  lengthOf,
  type SketchBuilder,
  startOf,
  xOf,
  yOf,
} from '../../engine/constraints/sketch-builder.ts';
import { point, vectorBetween } from '../../engine/geometry/point.ts';
import { angleOf } from '../../engine/geometry/vector.ts';
import { fairLine, fairLines } from '../fair-lines.ts';
import { keepNear } from '../keep-near.ts';
import type { BodiceStyling } from './choices.ts';
import type { FrontFoundation } from './front-foundation.ts';
import type { Levels } from './levels.ts';
import { leastRadius } from './rules.ts';

/** The names of the front's lines in the sketch, each along its panel's outline. */
export interface FrontLines {
  readonly centrePrincess: string;
  readonly centreWaist: string;
  /** Up from the waist: below the under-bust seam, to the bust level, to the strap. */
  readonly sidePrincess: readonly string[];
  readonly armhole: string;
  readonly side: string;
  readonly sideWaist: string;
}

/** Asks for the front's curves: fair, equal where they are sewn together, and without corners across a seam. */
export function planFront(
  sketch: SketchBuilder,
  front: FrontFoundation,
  levels: Levels,
  { armholeAllowance }: BodiceStyling,
): FrontLines {
  const strapInner = sketch.fixed('front strap, inner end', front.strapInner);
  const strapOuter = sketch.fixed('front strap, outer end', front.strapOuter);
  const bust = sketch.fixed('front princess at bust', front.pivot);
  const sideUnderBust = sketch.fixed('side front under bust', front.underBust.side);
  const centreUnderBust = sketch.fixed('centre front under bust', front.underBust.centre);
  const sideWaistPoint = sketch.point('side front waist', front.waist.side);
  const centreWaistPoint = sketch.point('centre front waist', front.waist.centre);
  const foldWaist = sketch.point('centre front fold at waist', point(0, levels.waist), 'y');
  const underarm = sketch.fixed('front underarm', front.underarm);
  const sideAtWaist = sketch.fixed('front side at waist', front.sideWaist);

  const sidePrincess = sketch.smoothLine('side front princess', [
    sideWaistPoint,
    sideUnderBust,
    bust,
    strapInner,
  ]);
  const centrePrincess = sketch.curve('centre front princess', centreUnderBust, centreWaistPoint);
  fairLines(sketch, [...sidePrincess, centrePrincess]);

  const side = sketch.line('front side', underarm, sideAtWaist);
  const sideHeading = angleOf(vectorBetween(front.underarm, front.sideWaist));
  const armhole = sketch.curve('front armhole', strapOuter, underarm, {
    start: { angle: sketch.fixedAngle('front armhole along the strap', angleOf(front.strapDown)) },
    end: { angle: sketch.fixedAngle('front armhole square to the side', sideHeading - Math.PI / 2) },
  });
  fairLine(sketch, armhole);
  sketch.relation(
    { kind: 'no inflection', name: 'front armhole is hollow throughout', curve: armhole, turns: -1 },
    {
      kind: 'least radius',
      name: 'front armhole can be turned',
      curve: armhole,
      mm: leastRadius(armholeAllowance),
    },
  );

  const sideWaist = sketch.curve('side front waist', sideAtWaist, sideWaistPoint);
  const centreWaist = sketch.curve('centre front waist', centreWaistPoint, foldWaist, {
    end: { angle: sketch.fixedAngle('waist square to the centre front', Math.PI) },
  });
  fairLines(sketch, [sideWaist, centreWaist]);

  const [lower = '', middle = '', upper = ''] = sidePrincess;
  sketch.relation(
    {
      kind: 'curvature',
      name: 'side front princess bends evenly under the bust',
      a: endOf(lower),
      b: startOf(middle),
    },
    {
      kind: 'curvature',
      name: 'side front princess bends evenly over the bust',
      a: endOf(middle),
      b: startOf(upper),
    },
    {
      kind: 'length',
      name: 'front princess edges equal below the under-bust seam',
      terms: [lengthOf([lower]), lengthOf([centrePrincess], -1)],
      mm: 0,
    },
    {
      kind: 'smooth across seam',
      name: 'waist across the front princess seam',
      a: { from: endOf(sideWaist), to: startOf(lower) },
      b: { from: endOf(centrePrincess), to: startOf(centreWaist) },
    },
  );
  const nearWaist = (name: string, at: string, x: number): void => {
    keepNear(sketch, `${name} across`, [xOf(at)], x, 'firm');
    keepNear(sketch, `${name} down`, [yOf(at)], levels.waist, 'loose');
  };
  nearWaist('side front waist near its place', sideWaistPoint, front.waist.side.x);
  nearWaist('centre front waist near its place', centreWaistPoint, front.waist.centre.x);
  return { centrePrincess, centreWaist, sidePrincess, armhole, side, sideWaist };
}

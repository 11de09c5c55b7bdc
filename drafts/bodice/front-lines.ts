import {
  endOf,
  lengthOf,
  type SketchBuilder,
  scalarOf,
  startOf,
  xOf,
  yOf,
} from '../../engine/constraints/sketch-builder.ts';
import { point, vectorBetween } from '../../engine/geometry/point.ts';
import { angleOf } from '../../engine/geometry/vector.ts';
import { fairLines } from '../fair-lines.ts';
import type { Foundation } from '../foundation/foundation.ts';
import { keepNear } from '../keep-near.ts';
import { type ArmholeCurves, runsOn } from './armholes.ts';
import { nearUpright } from './near-upright.ts';
import { bodiceRules as rules } from './rules.ts';
import type { Style } from './style.ts';
import type { StyleLines } from './style-lines.ts';

/** The names of the front's lines in the sketch, each along its panel's outline. */
export interface FrontLines {
  /** Down from the under-bust seam; on a plain front down from the top: to the bust level, the under-bust level, the waist. */
  readonly centrePrincess: readonly string[];
  readonly centreWaist: string;
  /** Up from the waist: below the under-bust seam, to the bust level, to the top. */
  readonly sidePrincess: readonly [lower: string, middle: string, upper: string];
  readonly armhole: ArmholeCurves;
  readonly side: readonly string[];
  readonly sideWaist: string;
}

/** Asks for the front's curves: fair, equal where they are sewn together, and without corners across a seam. */
export function planFront(
  sketch: SketchBuilder,
  { front, levels }: Foundation,
  { style, ...lines }: StyleLines,
  armhole: ArmholeCurves,
  side: readonly string[],
): FrontLines {
  const bust = sketch.fixed('front princess at bust', front.pivot);
  const { centre: centreUnderBust, side: sideUnderBust } = planUnderBust(sketch, front, style);
  const sideWaistPoint = sketch.point('side front waist', front.waist.side);
  const centreWaistPoint = sketch.point('centre front waist', front.waist.centre);
  const foldWaist = sketch.point('centre front fold at waist', point(0, levels.waist.value), 'y');
  const parted = style.princess.front === 'armhole';
  const top = parted
    ? 'front arm fold, side'
    : sketch.fixed('side front princess, top', lines.front.princess.side);

  const sidePrincess = sketch.smoothLine('side front princess', [sideWaistPoint, sideUnderBust, bust, top], {
    start: {
      angle: nearUpright(sketch, 'side front princess at the waist', front.waist.side, front.underBust.side),
    },
  }) as readonly string[] as FrontLines['sidePrincess'];
  const [lower, middle, upper] = sidePrincess;
  fairLines(sketch, sidePrincess);
  // Fullest at the bust point: there the edge runs along its chord.
  const topAt = parted ? front.closed(front.across) : lines.front.princess.side;
  sketch.relation({
    kind: 'sum',
    name: 'side front princess is fullest over the bust',
    terms: [scalarOf('side front princess at front princess at bust')],
    value: angleOf(vectorBetween(front.waist.side, topAt)),
  });

  const centreDown = {
    end: {
      angle: nearUpright(
        sketch,
        'centre front princess at the waist',
        front.underBust.centre,
        front.waist.centre,
      ),
    },
  };
  const centrePrincess =
    style.front === 'gathered'
      ? [sketch.curve('centre front princess', centreUnderBust, centreWaistPoint, centreDown)]
      : sketch.smoothLine(
          'centre front princess',
          [
            parted
              ? 'front arm fold, centre'
              : sketch.fixed('centre front princess, top', lines.front.princess.centre),
            sketch.fixed('centre front princess at bust', front.pivot),
            centreUnderBust,
            centreWaistPoint,
          ],
          centreDown,
        );
  fairLines(sketch, centrePrincess);
  const below = centrePrincess.at(-1) ?? '';

  const sideWaist = sketch.curve('side front waist', 'front side at waist', sideWaistPoint);
  const centreWaist = sketch.curve('centre front waist', centreWaistPoint, foldWaist, {
    end: { angle: sketch.fixedAngle('waist square to the centre front', Math.PI) },
  });
  fairLines(sketch, [sideWaist, centreWaist]);

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
      terms: [lengthOf([lower]), lengthOf([below], -1)],
      mm: 0,
    },
    {
      kind: 'smooth across seam',
      name: 'waist across the front princess seam',
      a: { from: endOf(sideWaist), to: startOf(lower) },
      b: { from: endOf(below), to: startOf(centreWaist) },
    },
  );
  const [toBust, toUnderBust] = centrePrincess;
  for (const curve of [middle, upper, ...(style.front === 'gathered' ? [] : [toBust, toUnderBust, below])])
    if (curve)
      sketch.relation({
        kind: 'least radius',
        name: `${curve} can be sewn round`,
        curve,
        mm: rules.princessRadius.value,
      });
  if (style.front !== 'gathered' && toBust && toUnderBust)
    sketch.relation(
      {
        kind: 'length',
        name: 'front princess edges equal above the bust level',
        terms: [lengthOf([upper]), lengthOf([toBust], -1)],
        mm: 0,
      },
      {
        kind: 'length',
        name: 'front princess edges equal from bust to under-bust level',
        terms: [lengthOf([middle]), lengthOf([toUnderBust], -1)],
        mm: 0,
      },
      {
        kind: 'curvature',
        name: 'centre front princess bends evenly over the bust',
        a: endOf(toBust),
        b: startOf(toUnderBust),
      },
      {
        kind: 'curvature',
        name: 'centre front princess bends evenly under the bust',
        a: endOf(toUnderBust),
        b: startOf(below),
      },
    );
  if (parted) runsOn(sketch, 'front', armhole, { centre: toBust ?? '', side: upper });
  const nearWaist = (name: string, at: string, x: number): void => {
    keepNear(sketch, `${name} across`, [xOf(at)], x, 'firm');
    keepNear(sketch, `${name} down`, [yOf(at)], levels.waist.value, 'firm');
  };
  nearWaist('side front waist near its place', sideWaistPoint, front.waist.side.x);
  nearWaist('centre front waist near its place', centreWaistPoint, front.waist.centre.x);
  keepNear(sketch, 'centre front waist level', [yOf(foldWaist)], levels.waist.value, 'firm');
  return { centrePrincess, centreWaist, sidePrincess, armhole, side, sideWaist };
}

/**
 * The princess line at the under-bust level, on both panels. A gathered insert ends where the foundation has it; on a
 * plain front the line may pass to either side, if the two edges still take in what they should.
 */
function planUnderBust(
  sketch: SketchBuilder,
  { underBust }: Foundation['front'],
  { front }: Style,
): { readonly centre: string; readonly side: string } {
  const free = front === 'gathered' ? 'none' : 'x';
  const centre = sketch.point('centre front under bust', underBust.centre, free);
  const side = sketch.point('side front under bust', underBust.side, free);
  if (front === 'gathered') return { centre, side };
  keepNear(
    sketch,
    'front princess under the bust near its place',
    [xOf(centre)],
    underBust.centre.x,
    'loose',
  );
  sketch.relation({
    kind: 'sum',
    name: 'front princess takes its share under the bust',
    terms: [xOf(side), xOf(centre, -1)],
    value: underBust.side.x - underBust.centre.x,
  });
  return { centre, side };
}

import {
  endOf,
  lengthOf,
  type SketchBuilder,
  scalarOf,
  startOf,
  xOf,
  yOf,
} from '../../engine/constraints/sketch-builder.ts';
import type { Curve } from '../../engine/geometry/curve.ts';
import { directionAt, headingAt, pointAt } from '../../engine/geometry/evaluate.ts';
import { fitOneCubic, type Sample } from '../../engine/geometry/fit-one-cubic.ts';
import { distance, type Point, point } from '../../engine/geometry/point.ts';
import { angleOf } from '../../engine/geometry/vector.ts';
import { fairLine, fairLines } from '../fair-lines.ts';
import type { Armhole, HalfArmhole } from './armhole.ts';
import { sleeveRules as rules } from './rules.ts';

/** A cap's lines in its sketch, from the back underarm over the top to the front one. */
export interface CapLines {
  readonly backFlat: string;
  readonly crown: readonly [back: string, front: string];
  readonly frontFlat: string;
  readonly top: string;
  /** What the cap is spread by, mm: nothing in a plain one. */
  readonly spread: string;
}

/** What a cap is asked to be. Lengths in mm. */
export interface CapShape {
  /** Width at the underarm before anything is spread. */
  readonly width: number;
  /** How much crown meets each mm of armhole above the notches. */
  readonly fullness: number;
  /** How high the cap stands; left out, as high as its crown is long enough for, and nothing is spread. */
  readonly height?: number;
  readonly leastRadius: number;
}

/**
 * A cap that turns away from its armhole by this angle (radians) times the length it is sewn flat (mm) parts from it by
 * at most 4/27 of that between notch and underarm, some 2 mm.
 */
const TURNS_AWAY = 14;

/**
 * Asks for the cap. Below its notches it is the armhole once more, underarm laid on underarm; above, its crown is as
 * long as the armhole, times the fullness, from each notch to the shoulder: so its top meets the shoulder. x = 0 is
 * the middle at the underarm, front to the right; y = 0 the underarm.
 */
export function planCap(sketch: SketchBuilder, armhole: Armhole, shape: CapShape): CapLines {
  const half = shape.width / 2;
  const spread = sketch.length('sleeve spread', shape.height === undefined ? 0 : 0.4 * half, { min: 0 });
  const level = sketch.fixedAngle('cap level', 0);
  const guess = shape.height ?? rules.capShare.value * armhole.girth;
  const top = sketch.point('cap top', point(0, -guess), shape.height === undefined ? 'both' : 'x');
  const back = planFlat(sketch, 'back', armhole.back, shape, level);
  const front = planFlat(sketch, 'front', armhole.front, shape, level);
  const crown = [
    sketch.curve('crown, back', back.crownFoot, top, {
      start: { angle: back.heading },
      end: { angle: level },
    }),
    sketch.curve('crown, front', top, front.crownFoot, {
      start: { angle: level },
      end: { angle: front.heading },
    }),
  ] as const;
  fairLines(sketch, crown);
  if (shape.height === undefined)
    sketch.relation({ kind: 'sum', name: 'a plain cap is not spread', terms: [scalarOf(spread)], value: 0 });
  sketch.relation(
    {
      kind: 'length',
      name: 'crown meets the armhole from the back notch to the shoulder',
      terms: [lengthOf([crown[0]])],
      mm: shape.fullness * armhole.back.upper,
    },
    {
      kind: 'length',
      name: 'crown meets the armhole from the shoulder to the front notch',
      terms: [lengthOf([crown[1]])],
      mm: shape.fullness * armhole.front.upper,
    },
    { kind: 'curvature', name: 'crown bends evenly at the top', a: endOf(crown[0]), b: startOf(crown[1]) },
    {
      kind: 'sum',
      name: 'back notch moves out with the spread',
      terms: [xOf(back.crownFoot), xOf(back.notch, -1), scalarOf(spread, 0.5)],
      value: 0,
    },
    {
      kind: 'sum',
      name: 'front notch moves out with the spread',
      terms: [xOf(front.crownFoot), xOf(front.notch, -1), scalarOf(spread, -0.5)],
      value: 0,
    },
    ...crown.map((curve) => ({
      kind: 'least radius' as const,
      name: `${curve} can be turned`,
      curve,
      mm: shape.leastRadius,
    })),
  );
  return { backFlat: back.curve, crown, frontFlat: front.curve, top, spread };
}

/** One half of a cap below its notch, and where the crown begins above it, moved out by half the spread. */
interface FlatLines {
  readonly curve: string;
  readonly notch: string;
  readonly crownFoot: string;
  readonly heading: string;
}

/** The armhole below a notch once more: its end may stray a little, so that the cap runs on fairly into the crown. */
function planFlat(
  sketch: SketchBuilder,
  part: 'front' | 'back',
  { flat, flatLength }: HalfArmhole,
  { width, leastRadius }: CapShape,
  level: string,
): FlatLines {
  const across = part === 'front' ? 1 : -1;
  const at = (p: Point): Point => point(p.x + (across * width) / 2, p.y);
  const first = flat[0];
  if (!first) throw new Error('An armhole has nothing below its notch.');
  const place = at(first.from);
  const down = angleOf(directionAt(first, 'start'));
  const along = part === 'front' ? down : angleOf({ x: -Math.cos(down), y: -Math.sin(down) });
  const foot = sketch.fixed(`sleeve ${part} underarm`, point((across * width) / 2, 0));
  const notch = sketch.point(`sleeve ${part} notch`, place);
  const crownFoot = sketch.point(`crown, ${part} notch`, place);
  const heading = sketch.angle(`cap at the ${part} notch`, along, {
    min: along - TURNS_AWAY / flatLength,
    max: along + TURNS_AWAY / flatLength,
  });
  const strays = rules.capStrays.value;
  for (const [axis, of, value] of [
    ['across', xOf, place.x],
    ['down', yOf, place.y],
  ] as const) {
    const stray = sketch.length(`cap strays ${axis} at the ${part} notch`, 0, { min: -strays, max: strays });
    sketch.relation({
      kind: 'sum',
      name: `cap lies on the armhole at the ${part} notch, ${axis}`,
      terms: [of(notch), scalarOf(stray, -1)],
      value,
    });
    sketch.wish({ kind: 'near', name: `${stray} little`, terms: [scalarOf(stray)], value: 0, weight: 0.02 });
  }
  sketch.relation({
    kind: 'sum',
    name: `${part} notch keeps its height`,
    terms: [yOf(crownFoot), yOf(notch, -1)],
    value: 0,
  });
  const name = `cap, ${part} underarm`;
  const alike = fitOneCubic(samplesOf(flat), rules.capStrays.value / 10).cubic;
  const atNotch = { angle: heading, length: distance(alike.from, alike.handle1) };
  const atFoot = { angle: level, length: distance(alike.handle2, alike.to) };
  const curve =
    part === 'front'
      ? sketch.curve(name, notch, foot, { start: atNotch, end: atFoot })
      : sketch.curve(name, foot, notch, { start: atFoot, end: atNotch });
  for (const [end, { length }] of [
    [part === 'front' ? 'start' : 'end', atNotch],
    [part === 'front' ? 'end' : 'start', atFoot],
  ] as const)
    sketch.wish({
      kind: 'near',
      name: `${curve} bends as the armhole, ${end}`,
      terms: [scalarOf(`${curve} ${end} length`)],
      value: length,
      weight: 0.02,
    });
  fairLine(sketch, curve);
  sketch.relation(
    {
      kind: 'length',
      name: `cap equals the armhole below the ${part} notch`,
      terms: [lengthOf([curve])],
      mm: flatLength,
    },
    { kind: 'least radius', name: `cap below the ${part} notch can be turned`, curve, mm: leastRadius },
  );
  return { curve, notch, crownFoot, heading };
}

/** Places along curves, with their headings, close enough to fit one cubic through them. */
const samplesOf = (curves: readonly Curve[]): readonly Sample[] =>
  curves.flatMap((curve, i) =>
    Array.from({ length: 9 }, (_, k) => k / 8)
      .slice(i === 0 ? 0 : 1)
      .map((t) => ({ point: pointAt(curve, t), tangent: headingAt(curve, t) })),
  );

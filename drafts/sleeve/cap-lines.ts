import { type SketchBuilder, scalarOf, xOf, yOf } from '../../engine/constraints/sketch-builder.ts';
import { atLeastRound, bendsEvenly, isLong, level, sum } from '../../engine/constraints/statements.ts';
import type { Curve } from '../../engine/geometry/curve.ts';
import { directionAt, headingAt, pointAt } from '../../engine/geometry/evaluate.ts';
import { type FlatSamples, fitOneCubic, flatSamples } from '../../engine/geometry/fit-one-cubic.ts';
import { distance, type Point, point } from '../../engine/geometry/point.ts';
import { angleOf } from '../../engine/geometry/vector.ts';
import { fairLine, fairLines } from '../fair-lines.ts';
import { keepNear } from '../keep-near.ts';
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
  const flat = sketch.fixedAngle('cap level', 0);
  const guess = shape.height ?? rules.capShare.value * armhole.girth;
  const top = sketch.point('cap top', point(0, -guess), shape.height === undefined ? 'both' : 'x');
  const back = planFlat(sketch, 'back', armhole.back, shape, flat);
  const front = planFlat(sketch, 'front', armhole.front, shape, flat);
  const crown = [
    sketch.curve('crown, back', back.crownFoot, top, {
      start: { angle: back.heading },
      end: { angle: flat },
    }),
    sketch.curve('crown, front', top, front.crownFoot, {
      start: { angle: flat },
      end: { angle: front.heading },
    }),
  ] as const;
  fairLines(sketch, crown);
  if (shape.height === undefined) sketch.relation(sum('a plain cap is not spread', [scalarOf(spread)], 0));
  sketch.relation(
    isLong(
      'crown meets the armhole from the back notch to the shoulder',
      [crown[0]],
      shape.fullness * armhole.back.upper,
    ),
    isLong(
      'crown meets the armhole from the shoulder to the front notch',
      [crown[1]],
      shape.fullness * armhole.front.upper,
    ),
    bendsEvenly('crown bends evenly at the top', ...crown),
    sum(
      'back notch moves out with the spread',
      [xOf(back.crownFoot), xOf(back.notch, -1), scalarOf(spread, 0.5)],
      0,
    ),
    sum(
      'front notch moves out with the spread',
      [xOf(front.crownFoot), xOf(front.notch, -1), scalarOf(spread, -0.5)],
      0,
    ),
    ...crown.map((curve) => atLeastRound(`${curve} can be turned`, curve, shape.leastRadius)),
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
  flatAngle: string,
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
  staysOnArmhole(sketch, part, notch, place);
  sketch.relation(level(`${part} notch keeps its height`, crownFoot, notch));
  const name = `cap, ${part} underarm`;
  // One curve is taken as it is: two cubics of other handles may both lie within a hair of it, and a fit would find either.
  // Several are fitted to the end: stopped as soon as it is near enough, the fit would jump where the armhole only moves.
  const alike = flat.length === 1 && first.kind === 'cubic' ? first : fitOneCubic(samplesOf(flat), 0).cubic;
  const atNotch = { angle: heading, length: distance(alike.from, alike.handle1) };
  const atFoot = { angle: flatAngle, length: distance(alike.handle2, alike.to) };
  const curve =
    part === 'front'
      ? sketch.curve(name, notch, foot, { start: atNotch, end: atFoot })
      : sketch.curve(name, foot, notch, { start: atFoot, end: atNotch });
  for (const [end, { length }] of [
    [part === 'front' ? 'start' : 'end', atNotch],
    [part === 'front' ? 'end' : 'start', atFoot],
  ] as const)
    keepNear(
      sketch,
      `${curve} bends as the armhole, ${end}`,
      [scalarOf(`${curve} ${end} length`)],
      length,
      'loose',
    );
  fairLine(sketch, curve);
  sketch.relation(
    isLong(`cap equals the armhole below the ${part} notch`, [curve], flatLength),
    atLeastRound(`cap below the ${part} notch can be turned`, curve, leastRadius),
  );
  return { curve, notch, crownFoot, heading };
}

/** The notch of a cap strays little from its place on the armhole. */
function staysOnArmhole(sketch: SketchBuilder, part: 'front' | 'back', notch: string, place: Point): void {
  const strays = rules.capStrays.value;
  for (const [axis, of, value] of [
    ['across', xOf, place.x],
    ['down', yOf, place.y],
  ] as const) {
    const stray = sketch.length(`cap strays ${axis} at the ${part} notch`, 0, { min: -strays, max: strays });
    sketch.relation(
      sum(`cap lies on the armhole at the ${part} notch, ${axis}`, [of(notch), scalarOf(stray, -1)], value),
    );
    keepNear(sketch, `${stray} little`, [scalarOf(stray)], 0, 'loose');
  }
}

/** Places along curves, with their headings, close enough to fit one cubic through them. */
const samplesOf = (curves: readonly Curve[]): FlatSamples =>
  flatSamples(
    curves.flatMap((curve, i) =>
      Array.from({ length: 9 }, (_, k) => k / 8)
        .slice(i === 0 ? 0 : 1)
        .map((t) => ({ point: pointAt(curve, t), tangent: headingAt(curve, t) })),
    ),
  );

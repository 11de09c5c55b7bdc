import fc from 'fast-check';
import type { Relation } from '../../../engine/constraints/relations.ts';
import type { Sketch } from '../../../engine/constraints/sketch.ts';
import { endOf, lengthOf, SketchBuilder, startOf } from '../../../engine/constraints/sketch-builder.ts';
import { arcLength } from '../../../engine/geometry/arc-length.ts';
import type { Cubic } from '../../../engine/geometry/curve.ts';
import { distance, moved, type Point, vectorBetween } from '../../../engine/geometry/point.ts';
import { angleOf, cross, heading, scaled, unit } from '../../../engine/geometry/vector.ts';
import { uniform } from '../../uniform.ts';

/** A sketch whose relations were measured from points that are known, and those points. */
export interface Known {
  readonly sketch: Sketch;
  readonly truth: Readonly<Record<string, Point>>;
  readonly curves: Readonly<Record<string, Cubic>>;
}

type How = 'two distances' | 'distance and heading' | 'two headings' | 'on a line';

interface Step {
  readonly at: Point;
  readonly how: How;
  /** Which earlier points it hangs on, as shares of their number. */
  readonly from: readonly [number, number];
  /** How far off its first guess is, as shares of its distances, and in which direction. */
  readonly off: readonly [share: number, direction: number];
  readonly curve: { readonly lean: number; readonly handles: readonly [number, number] } | undefined;
}

const share = uniform(0, 0.999);
const coordinate = fc.integer({ min: -300, max: 300 });
const point = fc.record({ x: coordinate, y: coordinate });

const step = (off: number, withCurves: boolean): fc.Arbitrary<Step> =>
  fc.record({
    at: point,
    how: fc.constantFrom<How>('two distances', 'distance and heading', 'two headings', 'on a line'),
    from: fc.tuple(share, share),
    off: fc.tuple(uniform(0, off), uniform(0, 2 * Math.PI)),
    curve: withCurves
      ? fc.option(
          fc.record({
            lean: fc.double({ min: 0.3, max: 0.9, noNaN: true }),
            handles: fc.tuple(
              fc.double({ min: 0.25, max: 0.5, noNaN: true }),
              fc.double({ min: 0.25, max: 0.5, noNaN: true }),
            ),
          }),
          { nil: undefined },
        )
      : fc.constant(undefined),
  });

/**
 * Well-posed sketches of up to a dozen points: each new one hangs on two earlier ones, at an angle that is neither
 * flat nor sharp, and may end a curve of known length. First guesses are off by up to a share of the distances.
 */
export const knownSketch = (off: number, withCurves: boolean): fc.Arbitrary<Known> =>
  fc
    .array(step(off, withCurves), { minLength: 2, maxLength: 10 })
    .map(construct)
    .filter(({ sketch }) => sketch.relations.length > 1);

function construct(steps: readonly Step[]): Known {
  const draw = new SketchBuilder();
  const truth: Record<string, Point> = { p0: { x: 0, y: 0 }, p1: { x: 150, y: 40 } };
  const curves: Record<string, Cubic> = {};
  const names = ['p0', 'p1'];
  for (const name of names) draw.fixed(name, truth[name] ?? { x: 0, y: 0 });
  for (const { at, how, from, off, curve } of steps) {
    const a = names[Math.floor(from[0] * names.length)] ?? 'p0';
    const b = names[Math.floor(from[1] * names.length)] ?? 'p1';
    const name = `p${names.length}`;
    const [ta, tb] = [truth[a] ?? at, truth[b] ?? at];
    const place = how === 'on a line' ? moved(ta, scaled(vectorBetween(ta, tb), 1.5)) : at;
    if (a === b || !wellPlaced(how, ta, tb, place)) continue;
    truth[name] = place;
    names.push(name);
    const reach = Math.min(distance(ta, place), distance(tb, place)) * off[0];
    draw.point(name, moved(place, scaled(heading(off[1]), reach)));
    draw.relation(...relationsFor(how, name, a, b, place, ta, tb));
    if (curve) curves[`curve to ${name}`] = addCurve(draw, name, a, ta, place, curve, off[0]);
  }
  return { sketch: draw.sketch(), truth, curves };
}

/** The two relations of a point cross at thirty degrees at least, and nothing is nearer than 20 mm. */
function wellPlaced(how: How, a: Point, b: Point, p: Point): boolean {
  if (Math.min(distance(a, b), distance(a, p), distance(b, p)) < 20) return false;
  if (how === 'on a line' || how === 'distance and heading') return true;
  return Math.abs(cross(unit(vectorBetween(a, p)), unit(vectorBetween(b, p)))) > 0.5;
}

function relationsFor(
  how: How,
  p: string,
  a: string,
  b: string,
  tp: Point,
  ta: Point,
  tb: Point,
): readonly Relation[] {
  const far = (from: string, at: Point): Relation => ({
    kind: 'distance',
    name: `${from} to ${p}`,
    a: from,
    b: p,
    mm: distance(at, tp),
  });
  const towards = (from: string, at: Point): Relation => ({
    kind: 'heading',
    name: `from ${from} towards ${p}`,
    a: from,
    b: p,
    angle: angleOf(vectorBetween(at, tp)),
  });
  if (how === 'two distances') return [far(a, ta), far(b, tb)];
  if (how === 'two headings') return [towards(a, ta), towards(b, tb)];
  if (how === 'distance and heading') return [far(a, ta), towards(a, ta)];
  return [{ kind: 'on line', name: `${p} on ${a} ${b}`, point: p, through: [a, b] }, far(a, ta)];
}

/** A cubic that leans off its chord by a turn at both ends, its second handle to be found from its length. */
function addCurve(
  draw: SketchBuilder,
  name: string,
  a: string,
  from: Point,
  to: Point,
  { lean, handles }: { readonly lean: number; readonly handles: readonly [number, number] },
  off: number,
): Cubic {
  const chord = distance(from, to);
  const along = angleOf(vectorBetween(from, to));
  const [h1, h2] = [handles[0] * chord, handles[1] * chord];
  const truth: Cubic = {
    kind: 'cubic',
    from,
    handle1: moved(from, scaled(heading(along - lean), h1)),
    handle2: moved(to, scaled(heading(along + lean), -h2)),
    to,
  };
  const curve = draw.curve(`curve to ${name}`, a, name, {
    start: { angle: along - lean * (1 + off), length: h1 },
    end: { angle: along + lean * (1 - off), length: h2 * (1 + off) },
    handles: [0.01, 5],
  });
  draw.line(`chord to ${name}`, a, name);
  draw.relation(
    {
      kind: 'turn',
      name: `${curve} leaves`,
      from: startOf(`chord to ${name}`),
      to: startOf(curve),
      angle: -lean,
    },
    {
      kind: 'turn',
      name: `${curve} arrives`,
      from: startOf(`chord to ${name}`),
      to: endOf(curve),
      angle: lean,
    },
    {
      kind: 'sum',
      name: `${curve} first handle`,
      terms: [{ scalar: `${curve} start length`, times: 1 }],
      value: h1,
    },
    { kind: 'length', name: `${curve} is long`, terms: [lengthOf([curve])], mm: arcLength(truth, 1e-9) },
  );
  return truth;
}

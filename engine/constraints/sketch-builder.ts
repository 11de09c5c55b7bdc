import { DraftMistake, perhapsMeant } from '../draft-mistake.ts';
import { distance, type Point, vectorBetween } from '../geometry/point.ts';
import { angleOf } from '../geometry/vector.ts';
import type { CurveEnd, LengthTerm, Relation, Term, Wish } from './relations.ts';
import type { Sketch, SketchCurve, SketchPoint, SketchScalar } from './sketch.ts';

/** Least and greatest value of a scalar; a side left out is open. */
export interface ScalarBounds {
  readonly min?: number;
  readonly max?: number;
}

/**
 * How a cubic leaves its start or reaches its end. `angle` is the heading of travel there: a number is the first
 * guess of an angle of the curve's own, a string is the name of an angle already in the sketch, shared with
 * whatever else uses it. `length` is the first guess of the handle's length (mm; left out: a third of the chord).
 */
export interface Tangent {
  readonly angle: number | string;
  readonly length?: number;
}

/**
 * How a cubic is guessed. What is left out follows the chord. `handles` bounds both handles as shares of it. On a line
 * through several points `joints` bounds the heading at some of them, by the name of the point.
 */
export interface CurveGuess {
  readonly start?: Tangent;
  readonly end?: Tangent;
  readonly handles?: readonly [least: number, greatest: number];
  readonly joints?: Readonly<Record<string, Required<ScalarBounds>>>;
}

/** The names of the curves of a line through so many points: one fewer. */
export type CurvesThrough<Through extends readonly string[]> = Through extends readonly [
  unknown,
  ...infer Rest,
]
  ? { readonly [K in keyof Rest]: string }
  : readonly string[];

/** What a sketch names, by what it is called in a message. */
interface NamedThing {
  readonly point: SketchPoint;
  readonly scalar: SketchScalar;
  readonly curve: SketchCurve;
}

type Named = { readonly [What in keyof NamedThing]: Map<string, NamedThing[What]> };

/** Handles keep between a twentieth and nine tenths of the first guess of their chord: no cusps, no loops. */
const HANDLE_SHARES = [0.05, 0.9] as const;

/**
 * Writes a sketch down step by step, in the order of a drafting book. Everything named returns its name, so that
 * later steps can speak of it. The same name twice is a mistake in the draft and throws at once; a name that nothing
 * bears throws when the sketch is solved. To find where such a mistake was written, the draft is drawn onto another
 * builder that is told of it: that one throws it where what it is about is written down.
 */
export class SketchBuilder {
  #named: Named = { point: new Map(), scalar: new Map(), curve: new Map() };
  #relations: Relation[] = [];
  #wishes: Wish[] = [];
  /** Whether all that was handed out: then it is copied before more is written, as seldom happens. */
  #handedOut = false;
  readonly #relationNames = new Set<string>();
  readonly #mistake: DraftMistake | undefined;

  constructor(mistake?: DraftMistake) {
    this.#mistake = mistake;
  }

  /** What has been written so far. */
  sketch(): Sketch {
    this.#handedOut = true;
    const { point: points, scalar: scalars, curve: curves } = this.#named;
    return { points, scalars, curves, relations: this.#relations, wishes: this.#wishes };
  }

  /** A point that stays where it is put. */
  fixed(name: string, at: Point): string {
    return this.point(name, at, 'none');
  }

  /** A point the relations may move, wholly or along one axis, from its first guess. */
  point(name: string, at: Point, free: SketchPoint['free'] = 'both'): string {
    return this.#added('point', name, { at, free });
  }

  /** A length to be found (mm), from its first guess. */
  length(name: string, guess: number, bounds: ScalarBounds = {}): string {
    return this.#added('scalar', name, freeScalar(guess, 'mm', bounds));
  }

  /** An angle to be found (radians), from its first guess. Share it between curves to join them smoothly. */
  angle(name: string, guess: number, bounds: ScalarBounds = {}): string {
    return this.#added('scalar', name, freeScalar(guess, 'rad', bounds));
  }

  /** A length that is known (mm). */
  fixedLength(name: string, mm: number): string {
    return this.#added('scalar', name, { at: mm, unit: 'mm', free: false });
  }

  /** An angle that is known (radians): the grain, a fold, square to an edge. */
  fixedAngle(name: string, angle: number): string {
    return this.#added('scalar', name, { at: angle, unit: 'rad', free: false });
  }

  /** A straight line between two points. */
  line(name: string, from: string, to: string): string {
    checkEnds(name, from, to);
    return this.#added('curve', name, { kind: 'line', from, to });
  }

  /**
   * A cubic between two points. Its handles become the scalars `<name> start length` and `<name> end length`, and
   * angles of its own `<name> start angle` and `<name> end angle`.
   */
  curve(name: string, from: string, to: string, { start, end, handles }: CurveGuess = {}): string {
    return this.#cubic(name, from, to, handles, start, end);
  }

  #cubic(
    name: string,
    from: string,
    to: string,
    [least, greatest]: readonly [least: number, greatest: number] = HANDLE_SHARES,
    leaving?: Tangent,
    arriving?: Tangent,
  ): string {
    checkEnds(name, from, to);
    const chord = this.#chord(name, from, to);
    const bounds = { min: least * chord.length, max: greatest * chord.length };
    const handle = (
      end: 'start' | 'end',
      tangent: Tangent | undefined,
    ): { readonly angle: string; readonly length: string } => {
      const { angle, length = chord.length / 3 } = tangent ?? { angle: chord.heading };
      return {
        angle: typeof angle === 'string' ? angle : this.angle(called(name, end, 'angle'), angle),
        length: this.length(called(name, end, 'length'), length, bounds),
      };
    };
    const start = handle('start', leaving);
    const end = handle('end', arriving);
    return this.#added('curve', name, {
      kind: 'cubic',
      from,
      to,
      startAngle: start.angle,
      startLength: start.length,
      endAngle: end.angle,
      endLength: end.length,
    });
  }

  /**
   * One smooth line through several points: a cubic from each to the next, called `<name> 1`, `<name> 2` and so
   * on, sharing the angle `<name> at <point>` where two meet, guessed as the heading from the point before to the
   * point after. Returns the names of the cubics.
   */
  smoothLine<const Through extends readonly string[]>(
    name: string,
    through: Through,
    guess: CurveGuess = {},
  ): CurvesThrough<Through> {
    const joints = through.slice(1, -1).map((at, i): Tangent => {
      const { heading } = this.#chord(name, through[i] ?? at, through[i + 2] ?? at);
      const { min, max } = guess.joints?.[at] ?? { min: heading, max: heading };
      return {
        angle: this.angle(called(name, 'at', at), Math.min(Math.max(heading, min), max), guess.joints?.[at]),
      };
    });
    const curves = through
      .slice(1)
      .map((to, i) =>
        this.#cubic(
          called(name, String(i + 1)),
          through[i] ?? to,
          to,
          guess.handles,
          i === 0 ? guess.start : joints[i - 1],
          i === through.length - 2 ? guess.end : joints[i],
        ),
      );
    return curves as readonly string[] as CurvesThrough<Through>;
  }

  /** What must hold. */
  relation(...relations: readonly Relation[]): void {
    for (const relation of relations) {
      if (!relation) throw new DraftMistake('A relation is asked for that is nothing.', []);
      const { name } = relation;
      checkName('relation', name);
      this.#written(name);
      if (this.#relationNames.has(name))
        throw new DraftMistake(`The sketch already has a relation called “${name}”.`, [name]);
      this.#relationNames.add(name);
    }
    this.#relations.push(...relations);
  }

  /** What would be nice. */
  wish(...wishes: readonly Wish[]): void {
    for (const { name } of wishes) this.#written(name);
    this.#wishes.push(...wishes);
  }

  #chord(name: string, from: string, to: string): { readonly length: number; readonly heading: number } {
    const a = this.#named.point.get(from)?.at;
    const b = this.#named.point.get(to)?.at;
    if (a && b) return { length: distance(a, b), heading: angleOf(vectorBetween(a, b)) };
    const missing = a ? to : from;
    const hint = perhapsMeant(missing, [...this.#named.point.keys()]);
    throw new DraftMistake(
      `“${name}” runs from “${from}” to “${to}”, and there is no point “${missing}” yet.${hint}`,
      [missing, name],
    );
  }

  #added<What extends keyof Named>(what: What, name: string, value: NamedThing[What]): string {
    checkName(what, name);
    this.#written(name);
    const to: Map<string, NamedThing[What]> = this.#named[what];
    if (to.has(name)) throw new DraftMistake(`The sketch already has a ${what} called “${name}”.`, [name]);
    to.set(name, value);
    return name;
  }

  /** Something of this name is being written down. */
  #written(name: string): void {
    const mistake = this.#mistake;
    if (mistake && mistake.words[0] === name) throw new DraftMistake(mistake.message, mistake.words);
    if (!this.#handedOut) return;
    const { point, scalar, curve } = this.#named;
    this.#named = { point: new Map(point), scalar: new Map(scalar), curve: new Map(curve) };
    this.#relations = [...this.#relations];
    this.#wishes = [...this.#wishes];
    this.#handedOut = false;
  }
}

/** What no compiler has looked at may have no text for its name: the order of what is asked for was mistaken. */
function checkName(what: string, name: unknown): void {
  if (typeof name !== 'string')
    throw new DraftMistake(
      `A ${what} has no text for its name: the name stands first, then what it is of.`,
      [],
    );
}

/** Throws where a line does not run between two points. */
function checkEnds(name: string, from: unknown, to: unknown): void {
  if (typeof from !== 'string' || typeof to !== 'string')
    throw new DraftMistake(
      `“${name}” needs two points, each by the name that sketch.point or sketch.fixed hands back.`,
      [name],
    );
  if (from === to) throw new DraftMistake(`“${name}” begins and ends at the same point, “${from}”.`, [name]);
}

/** A name of several words. Put together by a template it would be a rope of them to V8, slow to be told from another (Node 20). */
const called = (...words: readonly string[]): string => words.join(' ');

/** A scalar to be found. Written out for every set of bounds: of one kind each, V8 finds its fields without looking. */
function freeScalar(at: number, unit: SketchScalar['unit'], { min, max }: ScalarBounds): SketchScalar {
  if (min === undefined) return max === undefined ? { at, unit, free: true } : { at, unit, free: true, max };
  return max === undefined ? { at, unit, free: true, min } : { at, unit, free: true, min, max };
}

/** The start of a curve. */
export const startOf = (curve: string): CurveEnd => ({ curve, end: 'start' });

/** The end of a curve. */
export const endOf = (curve: string): CurveEnd => ({ curve, end: 'end' });

/** A point's x, times a factor, as a term of a sum. */
export const xOf = (point: string, times = 1): Term => ({ point, axis: 'x', times });

/** A point's y, times a factor, as a term of a sum. */
export const yOf = (point: string, times = 1): Term => ({ point, axis: 'y', times });

/** A scalar, times a factor, as a term of a sum. */
export const scalarOf = (scalar: string, times = 1): Term => ({ scalar, times });

/** The length of a chain of curves, times a factor, as a term of a sum of lengths. */
export const lengthOf = (curves: readonly string[], times = 1): LengthTerm => ({ curves, times });

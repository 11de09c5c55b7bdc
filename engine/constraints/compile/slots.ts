import { DraftMistake, perhapsMeant } from '../../draft-mistake.ts';
import { zeros } from '../../numeric/zeros.ts';
import type { Term } from '../relations.ts';
import type { Sketch, SketchCubic, SketchLine } from '../sketch.ts';

/** Where a line's ends stand in the vector of values. */
export interface LineSlots {
  readonly kind: 'line';
  /** from.x, from.y, to.x, to.y */
  readonly slots: readonly [number, number, number, number];
}

/** Where a cubic's ends, angles and handle lengths stand in the vector of values. */
export interface CubicSlots {
  readonly kind: 'cubic';
  /** from.x, from.y, to.x, to.y, startAngle, startLength, endAngle, endLength */
  readonly slots: readonly [number, number, number, number, number, number, number, number];
}

export type CurveSlots = LineSlots | CubicSlots;

/** A sketch's points and scalars numbered: each coordinate and each scalar has a slot in one vector of values. */
export interface Slots {
  readonly points: ReadonlyMap<string, number>;
  readonly scalars: ReadonlyMap<string, number>;
  readonly curves: ReadonlyMap<string, CurveSlots>;
  /** First guesses, slot by slot. */
  readonly guess: Float64Array;
  /** 1 where the engine may change the value. */
  readonly free: Uint8Array;
  /** 1 where the value is an angle. */
  readonly angle: Uint8Array;
  readonly min: Float64Array;
  readonly max: Float64Array;
}

/** Numbers a sketch. Throws a `DraftMistake` for a value that is not finite and for a curve that names what is not there. */
export function numbered(sketch: Sketch): Slots {
  const { points, scalars } = sketch;
  const count = 2 * points.size + scalars.size;
  const guess = zeros(count);
  const free = new Uint8Array(count);
  const angle = new Uint8Array(count);
  const min = zeros(count);
  const max = zeros(count);
  const pointSlots = new Map<string, number>();
  const scalarSlots = new Map<string, number>();
  let slot = 0;
  for (const [name, { at, free: which }] of points) {
    if (!(Number.isFinite(at.x) && Number.isFinite(at.y)))
      throw new DraftMistake(
        `The point “${name}” has no finite place: ${shown(at.x)}, ${shown(at.y)}. A number it comes from is missing.`,
        [name],
      );
    pointSlots.set(name, slot);
    guess[slot] = at.x;
    guess[slot + 1] = at.y;
    free[slot] = which === 'both' || which === 'x' ? 1 : 0;
    free[slot + 1] = which === 'both' || which === 'y' ? 1 : 0;
    min[slot] = min[slot + 1] = -Infinity;
    max[slot] = max[slot + 1] = Infinity;
    slot += 2;
  }
  for (const [name, scalar] of scalars) {
    const least = scalar.min ?? -Infinity;
    const most = scalar.max ?? Infinity;
    if (!Number.isFinite(scalar.at))
      throw new DraftMistake(
        `“${name}” has no finite value: ${scalar.at}. A number it comes from is missing.`,
        [name],
      );
    if (scalar.unit === 'rad') radians(scalar.at, name);
    if (!(least <= most))
      throw new DraftMistake(`The bounds of “${name}” leave it no room: ${least} to ${most}.`, [name]);
    scalarSlots.set(name, slot);
    guess[slot] = scalar.at;
    free[slot] = scalar.free ? 1 : 0;
    angle[slot] = scalar.unit === 'rad' ? 1 : 0;
    min[slot] = least;
    max[slot] = most;
    slot += 1;
  }
  const curves = new Map<string, CurveSlots>();
  const slots = { points: pointSlots, scalars: scalarSlots, curves, guess, free, angle, min, max };
  for (const [name, curve] of sketch.curves) {
    curves.set(name, curve.kind === 'line' ? lineSlots(slots, name, curve) : cubicSlots(slots, name, curve));
  }
  return slots;
}

/** The slot of a point's x; y stands in the next. `user` is what names the point, for the error. */
export const pointSlot = (slots: Slots, point: string, user: string): number =>
  found(slots.points, 'point', point, user);

/** The slot of a scalar. */
export const scalarSlot = (slots: Slots, scalar: string, user: string): number =>
  found(slots.scalars, 'scalar', scalar, user);

/** The slots of a curve. */
export const curveSlots = (slots: Slots, curve: string, user: string): CurveSlots =>
  found(slots.curves, 'curve', curve, user);

/** The slot of a term of a sum. */
export const termSlot = (slots: Slots, term: Term, user: string): number =>
  'scalar' in term
    ? scalarSlot(slots, term.scalar, user)
    : pointSlot(slots, term.point, user) + (term.axis === 'x' ? 0 : 1);

/** A number as it is, or what else stands in its place where no compiler has looked. */
const shown = (value: unknown): string =>
  typeof value === 'number' || value === undefined || value === null
    ? `${value}`
    : 'no number (a step or a measurement is one with .value behind it)';

/** Passes a number a relation was given on, unless it is not finite: then throws a `DraftMistake` with the relation's name. */
export function finite(value: number, user: string): number {
  if (!Number.isFinite(value))
    throw new DraftMistake(
      `“${user}” needs a finite number, not ${value}. A number it comes from is missing.`,
      [user],
    );
  return value;
}

/** The same for an angle: one that goes round more than twice was meant in degrees. */
export function radians(value: number, user: string): number {
  if (Math.abs(finite(value, user)) <= 4 * Math.PI) return value;
  throw new DraftMistake(
    `“${user}” has the angle ${value}: angles are radians, ${value}° would be ${(value * Math.PI) / 180}.`,
    [user],
  );
}

function lineSlots(slots: Slots, name: string, line: SketchLine): LineSlots {
  const from = pointSlot(slots, line.from, name);
  const to = pointSlot(slots, line.to, name);
  return { kind: 'line', slots: [from, from + 1, to, to + 1] };
}

function cubicSlots(slots: Slots, name: string, cubic: SketchCubic): CubicSlots {
  const from = pointSlot(slots, cubic.from, name);
  const to = pointSlot(slots, cubic.to, name);
  const startAngle = scalarSlot(slots, cubic.startAngle, name);
  const startLength = scalarSlot(slots, cubic.startLength, name);
  const endAngle = scalarSlot(slots, cubic.endAngle, name);
  const endLength = scalarSlot(slots, cubic.endLength, name);
  return { kind: 'cubic', slots: [from, from + 1, to, to + 1, startAngle, startLength, endAngle, endLength] };
}

function found<T>(map: ReadonlyMap<string, T>, what: string, name: string, user: string): T {
  const value = map.get(name);
  if (value !== undefined) return value;
  const hint = perhapsMeant(name, [...map.keys()]);
  throw new DraftMistake(`“${user}” names the ${what} “${name}”, which the sketch lacks.${hint}`, [
    user,
    name,
  ]);
}

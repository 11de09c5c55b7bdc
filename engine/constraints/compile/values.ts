import type { Curve } from '../../geometry/curve.ts';
import { moved } from '../../geometry/point.ts';
import { heading, scaled } from '../../geometry/vector.ts';
import type { Found, Solution } from '../solution.ts';
import type { CurveSlots, Slots } from './slots.ts';

/** Where everything in a sketch lies. */
export type Places = Pick<Solution, 'points' | 'scalars' | 'curves'>;

/** The values of what was found, slot by slot; what it does not name stays where the sketch guesses it. */
export function valuesOf(slots: Slots, { points, scalars }: Found): Float64Array {
  const x = Float64Array.from(slots.guess);
  for (const [name, slot] of slots.points) {
    const at = points[name];
    if (at) x.set([at.x, at.y], slot);
  }
  for (const [name, slot] of slots.scalars) {
    const value = scalars[name];
    if (value !== undefined) x[slot] = value;
  }
  return x;
}

/** What the values `x` of all slots stand for. */
export const placesAt = (slots: Slots, x: Float64Array): Places => ({
  points: Object.fromEntries(
    Array.from(slots.points, ([name, slot]) => [name, { x: x[slot] as number, y: x[slot + 1] as number }]),
  ),
  scalars: Object.fromEntries(Array.from(slots.scalars, ([name, slot]) => [name, x[slot] as number])),
  curves: Object.fromEntries(Array.from(slots.curves, ([name, curve]) => [name, curveAt(curve, x)])),
});

function curveAt(curve: CurveSlots, x: Float64Array): Curve {
  const values = curve.slots.map((slot) => x[slot] as number);
  const [fx = 0, fy = 0, tx = 0, ty = 0, startAngle = 0, startLength = 0, endAngle = 0, endLength = 0] =
    values;
  const from = { x: fx, y: fy };
  const to = { x: tx, y: ty };
  if (curve.kind === 'line') return { kind: 'line', from, to };
  const handle1 = moved(from, scaled(heading(startAngle), startLength));
  const handle2 = moved(to, scaled(heading(endAngle), -endLength));
  return { kind: 'cubic', from, handle1, handle2, to };
}

import type { Curve } from '../../geometry/curve.ts';
import { moved } from '../../geometry/point.ts';
import { heading, scaled } from '../../geometry/vector.ts';
import { recordOf } from '../../record-of.ts';
import { withWhenAsked } from '../../when-asked.ts';
import type { Found, Solution } from '../solution.ts';
import type { CurveSlots, Slots } from './slots.ts';

/** What is known of a solution besides where everything in its sketch lies. */
type Outcome = Omit<Solution, 'points' | 'scalars' | 'curves'>;

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

/** A solution at the values `x` of all slots, which stay as they are. Records of what they stand for are written when asked for: of hundreds of names drafts read a few. */
export function solutionAt(slots: Slots, x: Float64Array, outcome: Outcome): Solution {
  return withWhenAsked(outcome, {
    points: () => recordOf(slots.points, (slot) => ({ x: x[slot] as number, y: x[slot + 1] as number })),
    scalars: () => recordOf(slots.scalars, (slot) => x[slot] as number),
    curves: () => recordOf(slots.curves, (curve) => curveAt(curve, x)),
  });
}

function curveAt(curve: CurveSlots, x: Float64Array): Curve {
  const at = (slot: number): number => x[slot] as number;
  const { slots } = curve;
  const from = { x: at(slots[0]), y: at(slots[1]) };
  const to = { x: at(slots[2]), y: at(slots[3]) };
  if (curve.kind === 'line') return { kind: 'line', from, to };
  const handle1 = moved(from, scaled(heading(at(curve.slots[4])), at(curve.slots[5])));
  const handle2 = moved(to, scaled(heading(at(curve.slots[6])), -at(curve.slots[7])));
  return { kind: 'cubic', from, handle1, handle2, to };
}

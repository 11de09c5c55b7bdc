import { chordDirection, wrapped } from '../compile/direction.ts';
import { type Equations, SCALE } from '../compile/equations.ts';
import { pointSlot, radians, type Slots } from '../compile/slots.ts';
import type { RelationOf } from './relation-of.ts';

/** The heading from a to b less what it should be, wrapped to (-pi, pi]. */
export function headingFrom(relation: RelationOf<'heading'>, slots: Slots): Equations {
  const { name } = relation;
  const angle = radians(relation.angle, name);
  const a = pointSlot(slots, relation.a, name);
  const b = pointSlot(slots, relation.b, name);
  const direction = chordDirection([a, a + 1, b, b + 1]);
  return {
    name,
    goal: 'zero',
    unit: 'rad',
    scale: SCALE.rad,
    rows: 1,
    elements: [
      {
        slots: direction.slots,
        linear: false,
        evaluate: (x, values, jacobian) => {
          values[0] = wrapped(direction.angle(x, jacobian, 0) - angle);
        },
      },
    ],
  };
}

import { type Equations, SCALE } from '../compile/equations.ts';
import { finite, type Slots, termSlot } from '../compile/slots.ts';
import type { RelationOf } from './relation-of.ts';

/** A weighted sum of coordinates and scalars, less its value. Counted as an angle when every term is one. */
export function weightedSum(relation: RelationOf<'sum'>, slots: Slots): Equations {
  const { name, terms } = relation;
  const value = finite(relation.value, name);
  const used = terms.map((term) => termSlot(slots, term, name));
  const times = terms.map((term) => finite(term.times, name));
  const unit = used.length > 0 && used.every((slot) => slots.angle[slot] === 1) ? 'rad' : 'mm';
  return {
    name,
    goal: 'zero',
    unit,
    scale: SCALE[unit],
    rows: 1,
    elements: [
      {
        slots: used,
        linear: true,
        evaluate: (x, values, jacobian) => {
          let sum = -value;
          for (let k = 0; k < used.length; k++)
            sum += (times[k] as number) * (x[used[k] as number] as number);
          values[0] = sum;
          jacobian.set(times);
        },
      },
    ],
  };
}

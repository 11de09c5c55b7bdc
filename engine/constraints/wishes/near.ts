import type { Equations } from '../compile/equations.ts';
import { finite, type Slots, termSlot } from '../compile/slots.ts';
import { rootOfWeight, type WishOf } from './wish-of.ts';

/** A weighted sum of coordinates and scalars, less the value it should come near. */
export function near(wish: WishOf<'near'>, slots: Slots): Equations {
  const { name, terms } = wish;
  const root = rootOfWeight(wish);
  const value = root * finite(wish.value, name);
  const used = terms.map((term) => termSlot(slots, term, name));
  const times = terms.map((term) => root * finite(term.times, name));
  return {
    name,
    goal: 'least',
    unit: 'mm',
    scale: 1,
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

import type { Term } from '../relations.ts';
import type { Element } from './equations.ts';
import { finite, type Slots, termSlot } from './slots.ts';

/** The element of a weighted sum of coordinates and scalars less its value, all of it `times` over. */
export function weightedSumElement(
  { name, terms, value }: { readonly name: string; readonly terms: readonly Term[]; readonly value: number },
  slots: Slots,
  times = 1,
): Element {
  const less = times * finite(value, name);
  const used = terms.map((term) => termSlot(slots, term, name));
  const factors = terms.map((term) => times * finite(term.times, name));
  return {
    slots: used,
    linear: true,
    evaluate: (x, values, jacobian) => {
      let sum = -less;
      for (let k = 0; k < used.length; k++) sum += (factors[k] as number) * (x[used[k] as number] as number);
      values[0] = sum;
      jacobian.set(factors);
    },
  };
}

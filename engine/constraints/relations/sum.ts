import { type Equations, SCALE } from '../compile/equations.ts';
import type { Slots } from '../compile/slots.ts';
import { weightedSumElement } from '../compile/weighted-sum.ts';
import type { RelationOf } from './relation-of.ts';

/** A weighted sum of coordinates and scalars, less its value. Counted as an angle when every term is one. */
export function weightedSum(relation: RelationOf<'sum'>, slots: Slots): Equations {
  const element = weightedSumElement(relation, slots);
  const used = element.slots;
  const unit = used.length > 0 && used.every((slot) => slots.angle[slot] === 1) ? 'rad' : 'mm';
  return { name: relation.name, goal: 'zero', unit, scale: SCALE[unit], rows: 1, elements: [element] };
}

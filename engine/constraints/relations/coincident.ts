import type { Equations } from '../compile/equations.ts';
import { pointSlot, type Slots } from '../compile/slots.ts';
import type { RelationOf } from './relation-of.ts';

/** Both coordinates of the way from a to b vanish. */
export function coincident(relation: RelationOf<'coincident'>, slots: Slots): Equations {
  const { name } = relation;
  const a = pointSlot(slots, relation.a, name);
  const b = pointSlot(slots, relation.b, name);
  return {
    name,
    goal: 'zero',
    unit: 'mm',
    scale: 1,
    rows: 2,
    elements: [
      {
        slots: [a, a + 1, b, b + 1],
        linear: true,
        evaluate: (x, values, jacobian) => {
          values[0] = (x[b] as number) - (x[a] as number);
          values[1] = (x[b + 1] as number) - (x[a + 1] as number);
          jacobian.set(DERIVATIVES);
        },
      },
    ],
  };
}

const DERIVATIVES = [-1, 0, 1, 0, 0, -1, 0, 1];

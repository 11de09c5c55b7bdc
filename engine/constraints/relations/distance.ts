import type { Equations } from '../compile/equations.ts';
import { finite, pointSlot, type Slots } from '../compile/slots.ts';
import type { RelationOf } from './relation-of.ts';

/**
 * Distance from a to b less what it should be (mm). Where the points coincide the distance has no derivative; any
 * direction is as good as another, and x is taken.
 */
export function distanceApart(relation: RelationOf<'distance'>, slots: Slots): Equations {
  const { name } = relation;
  const mm = finite(relation.mm, name);
  const a = pointSlot(slots, relation.a, name);
  const b = pointSlot(slots, relation.b, name);
  return {
    name,
    goal: 'zero',
    unit: 'mm',
    scale: 1,
    rows: 1,
    elements: [
      {
        slots: [a, a + 1, b, b + 1],
        linear: false,
        evaluate: (x, values, jacobian) => {
          const dx = (x[b] as number) - (x[a] as number);
          const dy = (x[b + 1] as number) - (x[a + 1] as number);
          const apart = Math.sqrt(dx * dx + dy * dy);
          const ux = apart === 0 ? 1 : dx / apart;
          const uy = apart === 0 ? 0 : dy / apart;
          values[0] = apart - mm;
          jacobian[0] = -ux;
          jacobian[1] = -uy;
          jacobian[2] = ux;
          jacobian[3] = uy;
        },
      },
    ],
  };
}

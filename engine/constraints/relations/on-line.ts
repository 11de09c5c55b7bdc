import type { Equations } from '../compile/equations.ts';
import { pointSlot, type Slots } from '../compile/slots.ts';
import type { RelationOf } from './relation-of.ts';

/** The distance of the point p from the line through a and b (mm), positive on the right of a to b as drawn. */
export function onLine(relation: RelationOf<'on line'>, slots: Slots): Equations {
  const { name } = relation;
  const p = pointSlot(slots, relation.point, name);
  const a = pointSlot(slots, relation.through[0], name);
  const b = pointSlot(slots, relation.through[1], name);
  return {
    name,
    goal: 'zero',
    unit: 'mm',
    scale: 1,
    rows: 1,
    elements: [
      {
        slots: [p, p + 1, a, a + 1, b, b + 1],
        linear: false,
        evaluate: (x, values, jacobian) => {
          const dx = (x[b] as number) - (x[a] as number);
          const dy = (x[b + 1] as number) - (x[a + 1] as number);
          const px = (x[p] as number) - (x[a] as number);
          const py = (x[p + 1] as number) - (x[a + 1] as number);
          const length = Math.sqrt(dx * dx + dy * dy) || 1;
          const ux = dx / length;
          const uy = dy / length;
          const off = ux * py - uy * px;
          // Moving b by one across the line turns the line: p, at the share t of the way, goes t the other way.
          const t = (px * ux + py * uy) / length;
          values[0] = off;
          jacobian[0] = -uy;
          jacobian[1] = ux;
          jacobian[2] = uy - t * uy;
          jacobian[3] = t * ux - ux;
          jacobian[4] = t * uy;
          jacobian[5] = -t * ux;
        },
      },
    ],
  };
}

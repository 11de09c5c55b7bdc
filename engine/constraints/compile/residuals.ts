import { flatMapped } from '../../flat-mapped.ts';
import { RELATION } from '../../geometry/tolerance.ts';
import { zeros } from '../../numeric/zeros.ts';
import type { Residual } from '../solution.ts';
import { type Equations, SCALE } from './equations.ts';
import type { Slots } from './slots.ts';

/** Room for the residuals of relations and for their derivatives, made once for all of them. */
interface Room {
  readonly sum: Float64Array;
  readonly values: Float64Array;
  readonly jacobian: Float64Array;
}

function roomFor(relations: readonly Equations[]): Room {
  let [rows, widest] = [0, 0];
  for (const equations of relations) {
    rows = Math.max(rows, equations.rows);
    for (const { slots } of equations.elements) widest = Math.max(widest, slots.length);
  }
  return { sum: zeros(rows), values: zeros(rows), jacobian: zeros(rows * widest) };
}

/** The residuals of a relation at the values `x`: the first of `sum`, one a row. */
function sumResiduals({ rows, elements }: Equations, x: Float64Array, { sum, values, jacobian }: Room): void {
  sum.fill(0);
  for (const { evaluate } of elements) {
    evaluate(x, values, jacobian);
    for (let r = 0; r < rows; r++) sum[r] = (sum[r] as number) + (values[r] as number);
  }
}

/** The least of a relation's residuals at the values `x`: how much room an inequality has. */
export function leastResidual(equations: Equations, x: Float64Array): number {
  const room = roomFor([equations]);
  sumResiduals(equations, x, room);
  return Math.min(...room.sum);
}

/** How far each relation is from holding, with its sign: its greatest residual, or 0 where an inequality holds. */
export function missesOf(relations: readonly Equations[], x: Float64Array): readonly Residual[] {
  const room = roomFor(relations);
  return relations.map((equations) => {
    sumResiduals(equations, x, room);
    let error = 0;
    for (let r = 0; r < equations.rows; r++) {
      const residual = room.sum[r] as number;
      const miss = equations.goal === 'zero' ? residual : Math.min(0, residual);
      if (!(Math.abs(miss) <= Math.abs(error))) error = miss;
    }
    return { relation: equations.name, unit: equations.unit, error };
  });
}

/** How far each scalar with bounds is outside them. */
export const boundMisses = ({ scalars, min, max, angle }: Slots, x: Float64Array): readonly Residual[] =>
  flatMapped([...scalars], ([name, slot]) => {
    if (!Number.isFinite(min[slot]) && !Number.isFinite(max[slot])) return [];
    const value = x[slot] as number;
    const inside = Math.min(Math.max(value, min[slot] as number), max[slot] as number);
    return { relation: boundsName(name), unit: angle[slot] === 1 ? 'rad' : 'mm', error: value - inside };
  });

/** What reports call the bounds of a scalar. */
export const boundsName = (scalar: string): string => `bounds of ${scalar}`;

/** Whether a relation holds: to 1e-6 mm, 1e-8 rad, or 8e-10 per mm. */
export const holds = ({ unit, error }: Residual): boolean => Math.abs(error) * SCALE[unit] <= RELATION;

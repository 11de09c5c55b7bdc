import { RELATION } from '../../geometry/tolerance.ts';
import type { Residual } from '../solution.ts';
import { type Equations, SCALE } from './equations.ts';
import type { Slots } from './slots.ts';

/** The residuals of some equations at the values `x`. */
export function residualsOf({ rows, elements }: Equations, x: Float64Array): Float64Array {
  const sum = new Float64Array(rows);
  const values = new Float64Array(rows);
  for (const { slots, evaluate } of elements) {
    evaluate(x, values, new Float64Array(rows * slots.length));
    for (let r = 0; r < rows; r++) sum[r] = (sum[r] as number) + (values[r] as number);
  }
  return sum;
}

/** How far a relation is from holding, with its sign: its greatest residual, or 0 where an inequality holds. */
export function missOf(equations: Equations, x: Float64Array): Residual {
  let error = 0;
  for (const residual of residualsOf(equations, x)) {
    const miss = equations.goal === 'zero' ? residual : Math.min(0, residual);
    if (!(Math.abs(miss) <= Math.abs(error))) error = miss;
  }
  return { relation: equations.name, unit: equations.unit, error };
}

/** How far each scalar with bounds is outside them. */
export const boundMisses = ({ scalars, min, max, angle }: Slots, x: Float64Array): readonly Residual[] =>
  Array.from(scalars)
    .filter(([, slot]) => Number.isFinite(min[slot]) || Number.isFinite(max[slot]))
    .map(([name, slot]) => {
      const value = x[slot] as number;
      const inside = Math.min(Math.max(value, min[slot] as number), max[slot] as number);
      return { relation: boundsName(name), unit: angle[slot] === 1 ? 'rad' : 'mm', error: value - inside };
    });

/** What reports call the bounds of a scalar. */
export const boundsName = (scalar: string): string => `bounds of ${scalar}`;

/** Whether a relation holds: to 1e-6 mm, 1e-8 rad, or 8e-10 per mm. */
export const holds = ({ unit, error }: Residual): boolean => Math.abs(error) * SCALE[unit] <= RELATION;

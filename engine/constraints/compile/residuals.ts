import type { Equations } from './equations.ts';

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

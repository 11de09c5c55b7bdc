import { RELATION } from '../../geometry/tolerance.ts';
import { factor, solveLower, solveUpper, triangle } from '../../numeric/cholesky.ts';
import { zeros } from '../../numeric/zeros.ts';
import type { Model } from './model.ts';

/** The first damping, and the least: none at all would let a step go where nothing holds it. */
const FIRST_DAMPING = 1e-6;
const LEAST_DAMPING = 1e-9;
const MOST_STEPS = 200;
/**
 * The sum is at its least when this many steps together take less than a share off it: this one, if it is to be known by how
 * much is missed (nine in ten sums end within 3 % of where two hundred steps would bring them), or the larger one, if only
 * whether. What could hold took off a sixth at least in every ten steps.
 */
const PATIENCE = 10;
const HARDLY = 1e-2;
export const HARDLY_WHETHER = 5e-2;

/**
 * Brings the relations and bounds as near to holding as they will come from the values `x`, which are written over,
 * wishes left aside: least sum of squared misses by Levenberg's and Marquardt's method (Nocedal & Wright 2006,
 * section 10.3). `settled` where the sum is at a least value, to about `hardly` of it, so that a miss that remains is a
 * contradiction, here at least.
 */
export function makeMissesLeast(
  model: Model,
  x: Float64Array,
  hardly = HARDLY,
): { readonly settled: boolean; readonly steps: number } {
  const { n, part, equal, atLeast } = model;
  const lower = triangle(n);
  const normal = lower.entries;
  const p = zeros(n);
  const start = zeros(n);
  let damping = FIRST_DAMPING;
  let mark = Infinity;
  model.evaluateRelations(x);
  for (let step = 0; step < MOST_STEPS; step++) {
    if (model.worst <= RELATION / 1e4) return { settled: true, steps: step };
    if (step % PATIENCE === 0) {
      const sum = sumOfSquares(model);
      if (sum > mark * (1 - hardly)) return { settled: true, steps: step };
      mark = sum;
    }
    normal.fill(0);
    p.fill(0);
    for (let i = 0; i < equal.count; i++) addSquare(equal.rows, equal.values, i, n, normal, p);
    for (let i = 0; i < atLeast.count; i++)
      if ((atLeast.values[i] as number) > 0) addSquare(atLeast.rows, atLeast.values, i, n, normal, p);
    for (let k = 0; k < n; k++) {
      start[k] = x[part.slots[k] as number] as number;
      const arm = part.arms[k] as number;
      normal[k * n + k] = (normal[k * n + k] as number) + damping * arm * arm;
    }
    factor(lower);
    solveLower(lower, p);
    solveUpper(lower, p);
    let length = 0;
    for (let k = 0; k < n; k++)
      length = Math.max(length, Math.abs(p[k] as number) * (part.arms[k] as number));
    if (length <= RELATION / 1e3) return { settled: true, steps: step };
    const before = sumOfSquares(model);
    for (let k = 0; k < n; k++) x[part.slots[k] as number] = (start[k] as number) + (p[k] as number);
    model.evaluateRelations(x);
    if (sumOfSquares(model) <= before) damping = Math.max(damping / 5, LEAST_DAMPING);
    else {
      damping *= 4;
      for (let k = 0; k < n; k++) x[part.slots[k] as number] = start[k] as number;
      model.evaluateRelations(x);
    }
  }
  return { settled: false, steps: MOST_STEPS };
}

function addSquare(
  rows: Float64Array,
  values: Float64Array,
  row: number,
  n: number,
  normal: Float64Array,
  right: Float64Array,
): void {
  const miss = values[row] as number;
  for (let i = 0; i < n; i++) {
    const slope = rows[row * n + i] as number;
    if (slope === 0) continue;
    right[i] = (right[i] as number) + slope * miss;
    for (let j = 0; j <= i; j++)
      normal[i * n + j] = (normal[i * n + j] as number) + slope * (rows[row * n + j] as number);
  }
}

function sumOfSquares({ equal, atLeast }: Model): number {
  let sum = 0;
  for (let i = 0; i < equal.count; i++) sum += (equal.values[i] as number) ** 2;
  for (let i = 0; i < atLeast.count; i++) sum += Math.max(0, atLeast.values[i] as number) ** 2;
  return sum;
}

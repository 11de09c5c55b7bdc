import { factor, triangle } from '../../numeric/cholesky.ts';
import { QuadraticProgram } from '../../numeric/quadratic-program.ts';
import { Curvature } from './curvature.ts';
import type { Model } from './model.ts';

/**
 * Shares of the greatest stiffness tried as the weight of the held relations' own squares. The greatest leaves half
 * of the digits to what the relations do not hold.
 */
const WEIGHTS = [0, 1e-3, 1, 1e3];

/**
 * One step of Newton's method on the conditions of Karush, Kuhn and Tucker, from values `x` at or very near an answer
 * of a part, which are written over: what is still missing there becomes the square of what it was. The forces are
 * first found by a program with the Gauss-Newton matrix, which has the right forces where its step is none, and the
 * step by a second one with the Hessian of the Lagrangian (Nocedal & Wright 2006, section 18.1). That is positive
 * definite on what the relations leave open, though perhaps not elsewhere: squares of the relations that hold with
 * force are then added, which change nothing on them (section 17.3).
 *
 * False, and `x` as it was, where the answer is not a strict least value: there it cannot be followed.
 */
export function takeNewtonStep(model: Model, x: Float64Array): boolean {
  const { n, part, hessian, gradient, equal, atLeast } = model;
  const program = new QuadraticProgram(n);
  model.evaluate(x);
  const lower = triangle(n, Float64Array.from(hessian));
  if (!factor(lower) || !program.solve(lower, gradient, equal, atLeast)) return false;
  const { equalityForces, inequalityForces } = program;
  const bent = Float64Array.from(hessian);
  new Curvature(model).add(x, equalityForces, inequalityForces, bent);
  const held = heldRows(model, program);
  const stiffness = greatestStiffness(model, bent);
  for (const weight of WEIGHTS) {
    lower.entries.set(bent);
    for (const row of held) addSquare(row, weight * stiffness, lower.entries);
    if (!factor(lower)) continue;
    if (!program.solve(lower, gradient, equal, atLeast)) return false;
    for (let k = 0; k < n; k++) {
      const slot = part.slots[k] as number;
      x[slot] = (x[slot] as number) + (program.step[k] as number);
    }
    return true;
  }
  return false;
}

/** The rows of the equalities, and of the inequalities that hold them with force. */
function heldRows({ n, equal, atLeast }: Model, { active, inequalityForces }: QuadraticProgram) {
  return active.flatMap((index) => {
    const row = index - equal.count;
    if (row < 0) return [equal.rows.subarray(index * n, (index + 1) * n)];
    return (inequalityForces[row] as number) > 0 ? [atLeast.rows.subarray(row * n, (row + 1) * n)] : [];
  });
}

/** The greatest entry on a matrix's diagonal in size, at arm's length. */
function greatestStiffness({ n, part }: Model, matrix: Float64Array): number {
  let most = 0;
  for (let k = 0; k < n; k++)
    most = Math.max(most, Math.abs(matrix[k * n + k] as number) / (part.arms[k] as number) ** 2);
  return most;
}

function addSquare(row: Float64Array, weight: number, into: Float64Array): void {
  const n = row.length;
  for (let i = 0; i < n; i++) {
    const slope = weight * (row[i] as number);
    if (slope === 0) continue;
    for (let j = 0; j <= i; j++) into[i * n + j] = (into[i * n + j] as number) + slope * (row[j] as number);
  }
}

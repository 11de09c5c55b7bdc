import { RELATION } from '../../geometry/tolerance.ts';
import { factor } from '../numeric/cholesky.ts';
import { QuadraticProgram } from '../numeric/quadratic-program.ts';
import type { Model } from './model.ts';

/** Relations are brought this near, a hundredth of what they must hold to, so that no reader's rounding matters. */
export const AIM = RELATION / 100;
/** A step shorter than this at arm's length is the last. */
const LAST_STEP = RELATION;
/** An unknown moves no further than this at arm's length in one step: half a radian, half a handle. */
const LONGEST_STEP = 50;
const MOST_STEPS = 100;
/** Share of the promised gain in merit that a step must bring (Nocedal & Wright 2006, section 18.3). */
const ENOUGH = 1e-4;

export interface Outcome {
  /** `held`: the relations hold and the wishes are at their least. */
  readonly end: 'held' | 'stuck';
  readonly steps: number;
}

/**
 * Makes the wishes least subject to the relations, from the values `x`, which are written over.
 *
 * Sequential quadratic programming with a line search on the l1 merit function and a second-order correction
 * (Nocedal & Wright, Numerical Optimization, 2006, algorithm 18.3 and section 15.6). The matrix is that of
 * Gauss-Newton on the wishes, with Levenberg's damping where a step disappoints (section 10.3).
 */
export function solveBySequentialPrograms(model: Model, x: Float64Array): Outcome {
  const { n, part } = model;
  const program = new QuadraticProgram(n);
  const lower = new Float64Array(n * n);
  const start = new Float64Array(n);
  const second = new Float64Array(n);
  const misses = new Float64Array(n);
  let penalty = 0;
  let damping = 0;
  model.evaluate(x);
  for (let step = 0; step < MOST_STEPS; step++) {
    if (!factored(model, damping, lower)) {
      damping = raised(damping, model);
      continue;
    }
    const feasible = program.solve(lower, model.gradient, model.equal, model.atLeast);
    if (!feasible) return { end: 'stuck', steps: step };
    const p = program.step;
    const length = longest(p, part.arms);
    if (model.worst <= AIM && length <= LAST_STEP) return { end: 'held', steps: step };

    penalty = Math.max(penalty, 1.5 * greatestForce(program));
    const before = model.objective + penalty * model.missing;
    const slope = inner(model.gradient, p) - penalty * model.missing;
    const curved = quadratic(model, p);
    readUnknowns(part.slots, x, start);
    let share = Math.min(1, LONGEST_STEP / length);
    let taken = false;
    for (let trial = 0; trial < 30 && !taken; trial++) {
      write(part.slots, x, start, p, share);
      model.evaluate(x);
      let merit = model.objective + penalty * model.missing;
      const target = before + ENOUGH * share * slope + 1e-13 * (1 + Math.abs(before));
      if (!(merit <= target) && trial === 0 && share === 1) {
        activeMisses(model, program, misses);
        program.correction(misses, second);
        for (let k = 0; k < n; k++) second[k] = (second[k] as number) + (p[k] as number);
        write(part.slots, x, start, second, 1);
        model.evaluate(x);
        merit = model.objective + penalty * model.missing;
      }
      if (merit <= target) {
        taken = true;
        const gain =
          (before - merit) / Math.max(-(share * slope + (share * share * curved) / 2), Number.MIN_VALUE);
        if (share === 1 && gain > 0.5) damping = damping < 1e-12 ? 0 : damping / 4;
        else if (gain < 0.25) damping = raised(damping, model);
      } else {
        share /= 2;
        if (trial > 1) damping = raised(damping, model);
      }
    }
    if (!taken) {
      write(part.slots, x, start, p, 0);
      model.evaluate(x);
      return { end: model.worst <= RELATION ? 'held' : 'stuck', steps: step + 1 };
    }
  }
  return { end: model.worst <= RELATION ? 'held' : 'stuck', steps: MOST_STEPS };
}

function factored(model: Model, damping: number, lower: Float64Array): boolean {
  const { n, part, hessian } = model;
  lower.set(hessian);
  for (let k = 0; k < n; k++) {
    const arm = part.arms[k] as number;
    lower[k * n + k] = (lower[k * n + k] as number) + damping * arm * arm;
  }
  return factor(lower, n);
}

/** Four times the damping, or a first damping of a ten-thousandth of the stiffest unknown. */
function raised(damping: number, { n, part, hessian }: Model): number {
  let stiffest = 0;
  for (let k = 0; k < n; k++)
    stiffest = Math.max(stiffest, (hessian[k * n + k] as number) / (part.arms[k] as number) ** 2);
  return Math.max(4 * damping, 1e-4 * stiffest);
}

const readUnknowns = (slots: readonly number[], x: Float64Array, into: Float64Array): void => {
  for (let k = 0; k < slots.length; k++) into[k] = x[slots[k] as number] as number;
};

function write(
  slots: readonly number[],
  x: Float64Array,
  start: Float64Array,
  p: Float64Array,
  share: number,
): void {
  for (let k = 0; k < slots.length; k++)
    x[slots[k] as number] = (start[k] as number) + share * (p[k] as number);
}

/** What each active row still misses after a step, in the order of the program's active rows. */
function activeMisses({ equal, atLeast }: Model, { active }: QuadraticProgram, into: Float64Array): void {
  for (let i = 0; i < active.length; i++) {
    const row = active[i] as number;
    into[i] = (row < equal.count ? equal.values[row] : atLeast.values[row - equal.count]) as number;
  }
}

function greatestForce({ equalityForces, inequalityForces }: QuadraticProgram): number {
  let most = 0;
  for (const force of equalityForces) most = Math.max(most, Math.abs(force));
  for (const force of inequalityForces) most = Math.max(most, force);
  return most;
}

function longest(p: Float64Array, arms: readonly number[]): number {
  let most = 0;
  for (let k = 0; k < p.length; k++) most = Math.max(most, Math.abs(p[k] as number) * (arms[k] as number));
  return most;
}

function inner(a: Float64Array, b: Float64Array): number {
  let sum = 0;
  for (let k = 0; k < a.length; k++) sum += (a[k] as number) * (b[k] as number);
  return sum;
}

/** p^T H p. */
function quadratic({ n, hessian }: Model, p: Float64Array): number {
  let sum = 0;
  for (let i = 0; i < n; i++) {
    let row = ((hessian[i * n + i] as number) * (p[i] as number)) / 2;
    for (let j = 0; j < i; j++) row += (hessian[i * n + j] as number) * (p[j] as number);
    sum += 2 * row * (p[i] as number);
  }
  return sum;
}

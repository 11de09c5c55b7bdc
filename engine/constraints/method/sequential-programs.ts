import { RELATION } from '../../geometry/tolerance.ts';
import { QuadraticProgram } from '../../numeric/quadratic-program.ts';
import { zeros } from '../../numeric/zeros.ts';
import { ProgramMatrix } from './matrix.ts';
import type { Model } from './model.ts';
import { inner, longest, squareLength } from './vectors.ts';

/** Relations are brought this near, a hundredth of what they must hold to, so that no reader's rounding matters. */
export const AIM = RELATION / 100;
/** When the next step is shorter than this at arm's length, the wishes are at their least. */
const LAST_STEP = RELATION;
/** An unknown moves no further than this at arm's length in one step: half a radian, half a handle. */
const LONGEST_STEP = 50;
/** After a step shorter than this the curvature is kept as long as the steps shrink tenfold: it hardly changes. */
const CLOSE = 0.3;
const MOST_STEPS = 100;
const MOST_HALVINGS = 30;
/** Damping below this is none: its pull is below the rounding of the rest. */
const NO_DAMPING = 1e-10;
/** Rounding in the merit, as a share of it, must not stop the last, shortest steps. */
const MERIT_ROUNDING = 1e-13;
/** Share of the promised gain that a step must bring at the least (Nocedal & Wright 2006, section 18.3). */
const ENOUGH = 1e-4;

/** `held`: the relations hold, and the wishes are at their least as far as steps could be found. */
export interface SolveOutcome {
  readonly held: boolean;
  readonly steps: number;
}

/**
 * Makes the wishes least subject to the relations, from the values `x`, which are written over.
 *
 * Sequential quadratic programming with a line search on the l1 merit function and a second-order correction
 * (Nocedal & Wright, Numerical Optimization, 2006, algorithm 18.3 and section 15.6). A relation that once pulled hard
 * must not weigh as much for ever, or no step along a bent relation is long: the penalty comes down again, halfway with
 * every step (M. J. D. Powell, 1978; from memory). Where a step had to be shortened, Levenberg's damping makes the next
 * ones shorter by themselves (section 10.3).
 */
export function solveBySequentialPrograms(model: Model, x: Float64Array): SolveOutcome {
  const { part } = model;
  const program = new QuadraticProgram(model.n);
  const matrix = new ProgramMatrix(model);
  const walk = new LineSearch(model, program, x);
  model.evaluate(x);
  for (let steps = 0; steps < MOST_STEPS; steps++) {
    if (
      !matrix.prepare(x, program, walk) ||
      !program.solve(matrix.lower, matrix.gradient, model.equal, model.atLeast)
    )
      return { held: false, steps };
    if (model.worst <= AIM && longest(program.step, part.arms) <= LAST_STEP) return { held: true, steps };
    if (!walk.step(matrix)) return { held: model.worst <= RELATION, steps: steps + 1 };
    // Steps that shrink at a steady rate at least: what is still to come is about the next one.
    if (walk.shrinks && walk.toCome <= LAST_STEP && model.worst <= AIM)
      return { held: true, steps: steps + 1 };
  }
  return { held: model.worst <= RELATION, steps: MOST_STEPS };
}

/** Takes the steps of the programs, each as far as it makes things better. */
class LineSearch {
  damping = 0;
  /** How far the last step went, and the one before, at arm's length. */
  moved = 0;
  #movedBefore = 0;
  #penalty = 0;
  readonly #model: Model;
  readonly #program: QuadraticProgram;
  readonly #x: Float64Array;
  readonly #start: Float64Array;
  readonly #corrected: Float64Array;
  /** What the relations missed before the step: those of `equal`, then those of `atLeast`. */
  readonly #missed: Float64Array;
  readonly #misses: Float64Array;

  constructor(model: Model, program: QuadraticProgram, x: Float64Array) {
    this.#model = model;
    this.#program = program;
    this.#x = x;
    this.#start = zeros(model.n);
    this.#corrected = zeros(model.n);
    this.#missed = zeros(model.equal.count + model.atLeast.count);
    this.#misses = zeros(model.n);
  }

  /** Whether the last step was less than a tenth as long as the one before. */
  get shrinks(): boolean {
    return this.moved < 0.1 * this.#movedBefore;
  }

  /** Whether the curvature must be found anew. */
  get anew(): boolean {
    return this.moved > CLOSE || !this.shrinks;
  }

  /** How far the next step should go if the steps go on shrinking as they did. */
  get toCome(): number {
    return (this.moved * this.moved) / this.#movedBefore;
  }

  /** Steps from where the model was last evaluated, by a program with this matrix. False, and back there, where no part of the step helps. */
  step(matrix: ProgramMatrix): boolean {
    const model = this.#model;
    const p = this.#program.step;
    const { slots, arms } = model.part;
    for (let k = 0; k < slots.length; k++) this.#start[k] = this.#x[slots[k] as number] as number;
    const least = 1.5 * this.#program.greatestForce;
    this.#penalty = Math.max(least, (this.#penalty + least) / 2);
    const before = this.#merit();
    this.#missed.set(model.equal.values);
    this.#missed.set(model.atLeast.values, model.equal.count);
    const slope = inner(model.gradient, p) - this.#penalty * model.missing;
    const bend = Math.max(0, matrix.bend(p));
    let share = Math.min(1, LONGEST_STEP / longest(p, arms));
    for (let halving = 0; halving < MOST_HALVINGS; halving++) {
      const promised = -(share * slope + (share * share * bend) / 2);
      this.#moveTo(p, share);
      let gain = before - this.#merit();
      if (!(gain > 0.5 * promised)) gain = Math.max(gain, this.#correct(before, gain, share));
      if (gain >= -ENOUGH * share * slope - MERIT_ROUNDING * (1 + Math.abs(before))) {
        this.#movedBefore = this.moved;
        this.moved = share * longest(p, arms);
        this.#adaptDamping(share, gain / promised, bend / squareLength(p, arms));
        return true;
      }
      share /= 2;
    }
    this.#moveTo(p, 0);
    return false;
  }

  #merit(): number {
    return this.#model.objective + this.#penalty * this.#model.missing;
  }

  #moveTo(p: Float64Array, share: number): void {
    const { slots } = this.#model.part;
    for (let k = 0; k < slots.length; k++)
      this.#x[slots[k] as number] = (this.#start[k] as number) + share * (p[k] as number);
    this.#model.evaluate(this.#x);
  }

  /**
   * Adds to a share of the step what brings the active relations to where that share of it should have left them; stays with
   * the step alone where that is no better. Returns the gain with it. Where relations are bent, a long step along them comes
   * through where without it only a sixteenth of the step would.
   */
  #correct(before: number, gain: number, share: number): number {
    const { equal, atLeast, n } = this.#model;
    const { active, step } = this.#program;
    for (let i = 0; i < active.length; i++) {
      const row = active[i] as number;
      const miss = (row < equal.count ? equal.values[row] : atLeast.values[row - equal.count]) as number;
      this.#misses[i] = miss - (1 - share) * (this.#missed[row] as number);
    }
    this.#program.correction(this.#misses, this.#corrected);
    for (let k = 0; k < n; k++)
      this.#corrected[k] = (this.#corrected[k] as number) + share * (step[k] as number);
    this.#moveTo(this.#corrected, 1);
    const corrected = before - this.#merit();
    if (!(corrected > gain)) this.#moveTo(step, share);
    return corrected;
  }

  /** Damps by as much as would have shortened this step to what could be taken of it. */
  #adaptDamping(share: number, success: number, bend: number): void {
    const stiffness = bend + this.damping;
    if (share < 1) this.damping += (1 / share - 1) * stiffness;
    else if (success < 0.25) this.damping += stiffness;
    else if (success > 0.5) this.damping = this.damping < NO_DAMPING ? 0 : this.damping / 8;
  }
}

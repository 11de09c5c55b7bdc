import { factor, type Triangle, triangle } from '../../numeric/cholesky.ts';
import type { LinearRows, QuadraticProgram } from '../../numeric/quadratic-program.ts';
import { zeros } from '../../numeric/zeros.ts';
import { Curvature } from './curvature.ts';
import type { Model } from './model.ts';
import { quadratic } from './vectors.ts';

/** Shares of the mean stiffness tried as the weight of the relations' own squares. */
const WEIGHTS = [0, 10, 1000];

/**
 * The matrix of a quadratic program, factored. At best it is the Hessian of the Lagrangian, by which the steps
 * converge quadratically; where that is not positive definite as it stands, the squares of what the linearised equalities,
 * and the inequalities that held with force in the last program, still miss are added, which changes nothing on them
 * (Nocedal & Wright 2006, section 16.5 and 17.3); and where that does not help either, or as long as no forces are known,
 * it is the Gauss-Newton matrix, which always is.
 *
 * What is squared is the miss, not the step alone: else the program's forces would be too great by weight times miss, and the
 * curvature that is found with them next would be another sketch's.
 */
export class ProgramMatrix {
  readonly lower: Triangle;
  /** The gradient that goes with it. */
  readonly gradient: Float64Array;
  readonly #model: Model;
  readonly #curvature: Curvature;
  readonly #bent: Float64Array;
  /** Which of the weights serves. */
  #weight = 0;
  /** Whether the curvature is in the matrix. */
  #isBent = false;

  constructor(model: Model) {
    const { n } = model;
    this.lower = triangle(n);
    this.gradient = zeros(n);
    this.#model = model;
    this.#curvature = new Curvature(model);
    this.#bent = zeros(n * n);
  }

  /**
   * Factors the matrix at `x`, given the forces of the last program, with the curvature there or, unless `anew`, the one
   * it had before. False only for numbers that overflow.
   */
  prepare(
    x: Float64Array,
    program: QuadraticProgram,
    { damping, anew }: { readonly damping: number; readonly anew: boolean },
  ): boolean {
    const model = this.#model;
    const { lower, gradient } = this;
    const { entries } = lower;
    const bent = this.#bent;
    if (program.solved) {
      if (anew) this.#curvature.add(x, program.equalityForces, program.inequalityForces, bent.fill(0));
      const stiffness = meanStiffness(model);
      this.#isBent = true;
      // A weight that was too small once is so again: three in four factorings failed where each step began anew.
      for (; this.#weight < WEIGHTS.length; this.#weight++) {
        addLower(model, bent, entries);
        addDamping(model, damping, entries);
        gradient.set(model.gradient);
        const weight = WEIGHTS[this.#weight] as number;
        if (weight > 0) addSquares(model, program, weight * stiffness, entries, gradient);
        if (factor(lower)) return true;
      }
      this.#weight = WEIGHTS.length - 1;
    }
    this.#isBent = false;
    entries.set(model.hessian);
    gradient.set(model.gradient);
    addDamping(model, damping, entries);
    return factor(lower);
  }

  /** How stiff the matrix is along a step, without damping and weights: the step times the matrix times the step. */
  bend(p: Float64Array): number {
    const wishes = quadratic(this.#model.hessian, p);
    return this.#isBent ? wishes + quadratic(this.#bent, p) : wishes;
  }
}

/** Writes the lower triangle of the Gauss-Newton matrix with the curvature added. */
function addLower({ n, hessian }: Model, bent: Float64Array, into: Float64Array): void {
  for (let i = 0; i < n; i++)
    for (let k = i * n; k <= i * n + i; k++) into[k] = (hessian[k] as number) + (bent[k] as number);
}

/** Mean diagonal of the Gauss-Newton matrix at arm's length. */
function meanStiffness({ n, part, hessian }: Model): number {
  let sum = 0;
  for (let k = 0; k < n; k++) {
    const arm = part.arms[k] as number;
    sum += (hessian[k * n + k] as number) / (arm * arm);
  }
  return sum / n;
}

function addDamping({ n, part }: Model, damping: number, matrix: Float64Array): void {
  if (damping === 0) return;
  for (let k = 0; k < n; k++) {
    const arm = part.arms[k] as number;
    matrix[k * n + k] = (matrix[k * n + k] as number) + damping * arm * arm;
  }
}

/** Adds the squares of what the equalities miss, and of what held with force in a program. */
function addSquares(
  { n, equal, atLeast }: Model,
  program: QuadraticProgram,
  weight: number,
  matrix: Float64Array,
  gradient: Float64Array,
): void {
  for (let row = 0; row < equal.count; row++) addSquare(equal, row, n, weight, matrix, gradient);
  for (let row = 0; row < atLeast.count; row++)
    if ((program.inequalityForces[row] as number) > 0) addSquare(atLeast, row, n, weight, matrix, gradient);
}

function addSquare(
  { rows, columns, values }: LinearRows,
  row: number,
  n: number,
  weight: number,
  matrix: Float64Array,
  gradient: Float64Array,
): void {
  const filled = columns[row] as readonly number[];
  const value = values[row] as number;
  for (const i of filled) {
    const slope = weight * (rows[row * n + i] as number);
    gradient[i] = (gradient[i] as number) - slope * value;
    for (const j of filled) {
      if (j > i) break;
      matrix[i * n + j] = (matrix[i * n + j] as number) + slope * (rows[row * n + j] as number);
    }
  }
}

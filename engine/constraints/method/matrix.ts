import { factor, type Triangle, triangle } from '../../numeric/cholesky.ts';
import type { LinearRows, QuadraticProgram } from '../../numeric/quadratic-program.ts';
import { zeros } from '../../numeric/zeros.ts';
import { Curvature } from './curvature.ts';
import type { Model } from './model.ts';

/**
 * Shares of the mean stiffness tried as the weight of the relations' own squares. The last only near an answer, where it
 * makes up for a curvature that the others do not, so that steps go on to converge quadratically: far away it would keep
 * them on relations that are still bent.
 */
const WEIGHTS = [0, 0.01, 1, 100, 10000];
const FAR_WEIGHTS = 3;

/**
 * The matrix of a quadratic program, factored. At best it is the Hessian of the Lagrangian, by which the steps
 * converge quadratically; where that is not positive definite as it stands, the squares of the linearised equalities
 * are added, which changes nothing on them (Nocedal & Wright 2006, section 16.5 and 17.3); and where that does not help
 * either, far from the answer or as long as no forces are known, it is the Gauss-Newton matrix, which always is.
 */
export class ProgramMatrix {
  readonly lower: Triangle;
  readonly #model: Model;
  readonly #curvature: Curvature;
  readonly #bent: Float64Array;
  /** Which of the weights serves. */
  #weight = 0;

  constructor(model: Model) {
    const { n } = model;
    this.lower = triangle(n);
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
    { damping, anew, near }: { readonly damping: number; readonly anew: boolean; readonly near: boolean },
  ): boolean {
    const model = this.#model;
    const weights = near ? WEIGHTS.length : FAR_WEIGHTS;
    const { lower } = this;
    const { entries } = lower;
    const bent = this.#bent;
    if (program.solved) {
      if (anew) this.#curvature.add(x, program.equalityForces, program.inequalityForces, bent.fill(0));
      const stiffness = meanStiffness(model);
      // A weight that was too small once is so again: three in four factorings failed where each step began anew.
      for (; this.#weight < weights; this.#weight++) {
        addLower(model, bent, entries);
        addDamping(model, damping, entries);
        const weight = WEIGHTS[this.#weight] as number;
        if (weight > 0) addSquares(model, near ? program : undefined, weight * stiffness, entries);
        if (factor(lower)) return true;
      }
      this.#weight = weights - 1;
    }
    entries.set(model.hessian);
    addDamping(model, damping, entries);
    return factor(lower);
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

/** Adds the squares of the equalities and, given the program whose forces are known, of what holds with force in it. */
function addSquares(
  { n, equal, atLeast }: Model,
  program: QuadraticProgram | undefined,
  weight: number,
  matrix: Float64Array,
): void {
  for (let row = 0; row < equal.count; row++) addSquare(equal, row, n, weight, matrix);
  if (!program) return;
  for (let row = 0; row < atLeast.count; row++)
    if ((program.inequalityForces[row] as number) > 0) addSquare(atLeast, row, n, weight, matrix);
}

function addSquare(
  { rows, columns }: LinearRows,
  row: number,
  n: number,
  weight: number,
  matrix: Float64Array,
): void {
  const filled = columns[row] as readonly number[];
  for (const i of filled) {
    const slope = weight * (rows[row * n + i] as number);
    for (const j of filled) {
      if (j > i) break;
      matrix[i * n + j] = (matrix[i * n + j] as number) + slope * (rows[row * n + j] as number);
    }
  }
}

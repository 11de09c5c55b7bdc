import { solveLower, solveUpper, type Triangle, triangle } from './cholesky.ts';
import { RowBasis } from './row-basis.ts';
import { zeros } from './zeros.ts';

/** Constraints of a quadratic program on its unknown p: `rows` times p is `values`, or is not below them. */
export interface LinearRows {
  readonly count: number;
  /** count x n, row by row. */
  readonly rows: Float64Array;
  /** For each row the columns, in rising order, in which it may be other than zero. */
  readonly columns: readonly (readonly number[])[];
  readonly values: Float64Array;
}

/** An inequality may be missed by this (mm at arm's length): far below what a relation must hold to. */
const SLACK = 1e-10;

/**
 * Least p^T H p / 2 + g^T p subject to equalities and inequalities, H positive definite, by the dual active set
 * method of Goldfarb & Idnani (1983, "A numerically stable dual method for solving strictly convex quadratic
 * programs", Mathematical Programming 27). With H = L L^T and w = L^T p it looks for the point nearest to
 * -L^-1 g in a polyhedron, adding the inequality missed most until none is missed.
 *
 * An equality that depends on those before it is left out. The npm package quadprog is the same method; it takes
 * ten times as long here (1.5 ms against 0.15 ms for 66 unknowns), as it works on nested arrays, and it takes a
 * redundant equality for a contradiction.
 */
export class QuadraticProgram {
  readonly n: number;
  /** The answer. */
  readonly step: Float64Array;
  /** Whether a program was solved yet, so that there are forces. */
  solved = false;
  /** Multipliers of the equalities (0 for one left out) and, not negative, of the inequalities. */
  equalityForces = new Float64Array(0);
  inequalityForces = new Float64Array(0);
  /** The rows that hold with equality at the answer: those of the equalities, then those of the inequalities. */
  readonly active: number[] = [];
  readonly #basis: RowBasis;
  readonly #w: Float64Array;
  readonly #row: Float64Array;
  readonly #along: Float64Array;
  readonly #forces: Float64Array;
  #lower: Triangle = triangle(0);

  constructor(n: number) {
    this.n = n;
    this.step = zeros(n);
    this.#basis = new RowBasis(n);
    this.#w = zeros(n);
    this.#row = zeros(n);
    this.#along = zeros(n);
    this.#forces = zeros(n + 1);
  }

  /** Solves; `lower` is the factor of H. False where the inequalities cannot hold together with the equalities. */
  solve(lower: Triangle, g: Float64Array, equal: LinearRows, atLeast: LinearRows): boolean {
    const { n } = this;
    this.#lower = lower;
    this.equalityForces = sized(this.equalityForces, equal.count);
    this.inequalityForces = sized(this.inequalityForces, atLeast.count);
    this.active.length = 0;
    this.#basis.clear();
    const w = this.#w;
    for (let k = 0; k < n; k++) w[k] = -(g[k] as number);
    solveLower(lower, w);
    this.#holdEqualities(equal);
    const equalities = this.active.length;
    const found = this.#holdInequalities(equal.count, equalities, atLeast);
    this.#writeStep();
    for (let i = 0; i < this.active.length; i++) {
      const row = this.active[i] as number;
      if (row < equal.count) this.equalityForces[row] = this.#forces[i] as number;
      else this.inequalityForces[row - equal.count] = this.#forces[i] as number;
    }
    this.solved = true;
    return found;
  }

  /** The greatest multiplier in size. */
  get greatestForce(): number {
    let most = 0;
    for (const force of this.equalityForces) most = Math.max(most, Math.abs(force));
    for (const force of this.inequalityForces) most = Math.max(most, force);
    return most;
  }

  /**
   * The least move, in the metric of H, that changes each active row times p by the value given for it (in the
   * order of `active`). Written over `into`.
   */
  correction(values: Float64Array, into: Float64Array): void {
    into.fill(0);
    this.#basis.reach(values, into, this.#along);
    solveUpper(this.#lower, into);
  }

  #holdEqualities(equal: LinearRows): void {
    const values = zeros(this.n);
    for (let i = 0; i < equal.count; i++) {
      this.#load(equal, i);
      if (!this.#basis.add(this.#row)) continue;
      values[this.active.length] = equal.values[i] as number;
      this.active.push(i);
    }
    this.#basis.reach(values, this.#w, this.#forces);
    this.#basis.shares(this.#forces);
  }

  #holdInequalities(offset: number, equalities: number, atLeast: LinearRows): boolean {
    const { n, active } = this;
    const basis = this.#basis;
    const forces = this.#forces;
    // Every round either adds an inequality for good or raises the value of the program, so this ends; the limit
    // is against rounding only.
    for (let round = 0; round < 50 + 10 * atLeast.count; round++) {
      this.#writeStep();
      const worst = this.#missedMost(atLeast);
      if (worst < 0) return true;
      this.#load(atLeast, worst);
      let force = 0;
      let miss = this.#missOf(atLeast, worst);
      for (;;) {
        const length = basis.project(this.#row);
        const along = this.#along;
        along.set(basis.along);
        basis.shares(along);
        let shortest = Infinity;
        let blocking = -1;
        for (let i = equalities; i < active.length; i++) {
          const share = along[i] as number;
          const reach = share > 0 ? (forces[i] as number) / share : Infinity;
          if (reach < shortest) {
            shortest = reach;
            blocking = i;
          }
        }
        const full = length > 0 ? miss / (length * length) : Infinity;
        const t = Math.min(shortest, full);
        if (t === Infinity) return false;
        for (let i = 0; i < active.length; i++) forces[i] = (forces[i] as number) - t * (along[i] as number);
        force += t;
        if (length > 0) {
          for (let k = 0; k < n; k++) this.#w[k] = (this.#w[k] as number) + t * (basis.rest[k] as number);
          miss -= t * length * length;
        }
        if (t === full) {
          basis.keep(this.#row, length);
          forces[active.length] = force;
          active.push(offset + worst);
          break;
        }
        basis.remove(blocking);
        active.splice(blocking, 1);
        forces.copyWithin(blocking, blocking + 1, active.length + 1);
      }
    }
    return false;
  }

  #writeStep(): void {
    this.step.set(this.#w);
    solveUpper(this.#lower, this.step);
  }

  /** Loads a row in the coordinates of w. */
  #load({ rows, columns }: LinearRows, index: number): void {
    const { n } = this;
    const row = this.#row.fill(0);
    for (const k of columns[index] as readonly number[]) row[k] = rows[index * n + k] as number;
    solveLower(this.#lower, row);
  }

  #missOf({ rows, columns, values }: LinearRows, index: number): number {
    const { n, step } = this;
    const first = index * n;
    let miss = values[index] as number;
    for (const k of columns[index] as readonly number[])
      miss -= (rows[first + k] as number) * (step[k] as number);
    return miss;
  }

  #missedMost(atLeast: LinearRows): number {
    let worst = -1;
    let most = SLACK;
    for (let i = 0; i < atLeast.count; i++) {
      const miss = this.#missOf(atLeast, i);
      if (miss > most) {
        most = miss;
        worst = i;
      }
    }
    return worst;
  }
}

/** An array of zeros of this size, the old one where it fits. */
function sized(old: Float64Array<ArrayBuffer>, count: number): Float64Array<ArrayBuffer> {
  return old.length === count ? old.fill(0) : zeros(count);
}

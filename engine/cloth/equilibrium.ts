import { type BlockMatrix, blockMatrix, blockPlaces } from '../numeric/sparse/block-matrix.ts';
import { graphOf } from '../numeric/sparse/graph.ts';
import { SparseCholesky } from '../numeric/sparse/sparse-cholesky.ts';
import type { Force } from './force.ts';

/** What counts as rest, and how long to look for it. */
export interface Rest {
  /** The greatest force left at any free point, N. */
  readonly residual: number;
  readonly steps: number;
  /** Also enough: forces left over whose root of the sum of squares is no more than this, N. */
  readonly net?: number;
  /** Damping to begin with, N/mm for each unit of the weights; small where the start is near to rest. */
  readonly damping?: number;
}

/** How a search for rest ended. */
export interface Settled {
  readonly atRest: boolean;
  /** The greatest force left at any free point, N. */
  readonly residual: number;
  /** The root of the sum of squares of all that are left, N. */
  readonly net: number;
  readonly steps: number;
  readonly energy: number;
}

/** Whether whoever looks on has seen enough; nothing where nobody does. */
export type Enough = boolean | undefined;

/** What comes of a search that is done step by step, where nobody looks on. */
export function toTheEnd<Found>(steps: Generator<unknown, Found, Enough>): Found {
  for (;;) {
    const { done, value } = steps.next();
    if (done) return value;
  }
}

/** A step moves no point further than this at once, mm: beyond, the forces at the start of the step say nothing. */
const LONGEST_STEP = 40;

/** A step of which no larger share helps leads nowhere. */
const SHORTEST = 1e-3;

/** A step must bring this share of what the slope at its start promises (Armijo). */
const WORTHWHILE = 1e-4;

/** Damping beyond this, N/mm, would hold every point where it is: the energy cannot be made smaller in doubles. */
const MOST_DAMPING = 1e6;

/**
 * Finds where the forces between points balance: the energy made least by Newton's method with a stiffness that is never less
 * than nothing, damped as far as the last steps went wrong (Levenberg-Marquardt), its system solved by sparse Cholesky, each step
 * shortened until the energy falls. Converges to rest from any start at which the energy is finite; deterministic.
 */
export class Equilibrium {
  readonly #forces: readonly Force[];
  readonly #weights: Float64Array;
  readonly #matrix: BlockMatrix;
  readonly #cholesky: SparseCholesky;
  readonly #gradient: Float64Array;
  readonly #step: Float64Array;
  readonly #tried: Float64Array;
  readonly #diagonal: Float64Array;
  #net = 0;

  /** `weights`: how much damping each point takes, its area say. `places`: where points are, roughly, for the order of solving. */
  constructor(forces: readonly Force[], weights: Float64Array, places: Float64Array) {
    const pairs = forces.flatMap((force) => [...Array.from(force.pairs)]);
    const graph = graphOf(weights.length, pairs);
    const place = blockPlaces(graph);
    for (const force of forces) force.bind(place);
    this.#forces = forces;
    this.#weights = weights;
    this.#matrix = blockMatrix(graph);
    this.#cholesky = new SparseCholesky(graph, places, places.length / weights.length);
    this.#gradient = new Float64Array(3 * weights.length);
    this.#step = new Float64Array(3 * weights.length);
    this.#tried = new Float64Array(3 * weights.length);
    this.#diagonal = new Float64Array(3 * weights.length);
  }

  energy(x: Float64Array): number {
    let sum = 0;
    for (const force of this.#forces) sum += force.energy(x);
    return sum;
  }

  /** Moves `x` to rest; coordinates whose `held` is 1 stay where they are. */
  settle(x: Float64Array, held: Uint8Array, rest: Rest): Settled {
    return toTheEnd(this.settling(x, held, rest));
  }

  /**
   * The same step by step, so that whoever waits can look on: yields the number of each step, `x` then being the best so far.
   * Told that it is enough, it stays there.
   */
  *settling(
    x: Float64Array,
    held: Uint8Array,
    { residual, steps, net = 0, damping: first = 1e-5 }: Rest,
  ): Generator<number, Settled, Enough> {
    let damping = first;
    let energy = this.energy(x);
    let left = Infinity;
    const isRest = (): boolean => left <= residual || this.#net <= net;
    for (let step = 0; step < steps; step++) {
      const enough = yield step;
      left = this.#assemble(x, held);
      if (isRest()) return { atRest: true, residual: left, net: this.#net, steps: step, energy };
      if (enough) return { atRest: false, residual: left, net: this.#net, steps: step, energy };
      let shortening = 0;
      for (;;) {
        if (this.#solve(held, damping)) {
          shortening = this.#search(x, energy);
          if (shortening > 0) break;
        }
        damping = Math.max(4 * damping, 1e-9);
        if (damping > MOST_DAMPING)
          return { atRest: false, residual: left, net: this.#net, steps: step, energy };
      }
      energy = this.energy(x);
      if (shortening > 0.9) damping /= 5;
      else if (shortening < 0.3) damping = Math.max(3 * damping, 1e-9);
    }
    left = this.#assemble(x, held);
    return { atRest: isRest(), residual: left, net: this.#net, steps, energy };
  }

  /** Finds forces and stiffness; returns the greatest force at a point. */
  #assemble(x: Float64Array, held: Uint8Array): number {
    const gradient = this.#gradient.fill(0);
    const { values } = this.#matrix;
    values.fill(0);
    for (const force of this.#forces) force.add(x, gradient, values);
    let most = 0;
    let sum = 0;
    for (let i = 0; i < gradient.length; i += 3) {
      let square = 0;
      for (let k = i; k < i + 3; k++) {
        if (held[k] === 1) gradient[k] = 0;
        square += (gradient[k] as number) ** 2;
        this.#diagonal[k] = values[3 * i + 4 * (k - i)] as number;
      }
      most = Math.max(most, square);
      sum += square;
    }
    this.#net = Math.sqrt(sum);
    return Math.sqrt(most);
  }

  #solve(held: Uint8Array, damping: number): boolean {
    const { values } = this.#matrix;
    const step = this.#step;
    for (let k = 0; k < step.length; k++) {
      const i = Math.floor(k / 3);
      const at = 9 * i + 4 * (k - 3 * i);
      // What is held is as stiff as nothing else: it moves by rounding only, and that is taken out below.
      values[at] =
        (this.#diagonal[k] as number) +
        (held[k] === 1 ? 1e12 : damping * (this.#weights[i] as number) + 1e-12);
      step[k] = -(this.#gradient[k] as number);
    }
    if (!this.#cholesky.factor(this.#matrix)) return false;
    this.#cholesky.solve(step);
    let longest = 0;
    for (let k = 0; k < step.length; k++) {
      if (held[k] === 1) step[k] = 0;
      longest = Math.max(longest, Math.abs(step[k] as number));
    }
    if (longest > LONGEST_STEP)
      for (let k = 0; k < step.length; k++) step[k] = ((step[k] as number) * LONGEST_STEP) / longest;
    return Number.isFinite(longest);
  }

  /** Goes along the step as far as the energy falls by enough; returns which share of it, 0 where it never does. */
  #search(x: Float64Array, energy: number): number {
    const step = this.#step;
    const tried = this.#tried;
    let slope = 0;
    for (let k = 0; k < step.length; k++) slope += (step[k] as number) * (this.#gradient[k] as number);
    if (!(slope < 0)) return 0;
    // Near rest a step changes the energy by less than its rounding.
    const rounding = 1e-14 * Math.abs(energy);
    for (let share = 1; share > SHORTEST; share /= 2) {
      for (let k = 0; k < step.length; k++) tried[k] = (x[k] as number) + share * (step[k] as number);
      if (this.energy(tried) <= energy + WORTHWHILE * share * slope + rounding) {
        x.set(tried);
        return share;
      }
    }
    return 0;
  }
}

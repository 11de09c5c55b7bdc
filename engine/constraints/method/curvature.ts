import { zeros } from '../../numeric/zeros.ts';
import type { PlacedElement, PlacedEquations } from '../compile/parts.ts';
import type { Model } from './model.ts';

/** Second derivatives are differences of first ones over this (mm at arm's length): exact to about a millionth. */
const DIFFERENCE = 1e-4;

/**
 * What the Gauss-Newton matrix lacks of the Hessian of the Lagrangian: the second derivatives of every residual times
 * the force of its relation or, for a wish, times its value. They are taken as differences of the exact first
 * derivatives, element by element, since each depends on a few unknowns only (partial separability: Griewank &
 * Toint, 1982).
 */
export class Curvature {
  readonly #model: Model;
  readonly #weights: Float64Array;
  readonly #here: Float64Array;
  readonly #there: Float64Array;
  readonly #second: Float64Array;

  constructor(model: Model) {
    this.#model = model;
    this.#weights = zeros(model.values.length);
    this.#here = zeros(model.jacobian.length);
    this.#there = zeros(model.jacobian.length);
    this.#second = zeros(model.widest * model.widest);
  }

  /** Adds the curvature at the values `x`, given the forces of the relations, to a matrix (lower triangle). */
  add(
    x: Float64Array,
    equalityForces: Float64Array,
    inequalityForces: Float64Array,
    into: Float64Array,
  ): void {
    const { zero, notNegative, part } = this.#model;
    this.#addForced(x, zero, equalityForces, into);
    this.#addForced(x, notNegative, inequalityForces, into);
    for (const { equations, elements } of part.wishes) {
      for (const placed of elements) {
        if (placed.element.linear) continue;
        placed.element.evaluate(x, this.#weights, this.#model.jacobian);
        this.#addElement(x, placed, equations.rows, into);
      }
    }
  }

  #addForced(
    x: Float64Array,
    all: readonly PlacedEquations[],
    forces: Float64Array,
    into: Float64Array,
  ): void {
    let row = 0;
    for (const { equations, elements } of all) {
      const { rows, scale } = equations;
      let any = false;
      for (let r = 0; r < rows; r++, row++) {
        this.#weights[r] = -scale * (forces[row] as number);
        any ||= forces[row] !== 0;
      }
      if (any) for (const placed of elements) this.#addElement(x, placed, rows, into);
    }
  }

  #addElement(x: Float64Array, placed: PlacedElement, rows: number, into: Float64Array): void {
    const { element, columns } = placed;
    if (element.linear) return;
    const { n, part } = this.#model;
    const width = columns.length;
    if (element.curve) {
      element.curve(x, this.#weights, this.#second);
      this.#scatter(columns, into);
      return;
    }
    this.#writeGradient(x, placed, rows, this.#here);
    for (let k = 0; k < width; k++) {
      const column = columns[k] as number;
      const slot = element.slots[k] as number;
      // A slot that stands there twice is moved once.
      if (column < 0 || element.slots.indexOf(slot) !== k) continue;
      const value = x[slot] as number;
      const h = DIFFERENCE / (part.arms[column] as number);
      x[slot] = value + h;
      this.#writeGradient(x, placed, rows, this.#there);
      x[slot] = value;
      for (let other = 0; other < width; other++) {
        const second = columns[other] as number;
        if (second < 0) continue;
        const slope = ((this.#there[other] as number) - (this.#here[other] as number)) / h;
        // The matrix is symmetric: each of two differences gives half of an entry, and on the diagonal one gives all.
        const at = column > second ? column * n + second : second * n + column;
        into[at] = (into[at] as number) + (column === second ? slope : slope / 2);
      }
    }
  }

  #scatter(columns: readonly number[], into: Float64Array): void {
    const { n } = this.#model;
    const width = columns.length;
    for (let k = 0; k < width; k++) {
      const column = columns[k] as number;
      if (column < 0) continue;
      for (let m = 0; m <= k; m++) {
        const second = columns[m] as number;
        if (second < 0) continue;
        // An unknown that stands in two slots has both of their mixed derivatives on its diagonal.
        const times = column === second && k !== m ? 2 : 1;
        const at = column > second ? column * n + second : second * n + column;
        into[at] = (into[at] as number) + times * (this.#second[k * width + m] as number);
      }
    }
  }

  /** Derivatives, slot by slot, of the residuals times their weights. */
  #writeGradient(
    x: Float64Array,
    { element, columns }: PlacedElement,
    rows: number,
    into: Float64Array,
  ): void {
    const { values, jacobian } = this.#model;
    const width = columns.length;
    element.evaluate(x, values, jacobian);
    into.fill(0, 0, width);
    for (let r = 0; r < rows; r++) {
      const weight = this.#weights[r] as number;
      for (let k = 0; k < width; k++)
        into[k] = (into[k] as number) + weight * (jacobian[r * width + k] as number);
    }
  }
}

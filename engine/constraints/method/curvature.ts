import type { Placed, PlacedElement } from '../compile/parts.ts';
import type { Model } from './model.ts';

/** Second derivatives are differences of first ones over this (mm at arm's length): exact to about a millionth. */
const DIFFERENCE = 1e-4;

/**
 * Adds to `into` (lower triangle) what the Gauss-Newton matrix lacks of the Hessian of the Lagrangian at the values
 * `x`, given the forces of the relations: the second derivatives of every residual times its force or, for a wish,
 * times its value. They are taken as differences of the exact first derivatives, element by element, since each
 * depends on a few unknowns only (partial separability: Griewank & Toint, 1982).
 */
export function addCurvature(
  model: Model,
  x: Float64Array,
  equalityForces: Float64Array,
  inequalityForces: Float64Array,
  into: Float64Array,
): void {
  const weights = new Float64Array(model.values.length);
  const addForced = (all: readonly Placed[], forces: Float64Array): void => {
    let row = 0;
    for (const { equations, elements } of all) {
      const { rows, scale } = equations;
      let any = false;
      for (let r = 0; r < rows; r++, row++) {
        weights[r] = -scale * (forces[row] as number);
        any ||= forces[row] !== 0;
      }
      if (any) for (const placed of elements) addElement(model, x, placed, rows, weights, into);
    }
  };
  addForced(model.zero, equalityForces);
  addForced(model.notNegative, inequalityForces);
  for (const { equations, elements } of model.part.wishes) {
    for (const placed of elements) {
      if (placed.element.linear) continue;
      placed.element.evaluate(x, weights, model.jacobian);
      addElement(model, x, placed, equations.rows, weights, into);
    }
  }
}

function addElement(
  { n, part, values, jacobian }: Model,
  x: Float64Array,
  { element, columns }: PlacedElement,
  rows: number,
  weights: Float64Array,
  into: Float64Array,
): void {
  if (element.linear) return;
  const { slots } = element;
  const width = columns.length;
  const base = new Float64Array(width);
  const gradient = (target: Float64Array): void => {
    element.evaluate(x, values, jacobian);
    target.fill(0);
    for (let r = 0; r < rows; r++)
      for (let k = 0; k < width; k++)
        target[k] = (target[k] as number) + (weights[r] as number) * (jacobian[r * width + k] as number);
  };
  gradient(base);
  const moved = new Float64Array(width);
  for (let k = 0; k < width; k++) {
    const column = columns[k] as number;
    if (column < 0 || columns.indexOf(column) < k) continue;
    const slot = slots[k] as number;
    const here = x[slot] as number;
    const h = DIFFERENCE / (part.arms[column] as number);
    x[slot] = here + h;
    gradient(moved);
    x[slot] = here;
    for (let other = 0; other < width; other++) {
      const second = columns[other] as number;
      if (second < 0) continue;
      const slope = ((moved[other] as number) - (base[other] as number)) / h;
      // The matrix is symmetric, so each of two differences gives half of an entry; on the diagonal one gives all.
      const at = column > second ? column * n + second : second * n + column;
      into[at] = (into[at] as number) + (column === second ? slope : slope / 2);
    }
  }
}

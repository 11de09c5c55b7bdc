import type { LinearRows } from '../../numeric/quadratic-program.ts';
import { zeros } from '../../numeric/zeros.ts';
import type { PlacedEquations, SketchPart } from '../compile/parts.ts';

/**
 * Pull of every unknown towards its first guess, per mm squared at arm's length. It makes the answer of a sketch
 * that leaves something open unique. Larger: it would bend what the wishes say; 10 mm from the guess must cost no
 * more than a thousandth of a curve's bending energy. Smaller: the matrix of such a sketch would be singular to
 * rounding.
 */
const PULL = 1e-8;

/**
 * A part of a sketch as numbers: its wishes and relations, in millimetres at arm's length, and their derivatives
 * by the part's unknowns, at whatever values it was last evaluated.
 */
export class Model {
  readonly part: SketchPart;
  readonly n: number;
  /** Half the weighted sum of squares of the wishes. */
  objective = 0;
  readonly gradient: Float64Array;
  /** The Gauss-Newton matrix of the wishes, lower triangle. */
  readonly hessian: Float64Array;
  /** Relations that must vanish: residuals with their sign turned, so that they are what a step must make up. */
  readonly equal: LinearRows;
  /** Relations and bounds that must not be negative, the same way. */
  readonly atLeast: LinearRows;
  /** The relations behind the rows of `equal`, and those behind the first rows of `atLeast`; bounds follow. */
  readonly zero: readonly PlacedEquations[];
  readonly notNegative: readonly PlacedEquations[];
  /** Room for the values and derivatives of any one element. */
  readonly values: Float64Array;
  readonly jacobian: Float64Array;
  /** Most slots of any one element. */
  readonly widest: number;
  readonly #guess: Float64Array;

  constructor(part: SketchPart, guess: Float64Array) {
    const n = part.slots.length;
    this.part = part;
    this.n = n;
    this.gradient = zeros(n);
    this.hessian = zeros(n * n);
    this.#guess = guess;
    this.zero = part.relations.filter(({ equations }) => equations.goal === 'zero');
    this.notNegative = part.relations.filter(({ equations }) => equations.goal === 'not negative');
    this.equal = emptyRows(columnsOf(this.zero), n);
    const bounds = part.bounds.map(({ column }) => [column]);
    this.atLeast = emptyRows([...columnsOf(this.notNegative), ...bounds], n);
    let rows = 0;
    let derivatives = 0;
    let widest = 0;
    for (const { equations } of [...part.relations, ...part.wishes]) {
      rows = Math.max(rows, equations.rows);
      for (const { slots } of equations.elements) {
        derivatives = Math.max(derivatives, equations.rows * slots.length);
        widest = Math.max(widest, slots.length);
      }
    }
    this.widest = widest;
    this.values = zeros(rows);
    this.jacobian = zeros(derivatives);
  }

  /** Sum of what the relations and bounds miss, in millimetres at arm's length. */
  get missing(): number {
    const { equal, atLeast } = this;
    let sum = 0;
    for (let i = 0; i < equal.count; i++) sum += Math.abs(equal.values[i] as number);
    for (let i = 0; i < atLeast.count; i++) sum += Math.max(0, atLeast.values[i] as number);
    return sum;
  }

  /** The greatest single miss. */
  get worst(): number {
    const { equal, atLeast } = this;
    let most = 0;
    for (let i = 0; i < equal.count; i++) most = Math.max(most, Math.abs(equal.values[i] as number));
    for (let i = 0; i < atLeast.count; i++) most = Math.max(most, atLeast.values[i] as number);
    return most;
  }

  /** Evaluates everything at the values `x` of all slots. */
  evaluate(x: Float64Array): void {
    this.evaluateRelations(x);
    this.#evaluateWishes(x);
  }

  /** Evaluates relations and bounds alone. */
  evaluateRelations(x: Float64Array): void {
    this.#evaluateRows(x, this.zero, this.equal);
    const next = this.#evaluateRows(x, this.notNegative, this.atLeast);
    this.#evaluateBounds(x, next);
  }

  #evaluateRows(x: Float64Array, relations: readonly PlacedEquations[], into: LinearRows): number {
    const { n } = this;
    const values = this.values;
    const jacobian = this.jacobian;
    into.values.fill(0);
    let row = 0;
    for (const { equations, elements } of relations) {
      const { scale, rows } = equations;
      for (let r = row; r < row + rows; r++)
        for (const column of into.columns[r] as readonly number[]) into.rows[r * n + column] = 0;
      for (const { element, columns } of elements) {
        element.evaluate(x, values, jacobian);
        const width = columns.length;
        for (let r = 0; r < rows; r++) {
          into.values[row + r] = (into.values[row + r] as number) - scale * (values[r] as number);
          for (let k = 0; k < width; k++) {
            const column = columns[k] as number;
            if (column < 0) continue;
            const at = (row + r) * n + column;
            into.rows[at] = (into.rows[at] as number) + scale * (jacobian[r * width + k] as number);
          }
        }
      }
      row += rows;
    }
    return row;
  }

  #evaluateBounds(x: Float64Array, next: number): void {
    const { n, part, atLeast } = this;
    let row = next;
    for (const { slot, column, limit, side } of part.bounds) {
      const arm = part.arms[column] as number;
      atLeast.values[row] = -side * arm * ((x[slot] as number) - limit);
      atLeast.rows[row * n + column] = side * arm;
      row++;
    }
  }

  #evaluateWishes(x: Float64Array): void {
    const { n, part, gradient, hessian } = this;
    const values = this.values;
    const jacobian = this.jacobian;
    hessian.fill(0);
    let sum = 0;
    for (let j = 0; j < n; j++) {
      const arm = part.arms[j] as number;
      const weight = PULL * arm * arm;
      const slot = part.slots[j] as number;
      const off = (x[slot] as number) - (this.#guess[slot] as number);
      sum += weight * off * off;
      gradient[j] = weight * off;
      hessian[j * n + j] = weight;
    }
    for (const { equations, elements } of part.wishes) {
      for (const { element, columns } of elements) {
        element.evaluate(x, values, jacobian);
        const width = columns.length;
        for (let r = 0; r < equations.rows; r++) {
          const value = values[r] as number;
          sum += value * value;
          for (let k = 0; k < width; k++) {
            const column = columns[k] as number;
            if (column < 0) continue;
            const slope = jacobian[r * width + k] as number;
            gradient[column] = (gradient[column] as number) + slope * value;
            for (let other = 0; other < width; other++) {
              const second = columns[other] as number;
              if (second < 0 || second > column) continue;
              const at = column * n + second;
              hessian[at] = (hessian[at] as number) + slope * (jacobian[r * width + other] as number);
            }
          }
        }
      }
    }
    this.objective = sum / 2;
  }
}

/** For each row of some equations the columns it depends on, in rising order. */
function columnsOf(all: readonly PlacedEquations[]): readonly (readonly number[])[] {
  const ofRows: (readonly number[])[] = [];
  for (const { equations, elements } of all) {
    const found: number[] = [];
    for (const { columns } of elements)
      for (let k = 0; k < columns.length; k++)
        if ((columns[k] as number) >= 0) place(found, columns[k] as number);
    for (let r = 0; r < equations.rows; r++) ofRows.push(found);
  }
  return ofRows;
}

/** Puts a column where it belongs among others in rising order, unless it stands there. There are a few at most. */
function place(found: number[], column: number): void {
  let at = found.length;
  while (at > 0 && (found[at - 1] as number) > column) at--;
  if (at > 0 && found[at - 1] === column) return;
  found.push(column);
  for (let i = found.length - 1; i > at; i--) found[i] = found[i - 1] as number;
  found[at] = column;
}

const emptyRows = (columns: readonly (readonly number[])[], n: number): LinearRows => ({
  count: columns.length,
  rows: zeros(columns.length * n),
  columns,
  values: zeros(columns.length),
});

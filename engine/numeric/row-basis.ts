import { innerProduct } from './inner-product.ts';
import { zeroPlaces, zeros } from './zeros.ts';

/**
 * A row that keeps less than this share of its length outside the span of the others is counted as dependent.
 * Larger: nearly parallel relations would be dropped. Smaller: rounding would pass for a direction.
 */
const DEPENDENT = 1e-9;

/**
 * Rows of length n with an orthonormal basis of their span, grown and shrunk row by row: Gram-Schmidt, each row
 * projected twice where once is not enough, which keeps the basis orthogonal to rounding (Giraud, Langou & Rozloznik, 2005, "The loss of
 * orthogonality in the Gram-Schmidt orthogonalization process").
 */
export class RowBasis {
  readonly n: number;
  /** How many rows the basis holds. */
  count = 0;
  /** What is left of the row last projected. */
  readonly rest: Float64Array;
  /** The coefficients of the row last projected. */
  readonly along: Float64Array;
  readonly #rows: Float64Array;
  readonly #basis: Float64Array;
  /** Row i of the rows is the sum over j <= i of #triangle[i, j] times row j of the basis. */
  readonly #triangle: Float64Array;
  /** Where each row of the basis begins to be other than zero, and where the rest does: what is before costs nothing. */
  readonly #starts: Int32Array;
  #start = 0;

  readonly #dependent: number;

  constructor(n: number, dependent: number = DEPENDENT) {
    this.n = n;
    this.#dependent = dependent;
    this.rest = zeros(n);
    this.along = zeros(n);
    this.#rows = zeros(n * n);
    this.#basis = zeros(n * n);
    this.#triangle = zeros(n * n);
    this.#starts = zeroPlaces(n);
  }

  clear(): void {
    this.count = 0;
  }

  /**
   * Projects the row at `offset` of `row`: writes `along` and `rest`. Returns the length of the rest, or 0 where it
   * is too small a share of the row to mean anything.
   */
  project(row: Float64Array, offset = 0): number {
    const { n, rest, along, count } = this;
    let before = 0;
    for (let k = 0; k < n; k++) {
      const value = row[offset + k] as number;
      rest[k] = value;
      before += value * value;
    }
    along.fill(0, 0, count);
    this.#start = 0;
    while (this.#start < n && rest[this.#start] === 0) this.#start++;
    let after = this.#takeOut();
    // A row that has lost most of itself has lost digits too.
    if (after < 0.25 * before) after = this.#takeOut();
    return count < n && after > this.#dependent * this.#dependent * before ? Math.sqrt(after) : 0;
  }

  /** Takes the part along the basis out of `rest`, adds it to `along`, and returns the square length that remains. */
  #takeOut(): number {
    const { n, rest, along, count } = this;
    const basis = this.#basis;
    for (let i = 0; i < count; i++) {
      const row = i * n;
      const start = this.#starts[i] as number;
      const both = Math.max(start, this.#start);
      const dot = innerProduct(basis, row + both, rest, both, n - both);
      along[i] = (along[i] as number) + dot;
      if (dot === 0) continue;
      this.#start = Math.min(start, this.#start);
      for (let k = start; k < n; k++) rest[k] = (rest[k] as number) - dot * (basis[row + k] as number);
    }
    return innerProduct(rest, 0, rest, 0, n);
  }

  /** Adds a row; false, and nothing added, where it depends on those already here. */
  add(row: Float64Array, offset = 0): boolean {
    const length = this.project(row, offset);
    if (length === 0) return false;
    this.keep(row, length, offset);
    return true;
  }

  /** Adds the row that was projected last, given the length of its rest. */
  keep(row: Float64Array, length: number, offset = 0): void {
    const { n, count } = this;
    for (let k = 0; k < n; k++) {
      this.#rows[count * n + k] = row[offset + k] as number;
      this.#basis[count * n + k] = (this.rest[k] as number) / length;
    }
    this.#triangle.set(this.along.subarray(0, count), count * n);
    this.#triangle[count * n + count] = length;
    this.#starts[count] = this.#start;
    this.count++;
  }

  /** Takes a row out; those after it move up. */
  remove(index: number): void {
    const { n, count } = this;
    const later = this.#rows.slice((index + 1) * n, count * n);
    this.count = index;
    for (let offset = 0; offset < later.length; offset += n) this.add(later, offset);
  }

  /** Solves for the shares of the rows that add up to the basis rows times `along`, over `along`. */
  shares(along: Float64Array): void {
    const { n, count } = this;
    const triangle = this.#triangle;
    for (let i = count - 1; i >= 0; i--) {
      const share = (along[i] as number) / (triangle[i * n + i] as number);
      along[i] = share;
      for (let j = 0; j < i; j++) along[j] = (along[j] as number) - share * (triangle[i * n + j] as number);
    }
  }

  /** Moves w the shortest way to where row i times w is `values[i]`; writes what was added to each basis row. */
  reach(values: Float64Array, w: Float64Array, along: Float64Array): void {
    const { n, count } = this;
    const triangle = this.#triangle;
    const basis = this.#basis;
    // First the coordinates along the basis that w must have, then the move there.
    for (let i = 0; i < count; i++) {
      const sum = (values[i] as number) - innerProduct(triangle, i * n, along, 0, i);
      along[i] = sum / (triangle[i * n + i] as number);
    }
    for (let i = 0; i < count; i++) {
      const start = this.#starts[i] as number;
      const move = (along[i] as number) - innerProduct(basis, i * n + start, w, start, n - start);
      for (let k = start; k < n; k++) w[k] = (w[k] as number) + move * (basis[i * n + k] as number);
      along[i] = move;
    }
  }
}

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { RowBasis } from '../../../engine/numeric/row-basis.ts';
import { uniform } from '../../uniform.ts';

const N = 6;
const anyRow = fc.array(fc.oneof(fc.constant(0), uniform(-3, 3)), { minLength: N, maxLength: N });
const anyRows = fc.array(anyRow, { minLength: 1, maxLength: 5 });

const dot = (a: ArrayLike<number>, b: ArrayLike<number>): number =>
  Array.from(a).reduce((sum, value, k) => sum + value * (b[k] ?? 0), 0);

/** A basis of the rows that it takes, and those rows. */
function basisOf(rows: readonly (readonly number[])[]) {
  const basis = new RowBasis(N);
  return { basis, taken: rows.filter((row) => basis.add(Float64Array.from(row))) };
}

describe('a basis of rows', () => {
  it('leaves of any row what stands square to all of them', () => {
    fc.assert(
      fc.property(anyRows, anyRow, (rows, row) => {
        const { basis, taken } = basisOf(rows);
        const length = basis.project(Float64Array.from(row));
        expect(basis.count).toBe(taken.length);
        for (const each of taken) expect(dot(basis.rest, each)).toBeCloseTo(0, 6);
        if (length > 0) expect(length).toBeCloseTo(Math.sqrt(dot(basis.rest, basis.rest)), 9);
        expect(dot(row, row)).toBeCloseTo(
          dot(basis.rest, basis.rest) + dot(basis.along.subarray(0, basis.count), basis.along),
          6,
        );
      }),
    );
  });

  it('takes no row that depends on those it has, wherever it stands in a list', () => {
    const { basis } = basisOf([
      [1, 2, 0, 0, 0, 0],
      [0, 1, 1, 0, 0, 0],
    ]);
    const list = Float64Array.of(9, 9, 2, 5, 1, 0, 0, 0, 0, 0, 0, 1, 0, 0);
    expect(basis.add(list, 2)).toBe(false);
    expect(basis.add(list, 8)).toBe(true);
    expect(basis.count).toBe(3);
    expect(basis.add(new Float64Array(N))).toBe(false);
  });

  it('is full with as many rows as they are long', () => {
    const { basis, taken } = basisOf(
      Array.from({ length: N }, (_, i) => Array.from({ length: N }, (__, k) => (k <= i ? 1 : 0))),
    );
    expect(taken).toHaveLength(N);
    expect(basis.project(Float64Array.of(1, 2, 3, 4, 5, 6))).toBe(0);
  });

  it('without one of its rows is the basis of the others', () => {
    fc.assert(
      fc.property(anyRows, fc.nat(4), anyRow, (rows, at, row) => {
        const { basis, taken } = basisOf(rows);
        fc.pre(at < taken.length);
        basis.remove(at);
        const others = basisOf(taken.filter((_, i) => i !== at)).basis;
        expect(basis.count).toBe(others.count);
        basis.project(Float64Array.from(row));
        others.project(Float64Array.from(row));
        for (const [k, value] of basis.rest.entries())
          expect(value).toBeCloseTo(others.rest[k] ?? Number.NaN, 6);
      }),
    );
  });

  it('shares a row of their span out among them', () => {
    fc.assert(
      fc.property(anyRows, anyRow, (rows, factors) => {
        const { basis, taken } = basisOf(rows);
        fc.pre(taken.length > 0 && wellApart(taken));
        const sum = Array.from({ length: N }, (_, k) =>
          taken.reduce((all, row, i) => all + (factors[i] ?? 0) * (row[k] ?? 0), 0),
        );
        basis.project(Float64Array.from(sum));
        const along = Float64Array.from(basis.along);
        basis.shares(along);
        for (const i of taken.keys()) expect(along[i]).toBeCloseTo(factors[i] ?? 0, 4);
      }),
    );
  });

  it('reaches the values asked of its rows by the shortest way', () => {
    fc.assert(
      fc.property(anyRows, anyRow, anyRow, (rows, values, start) => {
        const { basis, taken } = basisOf(rows);
        fc.pre(taken.length > 0 && wellApart(taken));
        const w = Float64Array.from(start);
        basis.reach(Float64Array.from(values), w, new Float64Array(N));
        for (const [i, row] of taken.entries()) expect(dot(row, w)).toBeCloseTo(values[i] ?? 0, 4);
        const move = Float64Array.from(w, (value, k) => value - (start[k] ?? 0));
        basis.project(move);
        // The shortest way lies in the span of the rows.
        expect(dot(basis.rest, basis.rest)).toBeLessThan(1e-8 * (1 + dot(move, move)));
      }),
    );
  });
});

/** Whether each row keeps a tenth of its length outside the span of those before it: the others make large numbers. */
function wellApart(rows: readonly (readonly number[])[]): boolean {
  const basis = new RowBasis(N, 0.1);
  return rows.every((row) => basis.add(Float64Array.from(row)));
}

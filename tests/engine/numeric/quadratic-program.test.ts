import { createRequire } from 'node:module';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { factor, triangle } from '../../../engine/numeric/cholesky.ts';
import { type LinearRows, QuadraticProgram } from '../../../engine/numeric/quadratic-program.ts';
import { uniform } from '../../uniform.ts';

/** The npm package quadprog: a translation of Turlach's Fortran code. Its arrays count from one. */
interface Other {
  readonly solveQP: (
    d: number[][],
    linear: number[],
    a: number[][],
    b: number[],
    equalities: number,
  ) => { readonly solution: readonly number[]; readonly message: string };
}

const { solveQP } = createRequire(import.meta.url)('quadprog') as Other;

const number = fc.integer({ min: -50, max: 50 }).map((tenths) => tenths / 10);
const vector = (n: number) => fc.array(number, { minLength: n, maxLength: n });
const matrix = (rows: number, n: number) => fc.array(vector(n), { minLength: rows, maxLength: rows });

/** Programs that have a point in common with all their constraints, since these are written around one. */
const program = fc
  .record({ n: fc.integer({ min: 2, max: 8 }), inequalities: fc.integer({ min: 0, max: 10 }) })
  .chain(({ n, inequalities }) =>
    fc.record({
      n: fc.constant(n),
      root: matrix(n, n),
      linear: vector(n),
      inside: vector(n),
      equal: matrix(Math.floor(n / 3), n),
      atLeast: matrix(inequalities, n),
      slack: fc.array(uniform(0, 4), {
        minLength: inequalities,
        maxLength: inequalities,
      }),
    }),
  );

const dot = (a: readonly number[], b: readonly number[]): number =>
  a.reduce((sum, value, i) => sum + value * (b[i] ?? 0), 0);

describe('the quadratic program', () => {
  it('has the answer that the package quadprog gives', () => {
    fc.assert(
      fc.property(program, ({ n, root, linear, inside, equal, atLeast, slack }) => {
        const h = root.map((a, i) => root.map((b, j) => dot(a, b) + (i === j ? 1 : 0)));
        const equalValues = equal.map((row) => dot(row, inside));
        const atLeastValues = atLeast.map((row, i) => dot(row, inside) - (slack[i] ?? 0));
        const theirs = solveQP(
          fromOne(h.map(fromOne)),
          fromOne(linear.map((value) => -value)),
          fromOne(
            Array.from({ length: n }, (_, k) => fromOne([...equal, ...atLeast].map((row) => row[k] ?? 0))),
          ),
          fromOne([...equalValues, ...atLeastValues]),
          equal.length,
        );
        fc.pre(theirs.message === '' && atLeast.length + equal.length > 0);
        const lower = triangle(n, Float64Array.from(h.flat()));
        expect(factor(lower)).toBe(true);
        const own = new QuadraticProgram(n);
        const equalities = rowsOf(equal, equalValues);
        const inequalities = rowsOf(atLeast, atLeastValues);
        expect(own.solve(lower, Float64Array.from(linear), equalities, inequalities)).toBe(true);
        for (let k = 0; k < n; k++) expect(own.step[k]).toBeCloseTo(theirs.solution[k + 1] ?? NaN, 5);
        for (const force of own.inequalityForces) expect(force).toBeGreaterThanOrEqual(-1e-9);
        // The conditions of Karush, Kuhn and Tucker: the forces balance the slope, and what is slack exerts none.
        for (const [k, row] of h.entries()) {
          const pushed = [
            ...equal.map((a, i) => (own.equalityForces[i] ?? 0) * (a[k] ?? 0)),
            ...atLeast.map((a, i) => (own.inequalityForces[i] ?? 0) * (a[k] ?? 0)),
          ];
          const slope = dot(row, [...own.step]) + (linear[k] ?? 0);
          expect(slope - pushed.reduce((a, b) => a + b, 0)).toBeCloseTo(0, 4);
        }
        for (const [i, a] of atLeast.entries())
          expect(
            (own.inequalityForces[i] ?? 0) * (dot(a, [...own.step]) - (atLeastValues[i] ?? 0)),
          ).toBeCloseTo(0, 4);
        expect(own.greatestForce).toBe(
          Math.max(0, ...own.equalityForces.map(Math.abs), ...own.inequalityForces),
        );
      }),
      { numRuns: 300 },
    );
  });

  it('passes over an equality that repeats another', () => {
    const own = new QuadraticProgram(2);
    const equal = rowsOf(
      [
        [1, 1],
        [2, 2],
        [1, -1],
      ],
      [2, 4, 0],
    );
    expect(
      own.solve(triangle(2, Float64Array.of(1, 0, 0, 1)), Float64Array.of(0, 0), equal, rowsOf([], [])),
    ).toBe(true);
    expect([...own.step]).toEqual([expect.closeTo(1, 12), expect.closeTo(1, 12)]);
    expect(own.equalityForces[1]).toBe(0);
  });

  it('says so when the inequalities exclude each other', () => {
    const own = new QuadraticProgram(1);
    const apart = rowsOf([[1], [-1]], [3, -2]);
    expect(own.solve(triangle(1, Float64Array.of(1)), Float64Array.of(0), rowsOf([], []), apart)).toBe(false);
  });
});

const rowsOf = (all: readonly (readonly number[])[], values: readonly number[]): LinearRows => ({
  count: all.length,
  rows: Float64Array.from(all.flat()),
  columns: all.map((row) => [...row.keys()]),
  values: Float64Array.from(values),
});

function fromOne<T>(values: readonly T[]): T[] {
  const shifted = new Array<T>(1);
  shifted.push(...values);
  return shifted;
}

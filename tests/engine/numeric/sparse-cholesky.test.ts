import { readFileSync } from 'node:fs';
import { CholeskyDecomposition, Matrix } from 'ml-matrix';
import { describe, expect, it } from 'vitest';
import wabt from 'wabt';
import { blockMatrix, blockPlaces } from '../../../engine/numeric/sparse/block-matrix.ts';
import { graphOf } from '../../../engine/numeric/sparse/graph.ts';
import { SparseCholesky } from '../../../engine/numeric/sparse/sparse-cholesky.ts';
import { assembled } from '../../../engine/numeric/sparse/subtract-products.ts';

/** A grid of nodes with diagonals, as a mesh has, and an even spread of numbers between -1 and 1. */
function grid(columns: number, rows: number) {
  const pairs: number[] = [];
  const places = new Float64Array(2 * columns * rows);
  for (let y = 0; y < rows; y++)
    for (let x = 0; x < columns; x++) {
      const node = y * columns + x;
      places.set([x, y], 2 * node);
      if (x + 1 < columns) pairs.push(node, node + 1);
      if (y + 1 < rows) pairs.push(node, node + columns);
      if (x + 1 < columns && y + 1 < rows) pairs.push(node, node + columns + 1);
    }
  return { graph: graphOf(columns * rows, pairs), places };
}

const numbers = (): (() => number) => {
  let state = 7;
  return () => {
    state = (state * 16_807) % 2_147_483_647;
    return (2 * state) / 2_147_483_647 - 1;
  };
};

/** A positive definite matrix over a graph: diagonally dominant. */
function dominant(graph: ReturnType<typeof graphOf>) {
  const next = numbers();
  const matrix = blockMatrix(graph);
  for (let i = 9 * graph.count; i < matrix.values.length; i++) matrix.values[i] = next();
  for (let node = 0; node < graph.count; node++)
    for (let i = 0; i < 3; i++)
      for (let j = 0; j <= i; j++) {
        const value = i === j ? 24 + next() : next();
        matrix.values[9 * node + 3 * i + j] = value;
        matrix.values[9 * node + 3 * j + i] = value;
      }
  return matrix;
}

describe('the sparse Cholesky factor', () => {
  it.each([
    [1, 1],
    [3, 2],
    [9, 7],
    [40, 3],
  ])('solves as the dense one of ml-matrix does, %d by %d nodes', (columns, rows) => {
    const { graph, places } = grid(columns, rows);
    const matrix = dominant(graph);
    const place = blockPlaces(graph);
    const dense = Matrix.zeros(3 * graph.count, 3 * graph.count);
    for (let a = 0; a < graph.count; a++)
      for (const b of [a, ...graph.neighbours.slice(graph.starts[a], graph.starts[a + 1])])
        if (b <= a)
          for (let i = 0; i < 3; i++)
            for (let j = 0; j < 3; j++) {
              const value = matrix.values[place(a, b) + 3 * i + j] as number;
              dense.set(3 * a + i, 3 * b + j, value);
              dense.set(3 * b + j, 3 * a + i, value);
            }
    const next = numbers();
    const right = Float64Array.from({ length: 3 * graph.count }, next);
    const expected = new CholeskyDecomposition(dense).solve(Matrix.columnVector([...right])).getColumn(0);
    const cholesky = new SparseCholesky(graph, places, 2);
    expect(cholesky.factor(matrix)).toBe(true);
    cholesky.solve(right);
    for (const [i, value] of expected.entries()) expect(right[i]).toBeCloseTo(value, 12);
  });

  it('refuses a matrix that is not positive definite', () => {
    const { graph, places } = grid(4, 4);
    const matrix = dominant(graph);
    matrix.values[9 * 5] = -1;
    expect(new SparseCholesky(graph, places, 2).factor(matrix)).toBe(false);
  });

  it('fills in far less than the whole triangle', () => {
    const { graph, places } = grid(40, 40);
    expect(new SparseCholesky(graph, places, 2).size).toBeLessThan((9 * 1600 * 1600) / 2 / 10);
  });

  it('runs what its text assembles to', async () => {
    const text = readFileSync(
      new URL('../../../engine/numeric/sparse/subtract-products.wat', import.meta.url),
      'utf8',
    );
    const { buffer } = (await wabt()).parseWat('subtract-products.wat', text, { simd: true }).toBinary({});
    expect(Buffer.from(buffer).toString('base64')).toBe(assembled);
  });
});

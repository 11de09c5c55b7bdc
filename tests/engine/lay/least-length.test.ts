import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { leastLength } from '../../../engine/lay/least-length.ts';
import { areaOf, type LayProblem } from '../../../engine/lay/problem.ts';
import { uniform } from '../../uniform.ts';
import { eitherWayUp, laid, rectangle, shape } from './shapes.ts';

describe('the least length', () => {
  test('is the area over the width, the longest shape, or what lies on the fold', () => {
    const square = rectangle('square', 4, 5, 5);
    expect(leastLength({ width: 10, shapes: [square] })).toBe(10);
    expect(leastLength({ width: 10, shapes: [rectangle('band', 1, 30, 1)] })).toBe(30);
    expect(leastLength({ width: 10, shapes: [{ ...rectangle('half', 3, 7, 1), onFold: true }] })).toBe(21);
  });

  test('knows that what is broader than half the strip lies one behind the other', () => {
    const square = rectangle('square', 3, 6, 6);
    expect(leastLength({ width: 10, shapes: [square] })).toBeCloseTo(18, 6);
    expect(areaOf({ width: 10, shapes: [square] }) / 10).toBeCloseTo(10.8, 9);
  });

  test('counts what lies on the fold with what must lie beside it', () => {
    const half = { ...rectangle('half', 2, 4, 4), onFold: true };
    const broad = rectangle('broad', 1, 5, 7);
    // Neither can the broad one stand beside a half, nor the halves beside each other.
    expect(leastLength({ width: 10, shapes: [half, broad] })).toBeCloseTo(13, 6);
  });

  test('of triangles that nest is no more than they take', () => {
    const problem = { width: 6, shapes: [shape('triangle', 2, [0, 0, 12, 0, 0, 6], eitherWayUp)] };
    expect(leastLength(problem)).toBeGreaterThan(11.99);
    expect(leastLength(problem)).toBeLessThanOrEqual(laid(problem, 400).length);
  });

  test('is never above a lay that there is', () => {
    const triangle = fc.array(uniform(0, 10), { minLength: 6, maxLength: 6 });
    fc.assert(
      fc.property(fc.array(triangle, { minLength: 1, maxLength: 4 }), uniform(10, 18), (corners, width) => {
        const problem: LayProblem = {
          width,
          shapes: corners.map((each, i) => shape(String(i), 1 + (i % 2), each, eitherWayUp)),
        };
        fc.pre(problem.shapes.every((own) => areaOf({ width, shapes: [own] }) > 1));
        const { length } = laid(problem, 30);
        expect(leastLength(problem)).toBeLessThanOrEqual(length);
        expect(leastLength(problem)).toBeGreaterThanOrEqual(areaOf(problem) / width);
      }),
      { numRuns: 25 },
    );
  });
});

import { describe, expect, test } from 'vitest';
import { densityOf } from '../../../engine/lay/problem.ts';
import { faultsOf } from '../../../engine/lay/proof.ts';
import { refusedShapes } from '../../../engine/lay/refused-shapes.ts';
import { shapesOf } from './instances.ts';
import { eitherWayUp, laid, rectangle, shape } from './shapes.ts';

describe('a lay that is known', () => {
  test('two squares side by side fill a strip twice as wide', () => {
    const problem = { width: 10, shapes: [rectangle('square', 2, 5, 5)] };
    const lay = laid(problem, 200);
    expect(lay.length).toBeCloseTo(5, 5);
    expect(faultsOf(problem, lay)).toEqual([]);
  });

  test('four squares take two rows of two', () => {
    const problem = { width: 10, shapes: [rectangle('square', 4, 5, 5)] };
    expect(laid(problem, 800).length).toBeCloseTo(10, 3);
  });

  test('two triangles make a rectangle, one turned round', () => {
    const problem = { width: 6, shapes: [shape('triangle', 2, [0, 0, 12, 0, 0, 6], eitherWayUp)] };
    const lay = laid(problem, 800);
    expect(lay.length).toBeLessThan(12.01);
    expect(lay.placements.map(({ way }) => way.turn).sort()).toEqual([0, 180]);
  });

  test('three thirds of an uneven rectangle with a little room fill it', () => {
    const shapes = [rectangle('a', 1, 6, 4), rectangle('b', 1, 4, 4), rectangle('c', 1, 10, 3)];
    expect(laid({ width: 7.01, shapes }, 800).length).toBeCloseTo(10, 2);
  });

  test('bands lie across where that is shorter, and never in a way that is too long or too broad', () => {
    const quarter = [0, 90].map((turn) => ({ turn, mirrored: false }));
    const band = { ...rectangle('band', 4, 5, 1), ways: quarter };
    expect(laid({ width: 5.001, shapes: [band] }, 400).length).toBeLessThan(4.3);
    const plank = { ...rectangle('plank', 1, 1, 9), ways: quarter };
    expect(laid({ width: 5, shapes: [plank] }, 20).length).toBeCloseTo(9, 6);
  });

  test('what lies on the fold stays there, and the rest beside it', () => {
    const half = { ...rectangle('half', 2, 4, 2), onFold: true };
    const problem = { width: 5, shapes: [half, rectangle('other', 2, 4, 3)] };
    const lay = laid(problem, 400);
    expect(lay.length).toBeCloseTo(8, 2);
    expect(lay.placements.filter(({ shape: i }) => i === 0).map(({ y }) => y)).toEqual([0, 0]);
    expect(faultsOf(problem, lay)).toEqual([]);
  });
});

describe('a published instance', () => {
  test.each([
    ['shirts', 0.74, 120],
    ['trousers', 0.74, 120],
  ] as const)('%s comes above %d of the strip in %i rounds, proven', (name, density, rounds) => {
    const problem = shapesOf(name);
    const lay = laid(problem, rounds);
    expect(faultsOf(problem, lay)).toEqual([]);
    expect(densityOf(problem, lay.length)).toBeGreaterThan(density);
  });

  test('comes out the same for the same seed and rounds, and otherwise for another seed', () => {
    const problem = shapesOf('trousers');
    const [first, again, other] = [laid(problem, 25), laid(problem, 25), laid(problem, 25, 2)];
    expect(again).toEqual(first);
    expect(other).not.toEqual(first);
  });
});

describe('the least length', () => {
  test('ends the search once it is reached', () => {
    const lay = laid({ width: 10, shapes: [rectangle('band', 3, 30, 1)] }, 1e9);
    expect(lay.length).toBeCloseTo(30, 3);
  });
});

describe('shapes that cannot be laid', () => {
  test.each([
    ['shape-too-broad', rectangle('wide', 1, 1, 11)],
    ['shape-empty', shape('line', 1, [0, 0, 1, 1, 2, 2])],
    ['shape-crossed', shape('bow', 1, [0, 0, 2, 2, 3, 0, 0, 1])],
    ['nothing-to-lay', rectangle('none', 0, 1, 1)],
  ] as const)('%s', (code, one) => {
    expect(refusedShapes({ width: 10, shapes: [one] }).map((issue) => issue.code)).toEqual([code]);
  });
});

import { describe, expect, test } from 'vitest';
import { offRepeat } from '../../../engine/lay/problem.ts';
import { faultsOf } from '../../../engine/lay/proof.ts';
import { laid, rectangle } from './shapes.ts';

const shapes = [
  { ...rectangle('a', 3, 5, 4), phase: 0 },
  { ...rectangle('b', 2, 6, 3), phase: 1.5 },
];
const problem = { width: 7, repeat: 4, shapes };

describe('a strip with a repeat', () => {
  const lay = laid(problem, 120);

  test('has every copy at its place of the repeat', () => {
    for (const { shape: i, x } of lay.placements) {
      const shape = shapes[i];
      expect(shape && offRepeat(problem, shape, x)).toBeLessThan(1e-9);
    }
    expect(faultsOf(problem, lay)).toEqual([]);
  });

  test('takes as long as the places on the repeat allow', () => {
    // Three of the first begin at 0, 8 and 16 at the earliest, and the others have room beside them.
    expect(lay.length).toBeCloseTo(21, 6);
  });

  test('is a fault where a copy is off it', () => {
    const placements = lay.placements.map((each, i) => (i === 0 ? { ...each, x: each.x + 0.5 } : each));
    expect(faultsOf(problem, { length: lay.length + 1, placements }).map(({ kind }) => kind)).toContain(
      'off the repeat',
    );
  });
});

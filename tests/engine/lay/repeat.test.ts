import { describe, expect, test } from 'vitest';
import { offRepeat } from '../../../engine/lay/problem.ts';
import { faultsOf } from '../../../engine/lay/proof.ts';
import { refusedShapes } from '../../../engine/lay/refused-shapes.ts';
import { laid, rectangle, shape } from './shapes.ts';

const shapes = [
  { ...rectangle('a', 3, 5, 4), phase: 0 },
  { ...rectangle('b', 2, 6, 3), phase: 1.5 },
];
const problem = { width: 7, repeat: 4, shapes };

describe('a strip with a repeat', () => {
  const lay = laid(problem, 120);

  test('has every copy at its place of the repeat', () => {
    for (const placement of lay.placements) {
      const shape = shapes[placement.shape];
      expect(shape && offRepeat(problem, shape, placement)).toBeLessThan(1e-9);
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

describe('a strip with a repeat across it', () => {
  const mirrored = [{ turn: 0, mirrored: true }] as const;
  const asymmetric = { ...shape('c', 2, [0, 0, 3, 0, 1, 2, 0, 2]), phaseAcross: 0.5 };
  const across = {
    width: 7,
    repeatAcross: 3,
    shapes: [asymmetric, { ...asymmetric, name: 'd', ways: mirrored }],
  };

  test('has what is mirrored as far before a repeat as what is not lies behind it', () => {
    const lay = laid(across, 60);
    expect(faultsOf(across, lay)).toEqual([]);
    for (const { shape: i, y } of lay.placements) {
      const off = i === 0 ? y - 0.5 : y + 0.5;
      expect(off / 3).toBeCloseTo(Math.round(off / 3), 9);
    }
  });

  test('is a fault where a copy is off it', () => {
    const lay = laid(across, 60);
    const placements = lay.placements.map((each, i) => (i === 0 ? { ...each, y: each.y + 0.1 } : each));
    expect(faultsOf(across, { ...lay, placements }).map(({ kind }) => kind)).toContain('off the repeat');
  });

  test('is refused where a shape has room on it at no repeat', () => {
    const broad = { width: 7, repeatAcross: 6, shapes: [{ ...rectangle('e', 1, 2, 5), phaseAcross: 4 }] };
    expect(refusedShapes(broad).map(({ code }) => code)).toEqual(['shape-off-stripe']);
  });
});

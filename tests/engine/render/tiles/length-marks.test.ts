import { describe, expect, it } from 'vitest';
import type { Ink } from '../../../../engine/render/ink.ts';
import { inkBounds } from '../../../../engine/render/ink-bounds.ts';
import { lengthMarks } from '../../../../engine/render/tiles/length-marks.ts';

const levels = (ink: readonly Ink[]): readonly number[] =>
  ink.flatMap((one) => (one.kind === 'chain' ? [one.curves[0]?.from.y ?? 0] : []));

const words = (ink: readonly Ink[]): readonly string[] =>
  ink.flatMap((one) => (one.kind === 'words' ? [one.text] : []));

describe('marks of length along a roll', () => {
  it('stand every 500 mm at both edges, with how far they are from the first', () => {
    const marks = lengthMarks({ width: 914, height: 1681 }, 'mm');
    expect(levels(marks)).toEqual([10, 10, 510, 510, 1010, 1010, 1510, 1510]);
    expect(words(marks)).toEqual(['0 mm', '500 mm', '1000 mm', '1500 mm']);
  });

  it('stand every 20 in for who measures in inches', () => {
    const marks = lengthMarks({ width: 914, height: 1681 }, 'in');
    expect(words(marks)).toEqual(['0 in', '20 in', '40 in', '60 in']);
    expect(levels(marks).at(-1)).toBeCloseTo(10 + 60 * 25.4, 9);
  });

  it.each([24, 100, 523, 524, 5080])('lie in the margins of a page of %d mm, words too', (height) => {
    const marks = lengthMarks({ width: 914, height }, 'cm');
    expect(marks.length).toBeGreaterThan(0);
    for (const { left, right, top, bottom } of marks.map(inkBounds)) {
      expect(right <= 10 || left >= 904).toBe(true);
      expect(top).toBeGreaterThanOrEqual(0);
      expect(bottom).toBeLessThanOrEqual(height);
    }
  });
});

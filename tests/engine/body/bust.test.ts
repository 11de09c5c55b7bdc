import { describe, expect, it } from 'vitest';
import {
  expectedBustPointWidth,
  expectedDartAngle,
  expectedFrontExcess,
  frontHang,
} from '../../../engine/body/bust.ts';
import { cupDifference } from '../../../engine/body/cup.ts';
import { cupLetters } from '../../../engine/body/cup-letters.ts';

describe('practice about a bust', () => {
  it('opens the dart wider with every cup, as a pattern cutter does', () => {
    // Bands of a pattern cutter, from memory, degrees.
    const bands: Readonly<Record<string, readonly [number, number]>> = {
      A: [10, 18],
      B: [14, 24],
      C: [14, 24],
      D: [20, 34],
      E: [20, 34],
    };
    for (const [letter, [least, most]] of Object.entries(bands)) {
      const degrees = (expectedDartAngle(cupDifference(letter) ?? 0) * 180) / Math.PI;
      expect(degrees, letter).toBeGreaterThanOrEqual(least);
      expect(degrees, letter).toBeLessThanOrEqual(most);
    }
    const angles = cupLetters.map((letter) => expectedDartAngle(cupDifference(letter) ?? 0));
    expect(angles).toEqual(angles.toSorted((a, b) => a - b));
    expect(new Set(angles).size).toBe(cupLetters.length);
  });

  it('keeps the dart between 6 and 45 degrees', () => {
    expect((expectedDartAngle(-50) * 180) / Math.PI).toBeCloseTo(6, 9);
    expect((expectedDartAngle(500) * 180) / Math.PI).toBeCloseTo(45, 9);
  });

  it('sets the bust points 19 cm apart at a bust of 92, and grows more slowly than the bust', () => {
    expect(expectedBustPointWidth(920)).toBeCloseTo(190, 9);
    expect(expectedBustPointWidth(1380) / 1380).toBeLessThan(190 / 920);
  });

  it('makes a front longer than the back by the dart at the side seam, less what the armhole hangs', () => {
    // The leg is 920 / 4 - 190 / 2 + 25 = 160 mm; the chord of a dart is 2 x leg x sin(angle / 2).
    const dart = 2 * 160 * Math.sin(expectedDartAngle(170) / 2);
    expect(expectedFrontExcess(920, 170, 190)).toBeCloseTo(dart - frontHang, 9);
  });

  it('counts the leg of a dart half beyond 180 mm, where the frame is large', () => {
    // The leg is 1300 / 4 - 240 / 2 + 25 = 230 mm, counted as 180 + 50 / 2.
    const dart = 2 * 205 * Math.sin(expectedDartAngle(170) / 2);
    expect(expectedFrontExcess(1300, 170, 240)).toBeCloseTo(dart - frontHang, 9);
  });
});

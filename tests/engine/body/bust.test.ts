import { describe, expect, it } from 'vitest';
import { expectedBustPointWidth, expectedDartAngle, expectedFrontExcess } from '../../../engine/body/bust.ts';
import { cupDifference, cupLetters } from '../../../engine/body/cup.ts';

describe('practice about a bust', () => {
  it('opens the dart wider with every cup', () => {
    // Bands of a pattern cutter, from memory: 10 to 18 degrees for A, 14 to 24 for B and C, 20 to 34 for D and E.
    const degrees = Object.fromEntries(
      cupLetters.map((letter) => [letter, (expectedDartAngle(cupDifference(letter) ?? 0) * 180) / Math.PI]),
    );
    expect(degrees.A).toBeCloseTo(13.5, 9);
    expect(degrees.B).toBeCloseTo(17, 9);
    expect(degrees.C).toBeCloseTo(20.5, 9);
    expect(degrees.D).toBeCloseTo(24, 9);
    expect(degrees.E).toBeCloseTo(27.5, 9);
  });

  it('keeps the dart between 6 and 45 degrees', () => {
    expect((expectedDartAngle(-50) * 180) / Math.PI).toBeCloseTo(6, 9);
    expect((expectedDartAngle(500) * 180) / Math.PI).toBeCloseTo(45, 9);
  });

  it('sets the bust points 19 cm apart at a bust of 92, and grows more slowly than the bust', () => {
    expect(expectedBustPointWidth(920)).toBeCloseTo(190, 9);
    expect(expectedBustPointWidth(1380) / 1380).toBeLessThan(190 / 920);
  });

  it('makes a front longer than the back by the dart, less what the armhole hangs', () => {
    // 2 x 160 x sin(10 degrees) - 15; the angle of 20 degrees belongs to a cup difference of 167.14 mm.
    const excess = expectedFrontExcess(920, 29.25 / 0.175, 190);
    expect(excess).toBeCloseTo(2 * 160 * Math.sin(Math.PI / 18) - 15, 6);
  });
});

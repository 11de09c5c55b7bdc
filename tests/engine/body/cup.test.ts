import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { band, cupDifference, cupLetter, cupOf } from '../../../engine/body/cup.ts';
import { cupLetters } from '../../../engine/body/cup-letters.ts';
import misses from '../../../measurements/astm-d5585-misses.json' with { type: 'json' };
import { uniform } from '../../uniform.ts';

/** Bust and under-bust girth in mm to the size a bra is named by, such as 85D. */
const sizeLabel = (bustGirth: number, underBustGirth: number): string =>
  `${band(underBustGirth)}${cupLetter(bustGirth - underBustGirth)}`;

describe('the cup of EN 13402', () => {
  it.each([
    [1070, 870, '85D'],
    [1080, 890, '90D'],
    [1000, 820, '80C'],
  ])('of bust %d and under-bust %d is %s', (bust, under, label) => {
    // Worked examples repeated from EN 13402 on secondary pages.
    expect(sizeLabel(bust, under)).toBe(label);
  });

  it.each([
    [969, 821.5, '80B'],
    [861, 718, '70B'],
    [979, 848, '85A'],
    [1021, 856, '85C'],
    [808, 683, '70A'],
  ])('of the woman with bust %d and under-bust %d is %s', (bust, under, label) => {
    // Royal Australian Navy survey, 2015 (Commonwealth of Australia, CC BY 3.0 AU).
    expect(sizeLabel(bust, under)).toBe(label);
  });

  it('runs from A to C along the ASTM D5585-11e1 sizes', () => {
    const { bustGirth, underBustGirth } = misses.rows;
    const letters = bustGirth.map((bust, i) => cupLetter((bust - (underBustGirth[i] ?? 0)) * 25.4));
    expect(letters.join('')).toBe('AABBBBBBCCCC');
  });

  it('excludes its lower edge and includes its upper', () => {
    expect([140, 140.1, 160, 160.1].map(cupLetter)).toEqual(['A', 'B', 'B', 'C']);
  });

  it('does not move because decimals of an inch or a centimetre do not come out even in binary', () => {
    expect([160 + 1e-10, 160 - 1e-10].map(cupLetter)).toEqual(['B', 'B']);
  });

  it('says so when a difference lies below the smallest or above the largest cup', () => {
    expect([-20, 100, 100.1, 320, 320.1].map(cupLetter)).toEqual([
      'less than AA',
      'less than AA',
      'AA',
      'J',
      'more than J',
    ]);
  });

  it('is its own middle back and forth, two centimetres a letter', () => {
    expect(cupLetters.map((letter) => cupLetter(cupDifference(letter) ?? 0))).toEqual(cupLetters);
    expect(cupDifference('C')).toBe(170);
    expect(cupDifference('Z')).toBeUndefined();
    expect(cupDifference('constructor')).toBeUndefined();
  });

  it('never becomes smaller when the bust grows', () => {
    const rank = (difference: number): number => {
      const letter = cupLetter(difference);
      return letter.startsWith('less') ? -1 : letter.startsWith('more') ? 99 : cupLetters.indexOf(letter);
    };
    const difference = uniform(-100, 500);
    fc.assert(
      fc.property(difference, uniform(0, 60), (d, more) => {
        expect(rank(d + more)).toBeGreaterThanOrEqual(rank(d));
      }),
    );
  });

  it('reports the upper chest beside it, negative where the chest is larger', () => {
    // ASTM D5585-11e1 size 0: bust 31 3/4, upper chest 32 1/4, under-bust 26 1/2 in.
    const size = { bustGirth: 31.75 * 25.4, upperChestGirth: 32.25 * 25.4, underBustGirth: 26.5 * 25.4 };
    const cup = cupOf({ size } as Parameters<typeof cupOf>[0]);
    expect(cup.letter).toBe('A');
    expect(cup.band).toBe(65);
    expect(cup.difference).toBeCloseTo(133.35, 6);
    expect(cup.upperChestDifference).toBeCloseTo(-12.7, 6);
  });
});

describe('the band', () => {
  it.each([
    [580, 60],
    [620, 60],
    [630, 65],
    [670, 65],
    [680, 70],
    [720, 70],
    [730, 75],
    [780, 80],
    [820, 80],
  ])('of under-bust %d mm is %d', (underBust, expected) => {
    // Band table of an encyclopedia on EN 13402: 58-62 is 60, 63-67 is 65, and so on.
    expect(band(underBust)).toBe(expected);
  });

  it('goes to the smaller of two that lie equally near', () => {
    expect([725, 725.1, 775].map(band)).toEqual([70, 75, 75]);
  });
});

import { describe, expect, it } from 'vitest';
import { underBustSpread } from '../../../engine/body/estimate-girths.ts';
import {
  underBustForBust,
  upperChestForBust,
  upperChestForUnderBust,
} from '../../../engine/body/size-table.ts';
import { people } from './people.ts';

// ASTM D5585-11e1, sizes 0, 8 and 20, inches: bust, under-bust, upper chest.
const misses = [
  [31.75, 26.5, 32.25],
  [36.25, 30, 35.875],
  [46, 39.625, 43.875],
].map((row) => row.map((inches) => inches * 25.4)) as [number, number, number][];

describe('girths from published size tables', () => {
  it('come within 15 mm of the table they are drawn through', () => {
    for (const [bust, underBust, upperChest] of misses) {
      expect(Math.abs(underBustForBust.at(bust) - underBust)).toBeLessThan(15);
      expect(Math.abs(upperChestForBust.at(bust) - upperChest)).toBeLessThan(15);
      expect(Math.abs(upperChestForUnderBust.at(underBust) - upperChest)).toBeLessThan(15);
    }
  });

  it('come within 15 mm of the mean girth below the breast of 2,208 women', () => {
    // NATICK/TR-89/044 (1988): bust 90.71, below the breast 76.97 cm.
    expect(Math.abs(underBustForBust.at(907.1) - 769.7)).toBeLessThan(15);
  });

  it('know that the upper chest of a small size is larger than its bust', () => {
    expect(upperChestForBust.at(806)).toBeGreaterThan(806);
    expect(upperChestForBust.at(1168)).toBeLessThan(1168);
  });

  it('miss the under-bust girths of twelve women by the spread they state', () => {
    const misses = people.map(
      ({ bustGirth, underBustGirth }) => underBustGirth - underBustForBust.at(bustGirth),
    );
    const rms = Math.sqrt(misses.reduce((total, miss) => total + miss ** 2, 0) / misses.length);
    expect(rms).toBeCloseTo(underBustSpread, 0);
  });
});

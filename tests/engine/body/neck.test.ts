import { describe, expect, it } from 'vitest';
import { backNeckRise, backNeckWidth } from '../../../engine/body/neck.ts';

describe('the back neck', () => {
  it('is a sixth of the neck girth wide, and half a centimetre', () => {
    // L. I. Baldt, Clothing for Women, 1916: N/6; the half centimetre is common practice, no source.
    expect(backNeckWidth(360)).toBeCloseTo(65, 9);
    expect(backNeckWidth(420)).toBeCloseTo(75, 9);
  });

  it('rises a third of its width', () => {
    expect(backNeckRise(360)).toBeCloseTo(65 / 3, 9);
  });

  it('is as wide as the Bunka draft has it for the neck base girth of that bust', () => {
    // Bunka draft, 8th generation, from memory: bust 83 gives a back neck of 70.6 mm, rising 23.5.
    // ASTM D5585-11e1 has a neck base girth of 13.75 in at bust 33 in (83.8 cm).
    expect(Math.abs(backNeckWidth(13.75 * 25.4) - 70.6)).toBeLessThan(10);
    expect(Math.abs(backNeckRise(13.75 * 25.4) - 23.5)).toBeLessThan(4);
  });
});

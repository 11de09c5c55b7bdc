import { describe, expect, it } from 'vitest';
import { writtenLength } from '../../../engine/text/written-length.ts';

describe('a length as it is written', () => {
  // The inch is exactly 25.4 mm, the yard 0.9144 m (international yard and pound agreement, 1959).
  it.each([
    ['12.7', 12.7, false],
    ['12,7', 12.7, false],
    ['-20', -20, false],
    ['1/2 in', 12.7, true],
    ['1 1/4"', 31.75, true],
    ['-2 cm', -20, true],
    ['36in', 914.4, true],
    ['15mm', 15, true],
    ['2.5m', 2500, true],
    ['2,5 m', 2500, true],
    ['2 1/2 m', 2500, true],
    ['8 ft', 2438.4, true],
    ['1/2ft', 152.4, true],
    ['3yd', 2743.2, true],
    ['1 3/8 yd', 1257.3, true],
  ])('%s is %d mm', (text, value, withUnit) => {
    expect(writtenLength(text)?.value).toBeCloseTo(value, 12);
    expect(writtenLength(text)?.withUnit).toBe(withUnit);
  });

  it.each(['', 'wide', '12 ells', '12 mmm', '3 y', '1/0 in', '--3', '3 4'])('%s is none', (text) => {
    expect(writtenLength(text)).toBeUndefined();
  });
});

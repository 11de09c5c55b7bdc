import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { millimetres, numberIn } from '../../../engine/text/units.ts';

describe('a written number', () => {
  test.each([
    ['0', 0],
    ['92', 92],
    ['92.5', 92.5],
    ['92,5', 92.5],
    ['1/2', 0.5],
    ['36 1/4', 36.25],
    ['36-1/4', 36.25],
    ['36  15/16', 36.9375],
  ])('%j is %d', (text, value) => {
    expect(numberIn(text)).toBe(value);
  });

  test.each([
    '',
    ' ',
    'wide',
    '92 cm',
    '36"',
    '-5',
    '1/0',
    '361/4',
    '5/4',
    '36 1/',
    '1e3',
    '0x10',
    '9 2',
    '٣٦',
    '1.2.3',
  ])('%j is none', (text) => {
    expect(numberIn(text)).toBeUndefined();
  });

  test('in eighths of an inch is read exactly', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 99 }), fc.integer({ min: 1, max: 7 }), (whole, eighths) => {
        expect(numberIn(`${whole} ${eighths}/8`)).toBe(whole + eighths / 8);
      }),
    );
  });
});

describe('units', () => {
  // The inch is 25.4 mm by the international yard and pound agreement of 1959.
  test('are 10, 25.4 and 1 mm', () => {
    expect(millimetres).toEqual({ cm: 10, in: 25.4, mm: 1 });
  });
});

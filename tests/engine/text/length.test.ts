import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  decimalCell,
  EIGHTHS,
  inUnit,
  lengthCell,
  lengthFigure,
  lengthIn,
  SIXTEENTHS,
  unbroken,
} from '../../../engine/text/length.ts';
import { numberIn } from '../../../engine/text/units.ts';

/** The inch is 25.4 mm by the international yard and pound agreement of 1959. */
const INCH = 25.4;

const read = (figure: string): number =>
  figure.startsWith('-') ? -(numberIn(figure.slice(1)) ?? Number.NaN) : (numberIn(figure) ?? Number.NaN);

describe('a length in inches', () => {
  test.each([
    [0, '0'],
    [12.7, '1/2'],
    [25.4, '1'],
    [6.35, '1/4'],
    [15, '9/16'],
    [-15, '-9/16'],
    [-40, '-1 9/16'],
    [920, '36 1/4'],
    // An eighth is fine enough from ten inches on: 29.5276.
    [750, '29 1/2'],
    [254 - 1.6, '9 15/16'],
    [0.3, '0.012'],
    [-0.05, '-0.002'],
    [1e-13, '0'],
    [-1e-13, '0'],
  ])('of %d mm is %s', (mm, figure) => {
    expect(lengthFigure(mm, 'in')).toBe(figure);
  });

  test('can be written back into a file, and is off by no more than half of the last part', () => {
    fc.assert(
      fc.property(fc.double({ min: -3000, max: 3000, noNaN: true }), (mm) => {
        for (const parts of [EIGHTHS, SIXTEENTHS]) {
          const error = Math.abs(read(lengthFigure(mm, 'in', parts)) * INCH - mm);
          expect(error).toBeLessThanOrEqual(INCH / parts / 2 + 1e-9);
        }
      }),
    );
  });

  test('has no more digits than a ruler or a dressmaker has', () => {
    fc.assert(
      fc.property(fc.double({ min: -3000, max: 3000, noNaN: true }), (mm) => {
        expect(lengthFigure(mm, 'in')).toMatch(/^-?(?:\d+|(?:\d+ )?\d+\/(?:2|4|8|16)|0\.\d{1,4})$/);
      }),
    );
  });
});

describe('a length', () => {
  test('is said to a tenth of a millimetre, without float noise', () => {
    expect([lengthFigure(0.1 + 0.2, 'mm'), lengthFigure(123.456, 'mm'), lengthFigure(-0.01, 'mm')]).toEqual([
      '0.3',
      '123.5',
      '0',
    ]);
    expect([lengthFigure(0.1 + 0.2, 'cm'), lengthFigure(123.456, 'cm')]).toEqual(['0.03', '12.35']);
    // A quarter inch.
    expect(lengthFigure(6.35, 'mm')).toBe('6.4');
    expect(lengthIn(315, 'cm')).toBe('31.5 cm');
    expect(lengthIn(317.5, 'in')).toBe('12 1/2 in');
  });

  test('in a table has as many decimals as its neighbours, or is a fraction', () => {
    expect([lengthCell(340, 'mm'), lengthCell(340, 'cm'), lengthCell(342.9, 'in')]).toEqual([
      '340.0',
      '34.00',
      '13 1/2',
    ]);
  });

  test('that is meant to be nothing has decimals in any unit', () => {
    expect([
      decimalCell(0.0254, 'mm', 4),
      decimalCell(0.0254, 'cm', 4),
      decimalCell(0.0254, 'in', 4),
    ]).toEqual(['0.0254', '0.00254', '0.0010']);
    expect(decimalCell(-1e-9, 'in', 3)).toBe('0.000');
  });
});

describe('a figure of a file', () => {
  test.each([
    [36.25, 'in', '36 1/4 in'],
    // Written so, and on no ruler.
    [36.3, 'in', '36.3 in'],
    // 60 cm, which nobody wrote.
    [600 / INCH, 'in', '23 5/8 in'],
    [92, 'cm', '92 cm'],
    [92.123456, 'cm', '92.12 cm'],
    [20, 'degrees', '20 degrees'],
  ])('%d %s is said as %s', (value, unit, said) => {
    expect(inUnit(value, unit)).toBe(said);
  });
});

test('a whole number stays with its fraction', () => {
  expect(unbroken('front 7 15/16 - 3/16 = 7 3/4 in')).toBe('front 7\u00a015/16 - 3/16 = 7\u00a03/4 in');
});

import { describe, expect, test } from 'vitest';
import { readScale } from '../../../engine/reading/read-scale.ts';

const scale = (width: string, height = width, viewBox = '0 0 100 100') => {
  const read = readScale({ width, height, viewBox });
  return read.ok ? read.value : read.issues[0]?.code;
};

describe('the scale of a drawing', () => {
  // CSS Values 3, section 5.2: 1 in is 2.54 cm, 96 px, 72 pt and 6 pc; a Q is a quarter of a millimetre.
  test.each([
    ['100mm', 1],
    ['10cm', 1],
    ['400Q', 1],
    ['2in', 0.508],
    ['144pt', 0.508],
    ['12pc', 0.508],
    ['192px', 0.508],
    ['192', 0.508],
    [' +2e2 mm ', 2],
    ['.5mm', 0.005],
  ])('%s over 100 units', (width, mm) => {
    expect(scale(width)).toBeCloseTo(mm, 12);
  });

  test.each([
    ['100%', undefined],
    ['100em', undefined],
    ['0mm', undefined],
    ['-3mm', undefined],
    ['1e6mm', undefined],
    ['100mm', '0 0 100'],
    ['100mm', '0 0 100 0'],
    ['100mm', '0 0 0 100'],
    ['100mm', '0 0 100 x'],
  ])('%s over “%s” is none', (width, viewBox = '0 0 100 100') => {
    expect(scale(width, width, viewBox)).toBe('size-unknown');
    expect(scale('100mm', width, viewBox)).toBe('size-unknown');
    expect(scale(width, '100mm', viewBox)).toBe('size-unknown');
  });

  test('may differ across and down by a thousandth, and by no more', () => {
    expect(scale('100mm', '100.09mm')).toBe(1);
    expect(scale('100mm', '99.91mm')).toBe(1);
    expect(scale('100mm', '100.2mm')).toBe('stretched');
    expect(scale('100mm', '99.8mm')).toBe('stretched');
  });

  test('is 1 where only rounding says otherwise', () => {
    expect(scale('100.00000001mm')).toBe(1);
    expect(scale('100.001mm')).toBeCloseTo(1.00001, 12);
  });
});

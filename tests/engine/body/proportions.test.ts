import { describe, expect, it } from 'vitest';
import type { Body } from '../../../engine/body/body.ts';
import { readBody } from '../../../engine/body/read.ts';

const remarks = (fields: Record<string, number>): readonly string[] => {
  const read = readBody({
    units: 'cm',
    bustGirth: 92,
    waistGirth: 74,
    hipGirth: 99,
    backNeckPointToWaist: 40.5,
    ...fields,
  });
  expect(read.ok).toBe(true);
  return read.issues
    .filter(({ severity }) => severity === 'warning')
    .map(({ code, path }) => `${code} ${path}`);
};

const completed = (fields: Record<string, number>): Body['size'] => {
  const read = readBody({
    units: 'cm',
    bustGirth: 92,
    waistGirth: 74,
    hipGirth: 99,
    backNeckPointToWaist: 40.5,
    ...fields,
  });
  if (!read.ok) throw new Error('unreadable');
  return read.value.size;
};

// 600 women of the Spanish survey, 1st and 99th percentiles (R package Anthropometry 1.20): waist by hip 0.655 to
// 0.978, hip less bust -5.6 to 25.7 cm, bust less waist -0.1 to 19.6 cm.
describe('proportions', () => {
  it('are not remarked on in a regular body', () => {
    expect(remarks({})).toEqual([]);
  });

  it.each([
    [{ waistGirth: 73, bustGirth: 91, hipGirth: 111.6 }, 'proportion-unlikely waistGirth'],
    [{ waistGirth: 98, hipGirth: 100, bustGirth: 100 }, 'proportion-unlikely waistGirth'],
    [{ bustGirth: 105, waistGirth: 90 }, 'proportion-unlikely hipGirth'],
    [{ bustGirth: 92, hipGirth: 118, waistGirth: 80 }, 'proportion-unlikely hipGirth'],
    [{ waistGirth: 92.2, hipGirth: 105 }, 'proportion-unlikely bustGirth'],
    [{ waistGirth: 72.3 }, 'proportion-unlikely bustGirth'],
  ])('of one woman in a hundred are warned of: %o', (fields, remark) => {
    expect(remarks(fields)).toEqual([remark]);
  });

  it('just inside those limits are not', () => {
    expect(remarks({ waistGirth: 72.5 })).toEqual([]);
    expect(remarks({ hipGirth: 104.7, bustGirth: 110, waistGirth: 92 })).toEqual([]);
  });

  it('of swapped waist and hip are warned of and still drafted', () => {
    // Record 1 of the Royal Australian Navy survey, 2015: waist 979 mm, hip 912 mm, likely swapped.
    expect(remarks({ bustGirth: 97, waistGirth: 97.9, hipGirth: 91.2 })).toContain(
      'proportion-unlikely waistGirth',
    );
  });

  it('are warned of where the cup is less than none or beyond 40 cm', () => {
    expect(remarks({ underBustGirth: 93 })).toEqual(['proportion-unlikely bustGirth']);
    expect(remarks({ bustGirth: 100, underBustGirth: 59, waistGirth: 85 })).toContain(
      'proportion-unlikely bustGirth',
    );
  });

  it('are warned of where the front length is 60 mm from what back and cup make of it', () => {
    const expected = completed({ underBustGirth: 75 }).neckShoulderPointToWaist / 10;
    const front = (off: number) => remarks({ underBustGirth: 75, neckShoulderPointToWaist: expected + off });
    expect(front(-5.9)).toEqual([]);
    expect(front(5.9)).toEqual([]);
    expect(front(-6.1)).toEqual(['front-length-unlikely neckShoulderPointToWaist']);
    expect(front(6.1)).toEqual(['front-length-unlikely neckShoulderPointToWaist']);
  });
});

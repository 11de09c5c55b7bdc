import { describe, expect, test } from 'vitest';
import type { Body } from '../../../engine/body/body.ts';
import { drawstringIssue } from '../../../engine/body/child.ts';
import { readBody } from '../../../engine/body/read.ts';
import { woman } from './women.ts';

/** A girl of ten, cm; from memory of children's size tables. */
const girl = {
  units: 'cm',
  bustGirth: 68,
  waistGirth: 60,
  hipGirth: 74,
  backNeckPointToWaist: 31,
  stature: 140,
};

function read(data: object): Body {
  const result = readBody(data);
  if (!result.ok) throw new Error(JSON.stringify(result.issues));
  return result.value;
}

describe('a child', () => {
  // EN 14682 covers children to 14 years.
  test.each([
    ['child', 3],
    ['child', 13],
    ['child', 13.9],
    ['adult', 14],
    ['adult', 70],
  ])('%s at %d years, whatever the size', (wearer, age) => {
    expect(read({ ...woman, age }).wearer).toBe(wearer);
    expect(read({ ...girl, age }).wearer).toBe(wearer);
  });

  test('is known by stature and girths where the age is not given', () => {
    expect(read(girl).wearer).toBe('child');
    expect(read({ ...girl, stature: undefined }).wearer).toBe('child');
    expect(read(woman).wearer).toBe('adult');
  });

  test('is not somebody who is only short, or only slender', () => {
    expect(read({ ...woman, stature: 140 }).wearer).toBe('adult');
    expect(read({ ...girl, backNeckPointToWaist: 40, stature: 172 }).wearer).toBe('adult');
  });

  test('of four is read, with no remark but that she is a child', () => {
    const four = {
      units: 'cm',
      bustGirth: 56,
      waistGirth: 53,
      hipGirth: 58,
      backNeckPointToWaist: 24,
      stature: 104,
    };
    for (const age of [4, undefined]) {
      const { ok, issues } = readBody({ ...four, age });
      expect(issues.map(({ severity, code }) => `${severity} ${code}`)).toEqual(['note child-wearer']);
      expect(ok).toBe(true);
    }
  });

  test('is not taken for a woman measured in inches', () => {
    expect(readBody({ ...girl, age: 10 }).issues.map(({ code }) => code)).not.toContain('unit-mistaken');
  });

  test('is offered no drawstring, and is told the reason and what to choose instead', () => {
    const issue = drawstringIssue(read(girl));
    expect(issue).toMatchObject({
      code: 'drawstring-refused',
      severity: 'error',
      limits: { min: 14, unit: 'years' },
    });
    expect(issue?.message).toContain('EN 14682');
    expect(issue?.message).toContain('16 CFR 1120');
    expect(issue?.message).toMatch(/fixed gathers.*necklineGathers/);
  });

  test('no longer keeps a drawstring from a woman', () => {
    expect(drawstringIssue(read(woman))).toBeUndefined();
    expect(drawstringIssue(read({ ...girl, age: 30 }))).toBeUndefined();
  });
});

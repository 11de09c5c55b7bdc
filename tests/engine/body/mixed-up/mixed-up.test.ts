import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type MeasurementName, measurementNames } from '../../../../engine/body/body.ts';
import { withDigitsExchanged } from '../../../../engine/body/mixed-up/other-readings.ts';
import { readBody } from '../../../../engine/body/read.ts';
import { bodyGrid, plausibleBodies, plausibleBody } from '../../../plausible-bodies.ts';
import { misreadBy } from '../full-sets.ts';
import { people } from '../people.ts';
import { woman } from '../women.ts';
import { caught, digitsExchanged, exchanged, four, inOtherUnit, nine, readSets, writtenIn } from './slips.ts';

const sets = readSets(60);
const of = (names: readonly MeasurementName[], units: 'cm' | 'in' = 'cm') =>
  sets.map((set) => writtenIn(set, names, units));

const stopped = (data: object): boolean =>
  readBody(data).issues.some(({ code }) =>
    ['measurements-exchanged', 'unit-mistaken', 'digits-exchanged', 'girth-halved'].includes(code),
  );

describe('a woman who was measured and written down right', () => {
  test('is never taken to be mixed up', () => {
    const bodies = [
      ...plausibleBodies(300),
      ...bodyGrid(),
      ...fc.sample(plausibleBody, { numRuns: 300, seed: 42 }),
    ];
    expect(bodies.filter(stopped)).toEqual([]);
  });

  test('is not, either, whom a survey met in person', () => {
    for (const person of people) {
      const { id: _, ...sizes } = person;
      expect(stopped({ units: 'mm', ...sizes, backNeckPointToWaist: person.stature / 4 })).toBe(false);
    }
  });

  test('is not, either, where each reading is off by a random centimetre', () => {
    const off = sets.map((set, i) => ({ units: 'mm', ...misreadBy(10, set, 7000 + i) }));
    expect(off.filter(stopped)).toEqual([]);
  });
});

describe('two measurements exchanged', () => {
  test.each<[MeasurementName, MeasurementName, readonly MeasurementName[], number]>([
    ['waistGirth', 'hipGirth', four, 0.8],
    ['waistGirth', 'hipGirth', measurementNames, 0.8],
    ['bustGirth', 'waistGirth', four, 0.45],
    ['bustGirth', 'waistGirth', measurementNames, 0.7],
    ['bustGirth', 'underBustGirth', nine, 0.85],
    ['neckShoulderPointToBustPoint', 'neckShoulderPointToWaist', measurementNames, 0.85],
    ['elbowGirth', 'wristGirth', measurementNames, 0.8],
  ])('are named: %s and %s', (one, other, names, share) => {
    const count = caught(of(names), 'cm', exchanged(one, other), [one, other], 'measurements-exchanged');
    expect(count.named / count.sets).toBeGreaterThan(share);
    expect(count.misnamed).toBe(0);
    // Whoever is not stopped is warned: hers lie so near each other that they might be right.
    expect(count.named + count.refused + count.warned).toBe(count.sets);
  });

  test('are told as such, with what to write, and stand once they are sure', () => {
    const mixed = { ...woman, waistGirth: 98, hipGirth: 74 };
    const [issue] = readBody(mixed).issues;
    expect(issue).toMatchObject({
      code: 'measurements-exchanged',
      severity: 'error',
      path: 'waistGirth',
      value: 98,
    });
    expect(issue?.message).toContain('The waist girth of 98 cm and the hip girth of 74 cm look exchanged');
    expect(issue?.message).toContain('waistGirth: 74 and hipGirth: 98');
    expect(issue?.message).toContain('sure: [waistGirth]');
    expect(readBody(mixed).ok).toBe(false);
    expect(readBody({ ...mixed, sure: ['waistGirth'] }).ok).toBe(true);
    expect(readBody({ ...mixed, sure: ['hipGirth'] }).ok).toBe(true);
    expect(readBody({ ...mixed, sure: ['bustGirth'] }).ok).toBe(false);
  });
});

describe('a lone value in another unit', () => {
  test.each<MeasurementName>([
    'bustGirth',
    'waistGirth',
    'backNeckPointToWaist',
    'scyeDepth',
    'bustPointWidth',
  ])('is named: %s in inches among centimetres', (name) => {
    const count = caught(of(nine), 'cm', inOtherUnit(name, 1 / 2.54), [name], 'unit-mistaken');
    expect(count.named / count.sets).toBeGreaterThan(0.95);
    expect(count.misnamed).toBe(0);
  });

  test.each<MeasurementName>(['bustGirth', 'wristGirth', 'scyeDepth', 'waistToHip', 'stature'])(
    'is named: %s in centimetres among inches',
    (name) => {
      const count = caught(
        of(measurementNames, 'in'),
        'in',
        inOtherUnit(name, 2.54),
        [name],
        'unit-mistaken',
      );
      expect(count.named / count.sets).toBeGreaterThan(0.9);
    },
  );

  test.each<MeasurementName>(['bustGirth', 'wristGirth', 'shoulderLength', 'stature'])(
    'is named: %s in millimetres among centimetres',
    (name) => {
      const count = caught(of(measurementNames), 'cm', inOtherUnit(name, 10), [name], 'unit-mistaken');
      expect(count.named).toBe(count.sets);
    },
  );

  test('is told with what it comes to', () => {
    const { issues } = readBody({ ...woman, shoulderLength: 5.25 });
    expect(issues[0]).toMatchObject({ code: 'unit-mistaken', path: 'shoulderLength', value: 5.25 });
    expect(issues[0]?.message).toContain('looks like inches');
    expect(issues[0]?.message).toContain('shoulderLength: 13.3');
  });
});

describe('two digits exchanged', () => {
  test('are those that stand side by side, and no zero comes first', () => {
    expect(withDigitsExchanged(87)).toEqual([78]);
    expect(withDigitsExchanged(40.5)).toEqual([45]);
    expect(withDigitsExchanged(18.7)).toEqual([81.7, 17.8]);
    expect(withDigitsExchanged(99)).toEqual([]);
    for (const odd of [-87, 1e21, 0]) expect(withDigitsExchanged(odd)).toEqual([]);
  });

  test.each<[MeasurementName, number]>([
    ['neckBaseGirth', 0.85],
    ['upperArmGirth', 0.75],
    ['elbowGirth', 0.85],
    ['shoulderLength', 0.85],
    ['neckShoulderPointToBustPoint', 0.8],
    ['scyeDepth', 0.8],
    ['bustGirth', 0.3],
    ['waistGirth', 0.05],
  ])('are named: the first two of %s, in %d of all full sets at least', (name, share) => {
    const count = caught(of(measurementNames), 'cm', digitsExchanged(name), [name], 'digits-exchanged');
    expect(count.sets).toBeGreaterThan(10);
    expect(count.named / count.sets).toBeGreaterThan(share);
    expect(count.misnamed).toBeLessThan(2);
  });
});

describe('what is sure', () => {
  test('is not taken for half a girth where it is possible, but nothing impossible is sure', () => {
    const small = { ...woman, waistGirth: 45 };
    expect(readBody(small).issues[0]?.code).toBe('girth-halved');
    const codes = readBody({ ...small, sure: ['waistGirth'] }).issues.map(({ code }) => code);
    expect(codes).not.toContain('girth-halved');
    expect(readBody({ ...woman, stature: 1670, sure: ['stature'] }).ok).toBe(false);
  });

  test('is a list of names', () => {
    expect(readBody({ ...woman, sure: 'waistGirth' }).issues[0]?.code).toBe('sure-not-understood');
    const { issues } = readBody({ ...woman, sure: ['waist'] });
    expect(issues[0]).toMatchObject({ code: 'sure-not-understood', path: 'sure' });
    expect(issues[0]?.message).toContain('waistGirth');
  });
});

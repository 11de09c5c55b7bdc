import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type MeasurementName, measurementNames } from '../../../../engine/body/body.ts';
import { withDigitsExchanged } from '../../../../engine/body/mixed-up/other-readings.ts';
import { readBody } from '../../../../engine/body/read.ts';
import { bodyGrid, plausibleBodies, plausibleBody } from '../../../plausible-bodies.ts';
import { misreadBy } from '../full-sets.ts';
import { people } from '../people.ts';
import { woman } from '../women.ts';
import {
  caught,
  digitsExchanged,
  exchanged,
  farDigitsExchanged,
  four,
  girths,
  inOtherUnit,
  nine,
  readSets,
  writtenIn,
} from './slips.ts';

const sets = readSets(60);
const of = (names: readonly MeasurementName[], units: 'cm' | 'in' = 'cm') =>
  sets.map((set) => writtenIn(set, names, units));

const codes = ['measurements-exchanged', 'unit-mistaken', 'digits-exchanged', 'girth-halved'];
const said = (severity: 'error' | 'warning') => (data: object) =>
  readBody(data).issues.some((issue) => codes.includes(issue.code) && issue.severity === severity);
const stopped = said('error');
const doubted = said('warning');

describe('a woman who was measured and written down right', () => {
  test('is never taken to be mixed up', () => {
    const bodies = [
      ...plausibleBodies(300),
      ...bodyGrid(),
      ...fc.sample(plausibleBody, { numRuns: 300, seed: 42 }),
    ];
    expect(bodies.filter(stopped)).toEqual([]);
    expect(bodies.filter(doubted).length / bodies.length).toBeLessThan(0.03);
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
    expect(off.filter(doubted).length / off.length).toBeLessThan(0.08);
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
    expect(withDigitsExchanged(87, 'cm')).toEqual([78]);
    expect(withDigitsExchanged(40.5, 'cm')).toEqual([45]);
    expect(withDigitsExchanged(18.7, 'cm')).toEqual([81.7, 17.8]);
    expect(withDigitsExchanged(99, 'cm')).toEqual([]);
    for (const odd of [-87, 1e21, 0]) expect(withDigitsExchanged(odd, 'cm')).toEqual([]);
  });

  test('leave a mark of the tape: a millimetre, or a sixteenth of an inch', () => {
    expect(withDigitsExchanged(49.25, 'in')).toEqual([94.25]);
    expect(withDigitsExchanged(36.5, 'in')).toEqual([63.5]);
    expect(withDigitsExchanged(36, 'in')).toEqual([63]);
    expect(withDigitsExchanged(742, 'mm')).toEqual([472, 724]);
    expect(withDigitsExchanged(74.21, 'cm')).toEqual([47.2, 72.4]);
  });

  test.each<[MeasurementName, number]>([
    ['neckBaseGirth', 0.85],
    ['upperArmGirth', 0.75],
    ['elbowGirth', 0.85],
    ['shoulderLength', 0.85],
    ['neckShoulderPointToBustPoint', 0.8],
    ['scyeDepth', 0.8],
    ['bustGirth', 0.45],
    ['waistGirth', 0.2],
  ])('are named: the first two of %s, in %d of all full sets at least', (name, share) => {
    const count = caught(of(measurementNames), 'cm', digitsExchanged(name), [name], 'digits-exchanged');
    expect(count.sets).toBeGreaterThan(10);
    expect(count.named / count.sets).toBeGreaterThan(share);
    expect(count.misnamed).toBeLessThan(2);
  });
});

describe('digits exchanged in a girth', () => {
  const her = { units: 'cm', bustGirth: 92, hipGirth: 99, backNeckPointToWaist: 40.5 };

  test('stop the draft where the others make it next to impossible, until it is sure', () => {
    const { ok, issues } = readBody({ ...her, waistGirth: 47 });
    expect(ok).toBe(false);
    expect(issues[0]).toMatchObject({ code: 'digits-exchanged', severity: 'error', path: 'waistGirth' });
    expect(issues[0]?.message).toContain('Write waistGirth: 74, or 94 cm if half a girth was written;');
    expect(readBody({ ...her, waistGirth: 47, sure: ['waistGirth'] }).ok).toBe(true);
    expect(readBody({ ...her, waistGirth: 47, sure: ['hipGirth'] }).ok).toBe(false);
  });

  test('are asked after where she may be as she was written, and not where she is sure', () => {
    const { ok, issues } = readBody({ ...her, waistGirth: 58 });
    expect(ok).toBe(true);
    const asked = issues.filter(({ code }) => code === 'digits-exchanged');
    expect(asked).toHaveLength(1);
    expect(asked[0]).toMatchObject({ severity: 'warning', path: 'waistGirth', value: 58 });
    expect(asked[0]?.message).toMatch(/by the others 85 cm is about \d00 times as likely/);
    const sure = readBody({ ...her, waistGirth: 58, sure: ['waistGirth'] }).issues;
    expect(sure.map(({ code }) => code)).not.toContain('digits-exchanged');
  });

  test('are not asked after in a child, nor beside a number that nobody has', () => {
    const young = readBody({ ...her, waistGirth: 58, age: 11 }).issues;
    expect(young.map(({ code }) => code)).not.toContain('digits-exchanged');
    const impossible = readBody({ ...her, waistGirth: 58, hipGirth: 400 }).issues;
    expect(impossible.map(({ code }) => code)).not.toContain('digits-exchanged');
  });

  /*
   * Not more can be: of such slips of a waist nine in ten leave her waist within three standard deviations of what bust
   * and hips make of it, and of all some in fifty make what was written likelier than what was meant.
   */
  test.each<[string, readonly MeasurementName[], number, number]>([
    ['four', four, 0.55, 0.7],
    ['nine', nine, 0.55, 0.7],
    ['all', measurementNames, 0.6, 0.78],
  ])(
    'of more than 8 %% are mostly refused, or told with the other reading: %s',
    (_, names, refused, told) => {
      const all = girths
        .filter((girth) => names.some((name) => name === girth))
        .flatMap((girth) =>
          [0, 1].map((place) =>
            caught(of(names), 'cm', farDigitsExchanged(girth, place), [girth], 'digits-exchanged'),
          ),
        );
      const sum = (what: 'sets' | 'named' | 'refused' | 'doubted' | 'misnamed'): number =>
        all.reduce((total, each) => total + each[what], 0);
      expect((sum('named') + sum('refused')) / sum('sets')).toBeGreaterThan(refused);
      expect((sum('named') + sum('refused') + sum('doubted')) / sum('sets')).toBeGreaterThan(told);
      expect(sum('misnamed') / sum('sets')).toBeLessThan(0.005);
    },
  );
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

import { describe, expect, test } from 'vitest';
import { readBody } from '../../../engine/body/read.ts';
import type { Issue } from '../../../engine/issue.ts';
import { woman } from './women.ts';

/** Each issue as `severity code path`, in order. */
const said = (data: unknown): readonly string[] =>
  readBody(data).issues.map(({ severity, code, path }) => `${severity} ${code} ${path}`);

const inchesOf = { bustGirth: 36, waistGirth: 29, hipGirth: 39, backNeckPointToWaist: 16 };

describe('input that cannot be used', () => {
  test.each<[string, unknown, readonly string[]]>([
    ['nothing', undefined, ['error no-measurements ']],
    ['null', null, ['error no-measurements ']],
    ['a word', 'bust 92', ['error no-measurements ']],
    ['a number', 92, ['error no-measurements ']],
    ['a list', [woman], ['error no-measurements ']],
    ['no units', { ...woman, units: undefined }, ['error units-missing units']],
    ['unknown units', { ...woman, units: 'ells' }, ['error unknown-unit units']],
    ['units in full', { ...woman, units: 'inches' }, ['error unknown-unit units']],
    ['a measurement missing', { ...woman, hipGirth: undefined }, ['error measurement-missing hipGirth']],
    ['a measurement left blank', { ...woman, waistGirth: null }, ['error measurement-missing waistGirth']],
    ['a mistyped name', { ...woman, wristGrith: 16 }, ['error unknown-field wristGrith']],
    ['a name in other capitals', { ...woman, bustgirth: 92 }, ['error unknown-field bustgirth']],
    ['a name that means nothing', { ...woman, shoeSize: 38 }, ['error unknown-field shoeSize']],
    ['a word for a number', { ...woman, bustGirth: 'wide' }, ['error not-a-number bustGirth']],
    ['a number with its unit', { ...woman, bustGirth: '92 cm' }, ['error not-a-number bustGirth']],
    ['a fraction without a gap', { ...woman, wristGirth: '61/4' }, ['error not-a-number wristGirth']],
    ['a division by nothing', { ...woman, bustGirth: '92 1/0' }, ['error not-a-number bustGirth']],
    ['an empty text', { ...woman, bustGirth: '' }, ['error not-a-number bustGirth']],
    ['not a number', { ...woman, bustGirth: Number.NaN }, ['error not-a-number bustGirth']],
    ['no finite number', { ...woman, stature: Infinity }, ['error not-a-number stature']],
    ['yes for a number', { ...woman, bustGirth: true }, ['error not-a-number bustGirth']],
    ['a list for a number', { ...woman, bustGirth: [92] }, ['error not-a-number bustGirth']],
    ['a name too long', { ...woman, name: 'x'.repeat(81) }, ['error name-unusable name']],
    ['a name in two lines', { ...woman, name: 'a\u0000b' }, ['error name-unusable name']],
    ['an age in words', { ...woman, age: 'old' }, ['error age-out-of-range age']],
    ['a negative age', { ...woman, age: -1 }, ['error age-out-of-range age']],
    ['a cup of another system', { ...woman, cup: 'DD' }, ['error unknown-cup cup']],
    ['nothing round the waist', { ...woman, waistGirth: 0 }, ['error measurement-out-of-range waistGirth']],
    ['less than nothing', { ...woman, wristGirth: -15 }, ['error measurement-out-of-range wristGirth']],
    ['a bust of 3 m', { ...woman, bustGirth: 300 }, ['error measurement-out-of-range bustGirth']],
    [
      'a slope of 80 degrees',
      { ...woman, shoulderSlope: 80 },
      ['error measurement-out-of-range shoulderSlope'],
    ],
    ['inches called cm', { ...woman, ...inchesOf }, ['error unit-mistaken units']],
    ['cm called inches', { ...woman, units: 'in' }, ['error unit-mistaken units']],
    ['cm called mm', { ...woman, units: 'mm' }, ['error unit-mistaken units']],
    ['inches called mm', { ...woman, ...inchesOf, units: 'mm' }, ['error unit-mistaken units']],
    [
      'mm called cm',
      { ...woman, bustGirth: 920, waistGirth: 740, hipGirth: 980, backNeckPointToWaist: 410 },
      ['error unit-mistaken units'],
    ],
    [
      'one length in inches',
      { ...woman, backNeckPointToWaist: 16 },
      ['error unit-mistaken backNeckPointToWaist'],
    ],
    ['one length in mm', { ...woman, stature: 1670 }, ['error unit-mistaken stature']],
    ['half the bust', { ...woman, bustGirth: 46 }, ['error girth-halved bustGirth']],
    ['half the waist', { ...woman, waistGirth: 37 }, ['error girth-halved waistGirth']],
    ['half the hip', { ...woman, hipGirth: 49 }, ['error girth-halved hipGirth']],
    ['half the under-bust', { ...woman, underBustGirth: 39 }, ['error girth-halved underBustGirth']],
    [
      'all girths halved',
      { ...woman, bustGirth: 46, waistGirth: 37, hipGirth: 49 },
      ['error girth-halved bustGirth', 'error girth-halved waistGirth', 'error girth-halved hipGirth'],
    ],
    [
      'more under the bust than round it',
      { ...woman, underBustGirth: 101 },
      ['error measurements-contradict underBustGirth'],
    ],
    ['an underarm at the waist', { ...woman, scyeDepth: 36 }, ['error measurements-contradict scyeDepth']],
    [
      'a bust point below the waist',
      { ...woman, neckShoulderPointToBustPoint: 41, neckShoulderPointToWaist: 40 },
      ['error measurements-contradict neckShoulderPointToBustPoint'],
    ],
    [
      'a shoulder wider than the back',
      { ...woman, shoulderLength: 22, acrossBackWidth: 35 },
      ['error measurements-contradict shoulderLength'],
    ],
    [
      'a waist higher than the head',
      { ...woman, stature: 140, waistHeight: 120 },
      ['error measurements-contradict waistHeight'],
    ],
  ])('%s is refused', (_, data, expected) => {
    expect(readBody(data).ok).toBe(false);
    expect(said(data).filter((line) => line.startsWith('error'))).toEqual(expected);
  });

  test('is told of all at once, each field once', () => {
    const data = {
      units: 'cm',
      bustGirth: 'wide',
      waistGirth: 300,
      hipGirth: 98,
      wristGrith: 16,
      cup: 'X',
      age: -3,
    };
    expect([...said(data)].sort()).toEqual([
      'error age-out-of-range age',
      'error measurement-missing backNeckPointToWaist',
      'error measurement-out-of-range waistGirth',
      'error not-a-number bustGirth',
      'error unknown-cup cup',
      'error unknown-field wristGrith',
    ]);
  });
});

describe('input that is unlikely', () => {
  test.each<[string, object, readonly string[]]>([
    [
      'a bust few women have',
      { bustGirth: 76, waistGirth: 62, hipGirth: 88 },
      ['note measurement-unusual bustGirth'],
    ],
    ['a stature hardly anybody has', { stature: 204 }, ['warning measurement-unlikely stature']],
    ['a slope hardly anybody has', { shoulderSlope: 43 }, ['warning measurement-unlikely shoulderSlope']],
    [
      'a waist larger than the hip',
      { waistGirth: 99 },
      ['warning proportion-unlikely waistGirth', 'warning proportion-unlikely bustGirth'],
    ],
    ['a cup unlike the girths', { underBustGirth: 75, cup: 'B' }, ['warning cup-disagrees cup']],
    ['a wearer of ten', { age: 10 }, ['note child-wearer age']],
  ])('%s is remarked on, and read', (_, change, expected) => {
    expect(readBody({ ...woman, ...change }).ok).toBe(true);
    expect(said({ ...woman, ...change })).toEqual(expected);
  });

  // ASRAN 2015 (CC BY 3.0 AU), record 1, mm: its waist and hip were probably entered the wrong way round.
  test('warns of the record whose waist is larger than its hip', () => {
    const read = readBody({
      units: 'mm',
      bustGirth: 912,
      waistGirth: 979,
      hipGirth: 912,
      backNeckPointToWaist: 410,
    });
    expect(read.ok).toBe(true);
    expect(read.issues).toContainEqual(
      expect.objectContaining({ code: 'proportion-unlikely', path: 'waistGirth' }),
    );
  });
});

describe('an issue', () => {
  const first = (change: object): Issue | undefined => readBody({ ...woman, ...change }).issues[0];

  test('gives value and limits in the units of the file', () => {
    expect(first({ stature: 204 })).toMatchObject({ value: 204, limits: { min: 135, max: 200, unit: 'cm' } });
    const inches = { units: 'in', ...inchesOf, stature: 80 };
    const { value, limits } = first(inches) ?? {};
    expect(value).toBe(80);
    expect(limits?.unit).toBe('in');
    expect(limits?.max).toBeCloseTo(2000 / 25.4, 9);
    expect(first({ shoulderSlope: 43 })).toMatchObject({ value: 43, limits: { unit: 'degrees' } });
  });

  test('proposes the nearest known name', () => {
    expect(first({ wristGrith: 16 })?.message).toContain('wristGirth');
    expect(first({ bust_girth: 92 })?.message).toContain('bustGirth');
  });

  test('names the units the numbers look like', () => {
    expect(first({ units: 'in' })?.message).toContain('centimetres');
    expect(first(inchesOf)?.message).toContain('inches');
  });

  test('says what a halved girth would come to', () => {
    expect(first({ waistGirth: 37 })?.message).toContain('74 cm');
  });

  test('quotes what was written, short and on one line, and never as NaN', () => {
    expect(first({ bustGirth: Number.NaN })?.message).not.toContain('NaN');
    const { message = '' } = first({ bustGirth: `9\n${'2'.repeat(1000)}` }) ?? {};
    expect(message).not.toContain('\n');
    expect(message.length).toBeLessThan(200);
  });

  test('names both measurements that contradict each other', () => {
    const { message = '' } = first({ underBustGirth: 101 }) ?? {};
    expect(message).toContain('under-bust girth');
    expect(message).toMatch(/[^-] bust girth/);
  });
});

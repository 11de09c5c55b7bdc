import { describe, expect, test } from 'vitest';
import {
  leastAllowance,
  mostAtSeam,
  oneSided,
  plainChangeNames,
  plainChanges,
  trialAllowance,
} from '../../../engine/body/fitting.ts';
import { readBody } from '../../../engine/body/read.ts';
import { woman } from './women.ts';

const read = (fitting: unknown, units = 'cm') => readBody({ ...woman, units, fitting });
const codes = (fitting: unknown): readonly string[] => read(fitting).issues.map(({ code }) => code);
const message = (fitting: unknown): string =>
  read(fitting)
    .issues.map((issue) => issue.message)
    .join(' ');

describe('the fitting in a body file', () => {
  test('is empty where none is written, or its place is left blank', () => {
    for (const fitting of [undefined, null, []])
      expect(read(fitting)).toMatchObject({ ok: true, value: { fitting: [] } });
  });

  test('is read in the file’s units, as a fitter says it', () => {
    const written = [
      { 'take in': 'side seam', level: 'waist', by: 1 },
      { 'let out': 'front princess seam', level: 'under-bust', by: '1/2' },
      { 'raise bust point': '0,8' },
      { 'shorten strap': 1.5 },
    ];
    expect(read(written)).toMatchObject({
      ok: true,
      value: {
        fitting: [
          { kind: 'take in', seam: 'side seam', level: 'waist', mm: 10 },
          { kind: 'let out', seam: 'front princess seam', level: 'under-bust', mm: 5 },
          { kind: 'raise bust point', mm: 8 },
          { kind: 'shorten strap', mm: 15 },
        ],
      },
      issues: [],
    });
  });

  test('takes every change up to its limit and none beyond', () => {
    for (const name of plainChangeNames) {
      const most = plainChanges[name].most / 10;
      const side = oneSided[name] === 'must' ? { side: 'left' } : {};
      expect(codes([{ [name]: most, ...side }]), name).toEqual([]);
      expect(codes([{ [name]: most + 0.1, ...side }]), name).toEqual(['fitting-too-much']);
    }
  });

  test('lets a seam out by what the trial bodice has beyond what a seam needs, and says so', () => {
    const letOut = (by: number) => [{ 'let out': 'side seam', level: 'waist', by }];
    expect(mostAtSeam['let out']).toBe(trialAllowance - leastAllowance);
    expect(codes(letOut(1.5))).toEqual([]);
    expect(codes(letOut(1.6))).toEqual(['fitting-too-much']);
    expect(message(letOut(1.6))).toContain(
      'A trial bodice has allowances of 2.5 cm, and a seam needs 1 cm of them.',
    );
  });

  test('takes a seam in by no deeper a fold than the allowance is wide', () => {
    const takeIn = (by: number) => [{ 'take in': 'side seam', level: 'waist', by }];
    expect(codes(takeIn(2.5))).toEqual([]);
    expect(message(takeIn(2.6))).toContain('A trial bodice has allowances of 2.5 cm');
  });

  test('counts what is said twice together, against the limit too', () => {
    const most = mostAtSeam['take in'] / 10;
    const seam = (by: number) => ({ 'take in': 'side seam', level: 'waist', by });
    expect(codes([seam(most / 2), seam(most / 2)])).toEqual([]);
    expect(codes([seam(most / 2), seam(most / 2 + 0.1)])).toEqual(['fitting-too-much']);
  });

  test.each([
    ['no list', { 'round back': 1 }, 'fitting-not-a-list'],
    ['a bare word', ['round back'], 'fitting-not-understood'],
    ['an unknown change', [{ 'round bakc': 1 }], 'unknown-fitting'],
    ['an empty change', [{}], 'unknown-fitting'],
    ['two changes in one', [{ 'round back': 1, 'sway back': 1 }], 'fitting-not-understood'],
    ['a word too many', [{ 'round back': 1, level: 'waist' }], 'fitting-not-understood'],
    ['nothing at all', [{ 'round back': 0 }], 'fitting-amount'],
    ['less than nothing', [{ 'round back': -1 }], 'fitting-amount'],
    ['no number', [{ 'round back': 'lots' }], 'fitting-amount'],
    ['not a number', [{ 'round back': Number.NaN }], 'fitting-amount'],
    ['no amount', [{ 'take in': 'side seam', level: 'waist' }], 'fitting-amount'],
    ['an unknown seam', [{ 'take in': 'sleeve', level: 'waist', by: 1 }], 'unknown-seam'],
    ['a level its seam has not', [{ 'take in': 'centre back seam', level: 'bust', by: 1 }], 'unknown-level'],
    ['no level', [{ 'take in': 'side seam', by: 1 }], 'unknown-level'],
    ['a lower shoulder on neither side', [{ 'lower shoulder': 1 }], 'fitting-side'],
    ['a side that is none', [{ 'shorten strap': 1, side: 'front' }], 'fitting-side'],
    ['one side of a panel', [{ 'round back': 1, side: 'left' }], 'fitting-not-one-sided'],
    [
      'one side of a seam',
      [{ 'take in': 'side seam', level: 'waist', by: 1, side: 'left' }],
      'fitting-not-one-sided',
    ],
  ])('refuses %s', (_, fitting, code) => {
    expect(codes(fitting)).toEqual([code]);
    expect(read(fitting).ok).toBe(false);
  });

  test('says which word was meant, and which levels a seam has', () => {
    expect(message([{ 'round bakc': 1 }])).toContain('Do you mean round back?');
    expect(message([{ 'take in': 'side seam', level: 'under-bust', by: 1 }])).toContain('bust, waist or hip');
  });

  test('refuses changes that undo each other, by name and only at the same place', () => {
    const at = (kind: string, level: string) => ({ [kind]: 'side seam', level, by: 1 });
    expect(codes([at('take in', 'waist'), at('let out', 'bust')])).toEqual([]);
    expect(codes([at('take in', 'waist'), at('let out', 'waist')])).toEqual(['fitting-contradicts']);
    expect(message([at('take in', 'waist'), at('let out', 'waist')])).toContain(
      '"take in the side seam at the waist" and "let out the side seam at the waist"',
    );
    expect(codes([{ 'raise bust point': 1 }, { 'lower bust point': 1 }])).toEqual(['fitting-contradicts']);
    expect(codes([{ 'shorten strap': 1 }, { 'lengthen strap': 1 }])).toEqual(['fitting-contradicts']);
    expect(codes([{ 'broad back': 1 }, { 'narrow back': 1 }])).toEqual(['fitting-contradicts']);
  });

  test('takes a side where left and right may differ', () => {
    const sided = [
      { 'lower shoulder': 1, side: 'right' },
      { 'forward shoulder': 0.5, side: 'left' },
    ];
    expect(read(sided)).toMatchObject({
      ok: true,
      value: {
        fitting: [
          { kind: 'lower shoulder', mm: 10, side: 'right' },
          { kind: 'forward shoulder', mm: 5, side: 'left' },
        ],
      },
    });
  });

  test('counts what is made on both sides together with what is made on one', () => {
    const most = plainChanges['shorten strap'].most / 10;
    const shorten = (by: number, side?: string) => ({ 'shorten strap': by, ...(side && { side }) });
    expect(codes([shorten(most, 'left'), shorten(most, 'right')])).toEqual([]);
    expect(codes([shorten(most), shorten(0.1, 'right')])).toEqual(['fitting-too-much']);
    expect(message([shorten(most), shorten(0.1, 'right')])).toContain('"shorten strap on the right"');
  });

  test('lets one side undo nothing on the other', () => {
    const change = (kind: string, side?: string) => ({ [`${kind} strap`]: 1, ...(side && { side }) });
    expect(codes([change('shorten', 'left'), change('lengthen', 'right')])).toEqual([]);
    expect(codes([change('shorten'), change('lengthen', 'right')])).toEqual(['fitting-contradicts']);
  });

  test('tells all that is wrong at once, with the place in the list', () => {
    const { issues } = read([{ 'round back': 'x' }, { 'round back': 1 }, { wedge: 2 }]);
    expect(issues.map(({ path }) => path)).toEqual(['fitting/1', 'fitting/3']);
  });
});

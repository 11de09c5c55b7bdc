import { describe, expect, test } from 'vitest';
import type { Choice } from '../../../engine/pattern/styling.ts';
import { resolveStyling } from '../../../engine/pattern/styling-values.ts';
import { nearestWord } from '../../../engine/text/nearest-word.ts';

const choices: readonly Choice[] = [
  { kind: 'number', name: 'casingDepth', unit: 'mm', default: 15, min: 6, max: 40, help: '' },
  { kind: 'number or auto', name: 'fullness', unit: 'ratio', default: 'auto', min: 1, max: 3, help: '' },
  { kind: 'number', name: 'slashLines', unit: 'count', default: 5, min: 1, max: 12, help: '' },
  { kind: 'word', name: 'notchType', default: 'slit', words: ['slit', 'wedge'], help: '' },
];

const defaults = { casingDepth: 15, fullness: 'auto', slashLines: 5, notchType: 'slit' };

describe('styling', () => {
  test.each([undefined, null, {}, { casingDepth: null }])(
    'is all defaults when nothing is said (%o)',
    (given) => {
      expect(resolveStyling(choices, given)).toEqual({ ok: true, value: defaults, issues: [] });
    },
  );

  test('takes what was said, numbers as text too, and keeps the order of the draft', () => {
    const made = resolveStyling(choices, { notchType: 'wedge', casingDepth: ' 12.5', fullness: 2 });
    expect(made.ok && Object.entries(made.value)).toEqual([
      ['casingDepth', 12.5],
      ['fullness', 2],
      ['slashLines', 5],
      ['notchType', 'wedge'],
    ]);
    expect(resolveStyling(choices, { fullness: 'auto' })).toMatchObject({ ok: true, value: defaults });
  });

  test.each([
    ['0.02m', 20],
    ['0,02 m', 20],
    ['1/10 ft', 30.48],
    ['1/36 yd', 25.4],
    ['1 1/4 in', 31.75],
  ])('takes a length of %s as %d mm', (written, casingDepth) => {
    const made = resolveStyling(choices, { casingDepth: written });
    expect(made.ok && made.value.casingDepth).toBeCloseTo(casingDepth, 12);
  });

  test('takes the very ends of a range', () => {
    for (const casingDepth of [6, 40]) expect(resolveStyling(choices, { casingDepth }).ok).toBe(true);
  });

  test.each<[unknown, string, string, string]>([
    [{ casingdepht: 12 }, 'unknown-styling', 'casingdepht', 'Did you mean “casingDepth”?'],
    [{ pockets: 2 }, 'unknown-styling', 'pockets', 'Known are: casingDepth'],
    [{ __proto__x: 2 }, 'unknown-styling', '__proto__x', 'no choice'],
    [{ casingDepth: 41 }, 'styling-out-of-range', 'casingDepth', '41 mm; this draft takes 6 to 40 mm'],
    [
      { casingDepth: 'deep' },
      'styling-not-a-number',
      'casingDepth',
      'a number with its unit (mm, cm, m, in, ft or yd), not “deep”',
    ],
    [{ casingDepth: '' }, 'styling-not-a-number', 'casingDepth', 'a number'],
    [{ casingDepth: Number.NaN }, 'styling-not-a-number', 'casingDepth', 'a number'],
    [{ casingDepth: Infinity }, 'styling-not-a-number', 'casingDepth', 'a number'],
    [{ casingDepth: [12] }, 'styling-not-a-number', 'casingDepth', 'not “a list”'],
    [{ casingDepth: true }, 'styling-not-a-number', 'casingDepth', 'not “true”'],
    [{ casingDepth: 'auto' }, 'styling-not-a-number', 'casingDepth', 'not “auto”'],
    [{ casingDepth: '1 ell' }, 'styling-not-a-number', 'casingDepth', 'not “1 ell”'],
    [{ fullness: '2 m' }, 'styling-not-a-number', 'fullness', 'not “2 m”'],
    [{ fullness: 'lots' }, 'styling-not-a-number', 'fullness', 'a number or “auto”'],
    [{ slashLines: 2.5 }, 'styling-not-a-number', 'slashLines', 'a whole number'],
    [{ notchType: 'vee' }, 'unknown-styling-word', 'notchType', '“slit” or “wedge”, not “vee”'],
    [['casingDepth'], 'styling-not-a-list', 'styling', 'a list of names'],
    ['casingDepth', 'styling-not-a-list', 'styling', 'a list of names'],
  ])('%o is refused as %s', (given, code, path, words) => {
    const made = resolveStyling(choices, given);
    expect(made.ok).toBe(false);
    expect(made.issues).toMatchObject([{ code, path, severity: 'error' }]);
    expect(made.issues[0]?.message).toContain(words);
  });

  test('says all that is wrong at once, with limits where there are some', () => {
    const made = resolveStyling(choices, { casingDepth: 1, notchType: 'x', colour: 'red' });
    expect(made.issues.map(({ path }) => path)).toEqual(['colour', 'casingDepth', 'notchType']);
    expect(made.issues[1]?.limits).toEqual({ min: 6, max: 40, unit: 'mm' });
  });

  test('quotes no more than a line of what was written', () => {
    const made = resolveStyling(choices, { ['x'.repeat(10_000)]: 1, notchType: 'y'.repeat(10_000) });
    for (const { message } of made.issues) expect(message.length).toBeLessThan(200);
  });
});

describe('the nearest word', () => {
  test.each([
    ['bustgirth', 'bustGirth'],
    ['bust-girth', 'bustGirth'],
    ['waist girht', 'waistGirth'],
    ['colour', undefined],
    ['', undefined],
  ])('to “%s” is %s', (typed, word) => {
    expect(nearestWord(typed, ['bustGirth', 'waistGirth', 'underBustGirth'])).toBe(word);
  });
});

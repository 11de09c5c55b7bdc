import { describe, expect, it } from 'vitest';
import type { IssueCode } from '../../../engine/issue-codes/issue-codes.ts';
import type { Draft } from '../../../engine/pattern/draft.ts';
import type { Choice } from '../../../engine/pattern/styling.ts';
import { resolveStyling } from '../../../engine/pattern/styling-values.ts';
import { grouped } from '../../../engine/proof/groups.ts';
import { nearestFirst } from '../../../engine/proof/nearest-first.ts';
import { shrunk } from '../../../engine/proof/shrink.ts';
import { type TrialCase, trialCases } from '../../../engine/proof/trial-case.ts';
import { type Verdict, verdictOf } from '../../../engine/proof/verdict.ts';
import { bib, measurements } from '../bib.ts';

const number = (name: string): Choice => ({
  kind: 'number',
  name,
  unit: 'mm',
  default: 5,
  min: 0.123456,
  max: 20,
  help: 'how much',
});
const choices: readonly Choice[] = [
  ...Array.from({ length: 12 }, (_, i) => number(`c${i}`)),
  { kind: 'word', name: 'word', default: 'a', words: ['a', 'b', 'c'], help: 'which' },
];
const bodies = [measurements, { ...measurements, name: 'another' }];

describe('the cases that a draft is held to', () => {
  const cases = trialCases(choices, bodies, { tries: 200, seed: 3 });

  it('are every body as usual, both ends and every word of each choice alone, and combinations', () => {
    const usual = cases.filter(({ styling }) => Object.keys(styling).length === 0).map(({ body }) => body);
    expect(usual).toEqual(expect.arrayContaining(bodies));
    expect(new Set(usual.map((body) => Reflect.get(body, 'stature'))).size).toBeGreaterThanOrEqual(3);
    for (const choice of choices)
      for (const end of choice.kind === 'word' ? ['b', 'c'] : [choice.min, choice.max])
        expect(cases.map(({ styling }) => styling)).toContainEqual({ [choice.name]: end });
    expect(cases.filter(({ styling }) => Object.keys(styling).length > 1).length).toBeGreaterThan(80);
  });

  it('have their sheets read back: all but those of the grid', () => {
    const read = cases.filter(({ readBack }) => readBack);
    expect(read.length).toBe(bodies.length + 12 * 2 + 2 + 200);
    expect(read.filter(({ styling }) => Object.keys(styling).length > 1).length).toBeGreaterThan(80);
    expect(verdictOf(bib, { body: measurements, styling: {}, readBack: true }).outcome).toBe('true');
    expect(verdictOf(bib, { body: measurements, styling: { misfit: 2 }, readBack: true }).outcome).toBe(
      'not true',
    );
  });

  it('are all allowed by the choices', () => {
    for (const { styling } of cases) expect(resolveStyling(choices, styling).issues).toEqual([]);
  });

  it('are the same for the same seed', () => {
    expect(trialCases(choices, bodies, { tries: 200, seed: 3 })).toEqual(cases);
    expect(trialCases(choices, bodies, { tries: 200, seed: 4 })).not.toEqual(cases);
  });
});

describe('what a draft says shapes it', () => {
  /** The bib, as much larger as some measurements are. */
  const grown = (shapedBy: Draft['shapedBy'], ...by: Draft['shapedBy']): Draft => ({
    ...bib,
    shapedBy,
    draw: (body, styling) => {
      const drawn = bib.draw(body, styling);
      if (!drawn.ok) return drawn;
      const x = by.reduce((sum, name) => sum + body.size[name], 0);
      const elastic = { name: 'elastic', count: 1, length: x, note: '' };
      return { ...drawn, value: { ...drawn.value, notions: [elastic] } };
    },
  });
  const missing = (draft: Draft, readBack?: true): readonly string[] =>
    verdictOf(draft, { body: measurements, styling: {}, ...(readBack && { readBack }) })
      .issues.filter(({ code }) => code === 'shaped-by-incomplete')
      .map(({ message }) => message);

  it('is held to its pieces and notions where the sheet is read back', () => {
    expect(missing(grown([], 'hipGirth', 'wristGirth'), true)).toEqual([
      expect.stringContaining("Add 'hipGirth'"),
      expect.stringContaining("Add 'wristGirth'"),
    ]);
    expect(missing(grown(['hipGirth'], 'hipGirth', 'wristGirth'), true)).toEqual([
      expect.stringContaining('The wrist girth'),
    ]);
    expect(missing(grown(['wristGirth', 'hipGirth'], 'hipGirth', 'wristGirth'), true)).toEqual([]);
    expect(missing(grown([], 'hipGirth'))).toEqual([]);
  });

  it('is not asked of a draft that draws something else each time, which is told instead', () => {
    let drawings = 0;
    const forgetful: Draft = {
      ...bib,
      draw: (body, styling) => {
        const drawn = bib.draw(body, styling);
        if (!drawn.ok) return drawn;
        const elastic = { name: 'elastic', count: 1, length: 100 + drawings++, note: '' };
        return { ...drawn, value: { ...drawn.value, notions: [elastic] } };
      },
    };
    const { issues, outcome } = verdictOf(forgetful, { body: measurements, styling: {}, readBack: true });
    expect(issues).toMatchObject([{ code: 'draft-not-pure', severity: 'error', path: 'draw' }]);
    expect(outcome).toBe('not true');
  });

  it('is told of steps that have one title, each title once', () => {
    const step = { number: 1, says: ['as chosen'], source: 'choice', from: [] };
    const steps = ['Depth', 'Width', 'Depth', 'Depth'].map((title, i) => ({ ...step, number: i + 1, title }));
    const alike: Draft = {
      ...bib,
      placeOf: ([word]) => (word === 'Depth' ? { file: 'bib.ts', line: 7 } : undefined),
      draw: (body, styling) => {
        const drawn = bib.draw(body, styling);
        return drawn.ok ? { ...drawn, value: { ...drawn.value, steps } } : drawn;
      },
    };
    const { issues, outcome } = verdictOf(alike, { body: measurements, styling: {}, readBack: true });
    expect(issues).toMatchObject([
      { code: 'draft-steps-alike', path: 'Depth', source: { file: 'bib.ts', line: 7 } },
    ]);
    expect(outcome).toBe('not true');
  });

  it('may name what does not act in this styling', () => {
    expect(missing(grown(['stature', 'hipGirth'], 'hipGirth'), true)).toEqual([]);
  });
});

describe('a case made smaller', () => {
  const all = Object.fromEntries(choices.map(({ name }) => [name, name === 'word' ? 'b' : 7]));
  const found: TrialCase = { body: { name: 'own-odd' }, styling: all };
  const needs =
    (...names: readonly string[]) =>
    async ({ styling }: TrialCase): Promise<boolean> =>
      names.every((name) => name in styling);

  it.each([[['c3']], [['c0', 'word']], [['c2', 'c5', 'c11']], [[]]])(
    'keeps only what it takes: %j',
    async (names) => {
      const { styling, body } = await shrunk(found, [measurements], needs(...names));
      expect(Object.keys(styling).toSorted()).toEqual([...names].toSorted());
      expect(body).toBe(measurements);
    },
  );

  it('keeps the body where it takes that', async () => {
    const same = async (smaller: TrialCase): Promise<boolean> => smaller.body.name === 'own-odd';
    expect(await shrunk(found, [measurements], same)).toEqual({ body: { name: 'own-odd' }, styling: {} });
  });

  it('is told of the first body with which it comes, of those that are plainer', async () => {
    const [small, large, larger] = ['small', 'large', 'larger'].map((name) => ({ ...measurements, name }));
    const same = async ({ body }: TrialCase): Promise<boolean> => body !== small;
    const bodies = [small, large, larger].flatMap((body) => body ?? []);
    expect((await shrunk(found, bodies, same)).body).toBe(large);
    const ofLarge = { ...found, body: large as TrialCase['body'] };
    expect((await shrunk(ofLarge, bodies, same)).body).toBe(large);
  });

  it('is told of bodies in the order in which they are like the usual one, whatever their units', () => {
    const { bustGirth, waistGirth, hipGirth, backNeckPointToWaist } = measurements;
    const grown = (by: number) => {
      const inches = (cm: number) => (by * cm) / 2.54;
      const [bust, waist, hip] = [bustGirth, waistGirth, hipGirth].map(inches);
      const girths = { bustGirth: bust, waistGirth: waist, hipGirth: hip };
      return { name: `by ${by}`, units: 'in', ...girths, backNeckPointToWaist: backNeckPointToWaist / 2.54 };
    };
    const bodies = [measurements, grown(1.2), {}, grown(1.05), grown(0.9)];
    const names = nearestFirst(bodies).map(({ name }) => name);
    expect(names).toEqual([measurements.name, 'by 1.05', 'by 0.9', 'by 1.2', undefined]);
  });

  it('is given up after some attempts', async () => {
    let asked = 0;
    await shrunk(found, [measurements], async () => {
      asked += 1;
      return false;
    });
    expect(asked).toBeLessThanOrEqual(40);
  });
});

describe('the verdict on a case', () => {
  it('tells a true garment from one that fails a check', () => {
    expect(verdictOf(bib, { body: measurements, styling: {} })).toEqual({ outcome: 'true', issues: [] });
    const untrue = verdictOf(bib, { body: measurements, styling: { misfit: 2 } });
    expect(untrue.outcome).toBe('not true');
    expect(untrue.issues.map(({ code }) => code)).toContain('seam-does-not-walk');
  });

  it('tells a refusal from a fault', () => {
    expect(verdictOf(bib, { body: {}, styling: {} }).outcome).toBe('refused');
    const broken = {
      ...bib,
      draw: () => {
        throw new Error('no cloth');
      },
    };
    expect(verdictOf(broken, { body: measurements, styling: {} })).toMatchObject({
      outcome: 'thrown',
      issues: [{ code: 'program-fault', message: 'no cloth' }],
    });
  });
});

describe('cases that are not true', () => {
  const verdict = (outcome: Verdict['outcome'], ...codes: readonly IssueCode[]): Verdict => ({
    outcome,
    issues: codes.map((code) => ({ code, severity: 'error', path: '', message: code })),
  });
  const made = (count: number): TrialCase => ({
    body: {},
    styling: Object.fromEntries(Array.from({ length: count }, (_, i) => [`c${i}`, 1])),
  });

  it('are put together by what is wrong, failures first, each with its smallest case', () => {
    const groups = grouped([
      { trial: made(0), verdict: verdict('true') },
      { trial: made(1), verdict: verdict('refused', 'own-too-short') },
      { trial: made(4), verdict: verdict('not true', 'own-open', 'own-odd', 'own-open') },
      { trial: made(2), verdict: verdict('not true', 'own-open') },
      { trial: made(3), verdict: verdict('refused', 'draft-cannot-agree') },
      { trial: made(5), verdict: verdict('thrown', 'draft-mistake') },
    ]);
    expect(groups.map(({ code, count, failure, smallest }) => [code, count, failure, smallest])).toEqual([
      ['draft-mistake', 1, true, made(5)],
      ['own-open', 2, true, made(2)],
      ['own-odd', 1, true, made(4)],
      ['draft-cannot-agree', 1, true, made(3)],
      ['own-too-short', 1, false, made(1)],
    ]);
  });
});

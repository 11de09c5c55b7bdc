import { mkdtemp, readFile, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { garments } from '../../../drafts/garments.ts';
import { functionPhrases } from '../../../engine/pattern/sentence/formula.ts';
import { shippedBodies } from '../../drafts/drafted.ts';
import { workOut } from '../../engine/pattern/sentence/written-formula.ts';
import { bodkin } from '../session.ts';

interface PrintedStep {
  readonly number: number;
  readonly title: string;
  readonly text: string;
  readonly formula: string | null;
  readonly value: number | null;
  readonly unit: string | null;
  readonly source: string;
  readonly from: readonly Record<string, unknown>[];
}

let out = '';
beforeAll(async () => {
  out = await mkdtemp(join(tmpdir(), 'bodkin-'));
});
afterAll(async () => {
  await rm(out, { recursive: true });
});

const bodyFile = (name: string): string =>
  new URL(`../../../measurements/${name}.yaml`, import.meta.url).pathname;

const draft = (garment: string, body: string, ...more: readonly string[]) =>
  bodkin(['draft', garment, '--body', bodyFile(body), '--out', out, ...more], { garments });

async function stepsOf(
  garment: string,
  body: string,
  ...more: readonly string[]
): Promise<readonly PrintedStep[]> {
  const { out: printed } = await draft(garment, body, '--steps', '--json', ...more);
  return (JSON.parse(printed) as { steps: readonly PrintedStep[] }).steps;
}

const every = garments.flatMap(({ name }) => shippedBodies.map((body) => [name, body] as const));

describe('draft --steps --json', () => {
  test.each(every)('gives formulas that come to their values: %s for %s', async (garment, body) => {
    const steps = await stepsOf(garment, body);
    const wrong = steps.flatMap(({ title, formula, value }) => {
      if (formula === null || value === null) return [];
      const found = workOut(formula);
      return Math.abs(found - value) < 1e-6 ? [] : [{ title, formula, value, found }];
    });
    expect(wrong).toEqual([]);
    expect(steps.filter(({ formula }) => formula !== null).length).toBeGreaterThan(10);
  });

  test('does so where everything was chosen otherwise', async () => {
    const choices = [
      'hemSweep=3000',
      'skirtLength=700',
      'skirtLining=lined',
      'insertFullness=2',
      'opening=side',
    ];
    const steps = await stepsOf('dress', 'leading-lady', ...choices.flatMap((each) => ['--set', each]));
    for (const { title, formula, value } of steps)
      if (formula !== null) expect(Math.abs(workOut(formula) - (value ?? 0)), title).toBeLessThan(1e-6);
  });

  test('says what each step was found from, with the numbers that stand in its formula', async () => {
    const steps = await stepsOf('skirt', 'leading-lady');
    const rise = steps.find(({ title }) => title === 'Waist rises to the side');
    expect(rise).toMatchObject({
      formula: '0.05 x ( 990 - 740 ), at least 4, at most 20',
      value: 12.5,
      unit: 'mm',
      from: [
        { rule: 'K1', value: 0.05, unit: 'ratio' },
        { measurement: 'hipGirth', value: 990, unit: 'mm' },
        { measurement: 'waistGirth', value: 740, unit: 'mm' },
        { rule: 'K2', value: 4, unit: 'mm' },
        { rule: 'K3', value: 20, unit: 'mm' },
      ],
    });
    const values = new Map(steps.map(({ number, value }) => [number, value]));
    const grounds = steps.flatMap(({ from }) => from);
    for (const ground of grounds)
      if (typeof ground.step === 'number') expect(ground.value).toBe(values.get(ground.step) ?? null);
  });

  test('writes angles in degrees', async () => {
    const steps = await stepsOf('skirt', 'leading-lady');
    const lean = steps.find(({ title }) => title === 'Gore seams lean out below the hip');
    expect(lean?.unit).toBe('degrees');
    // A flare of 64.51667, from a hip of 1106 to 1.7 times as much, on a length of 404.95.
    expect(lean?.value).toBeCloseTo((((0.7 * 1106) / 12 / 404.95) * 180) / Math.PI, 9);
  });

  test('changes nothing in the report that is written', async () => {
    await draft('skirt', 'leading-lady', '--steps', '--json');
    expect(JSON.parse(await readFile(join(out, 'report.json'), 'utf8'))).not.toHaveProperty('steps');
  });

  test('is told on a page, every function by its name', async () => {
    const page = await readFile(new URL('../../../drafts/sentences.md', import.meta.url), 'utf8');
    const [toWrite = '', toRead = ''] = page.split('## As another program reads it');
    for (const [name] of functionPhrases) {
      expect(toWrite).toContain(`\`${name}\``);
      expect(toRead.replace(/\s+/g, ' ')).toContain(`\`${name}\``);
    }
  });
});

describe('draft --why', () => {
  test('prints what a step rests on, down to the tape measure', async () => {
    const { out: printed, code } = await draft('skirt', 'leading-lady', '--why', 'waist rises to the side');
    expect(code).toBe(0);
    expect(printed.split('\n').slice(0, 6)).toEqual([
      'Waist rises to the side: 0.05 of (hip girth 990 - waist girth 740), at least 4, at most 20 = 12.5 mm [K1, K2, K3, common practice, no source]',
      '   K1 0.05: the waist rises to the side by this share of hip less waist, for the seam runs over the curve of the hip (common practice, no source)',
      '   hip girth 990 mm: measured. Horizontal, where the seat stands out most.',
      '   waist girth 740 mm: measured. Horizontal, midway between the lowest rib and the top of the hip bone.',
      '   K2 4 mm: and by no less than this (common practice, no source)',
      '   K3 20 mm: nor more than this (common practice, no source)',
    ]);
  });

  test('tells each step once, and says where a measurement is only estimated', async () => {
    const { out: printed } = await draft('skirt', 'prompter', '--why', 'Hem of the side front gore');
    const told = printed.split('\n').filter((line) => line.trim().startsWith('Half hip: finished hip'));
    expect(told.length).toBe(1);
    expect(printed).toContain('Half hip: ');
    const { out: length } = await draft('skirt', 'prompter', '--why', 'hip to hem');
    expect(length).toMatch(/waist height \d+ \d+\/16 in: (measured|estimated)/);
  });

  test('gives the same as data', async () => {
    const { out: printed } = await draft('skirt', 'leading-lady', '--why', 'half waist', '--json');
    const { why } = JSON.parse(printed) as { why: readonly unknown[] };
    expect(why[0]).toMatchObject({
      title: 'Half waist',
      value: 385,
      unit: 'mm',
      from: [
        { measurement: 'waistGirth', value: 740, unit: 'mm', from: [] },
        { choice: 'waistEase', value: 30, unit: 'mm', from: [] },
      ],
    });
  });

  test('finds a step by part of its title, and names the nearest where there is none', async () => {
    const { out: printed } = await draft('skirt', 'leading-lady', '--why', 'straight down');
    expect(printed).toContain('Hem of the centre front gore, straight down: ');
    const { code, err } = await draft('skirt', 'leading-lady', '--why', 'half hpi');
    expect(code).toBe(2);
    expect(err).toContain('Did you mean “Half hip”?');
  });
});

describe('the construction alone', () => {
  const asked = (...more: readonly string[]) =>
    bodkin(['draft', 'skirt', '--body', bodyFile('leading-lady'), ...more], { garments });

  test('is printed without a folder, as it is with one', async () => {
    const [without, written] = await Promise.all([
      asked('--steps', '--json'),
      draft('skirt', 'leading-lady', '--steps', '--json'),
    ]);
    expect(without).toMatchObject({ code: 0, err: '' });
    expect(without.out).toBe(written.out);
  });

  test.each([[[]], [['--steps', '--finished']], [['--why', 'hem sweep', '--also', 'dxf']]])(
    'is not all that %j asks for, which wants a folder',
    async (more) => {
      const { code, err } = await asked(...more);
      expect(code).toBe(2);
      expect(err).toContain('--out DIR');
    },
  );
});

import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { stringify } from 'yaml';
import { dress } from '../../../drafts/dress.ts';
import type { Draft } from '../../../engine/pattern/draft.ts';
import { measurements } from '../../engine/bib.ts';
import { bodkin } from '../session.ts';

let folder = '';
let body = '';

beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'bodkin-'));
  body = join(folder, 'prompter.yaml');
  await writeFile(body, stringify(measurements));
});

afterAll(() => rm(folder, { recursive: true }));

const garments = [dress as Draft];

describe('bodkin body --sensitivity', () => {
  test('prints a row for every measurement, and which three to take again', async () => {
    const { code, out } = await bodkin(['body', body, '--garment', 'dress', '--sensitivity'], { garments });
    expect(code).toBe(0);
    expect(out).toContain('dress for prompter: how far girths, seams and levels move for 5 mm');
    expect(out).toMatch(/^waistHeight +estimated +± \d+ +skirt, front princess \+5\.0; /m);
    expect(out).toMatch(/^bustGirth +measured +± 5 +bust \+5\.0 /m);
    expect(out).toMatch(/^wristGirth +estimated +± \d+$/m);
    expect(out).toMatch(/Take again before cutting:\n1\. .*only estimated.*\n2\. .*\n3\. .*mm\n$/);
  });

  test('prints every girth, seam, level and edge as data', async () => {
    const words = ['body', body, '--garment', 'dress', '--sensitivity', '--json'];
    const { code, out } = await bodkin(words, { garments });
    expect(code).toBe(0);
    const result = JSON.parse(out);
    expect(result).toMatchObject({ ok: true, garment: 'dress', body: 'prompter', step: 5 });
    expect(result.takeAgain).toHaveLength(3);
    expect(result.measurements).toHaveLength(23);
    const hips = result.measurements.find((one: { measurement: string }) => one.measurement === 'hipGirth');
    expect(hips).toMatchObject({ from: 'measured', likelyError: 5 });
    expect(hips.moves).toContainEqual({ kind: 'girth', name: 'hip', on: null, mm: 5 });
    expect(hips.moves).toContainEqual({ kind: 'edge', name: 'neckline', on: 'centre back', mm: 0 });
  });

  test('looks at the dress in the styling that is asked for', async () => {
    const words = ['body', body, '--garment', 'dress', '--sensitivity', '--set', 'skirtLength=600'];
    const { out } = await bodkin(words, { garments });
    expect(out).not.toMatch(/^waistHeight .*skirt/m);
  });

  test('says so where nothing depends on a measurement', async () => {
    const { code, out } = await bodkin(['body', body, '--garment', 'bib', '--sensitivity']);
    expect(code).toBe(0);
    expect(out).toContain('Nothing here depends on a measurement.');
  });

  test.each([
    [['--sensitivity'], 'Say which garment'],
    [['--garment', 'bib'], 'add it, or leave them out'],
    [['--set', 'misfit=1'], 'add it, or leave them out'],
    [['--sensitivity', '--garment', 'bibb'], 'Did you mean “bib”?'],
    [['--sensitivity', '--garment', 'bib', '--set', 'misfit=99'], 'misfit'],
    [['--sensitivity', '--garment', 'bib', '--set', 'mood=bad'], 'No bib today.'],
  ])('refuses %j with a sentence and exit code 2', async (words, sentence) => {
    const { code, out, err } = await bodkin(['body', body, ...words]);
    expect(code).toBe(2);
    expect(out).toBe('');
    expect(err).toContain(sentence);
  });
});

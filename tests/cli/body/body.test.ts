import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { stringify } from 'yaml';
import { measurementNames } from '../../../engine/body/body.ts';
import { bib, measurements } from '../../engine/bib.ts';
import { bodkin } from '../session.ts';

let folder = '';
let body = '';

beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'bodkin-'));
  body = join(folder, 'prompter.yaml');
  await writeFile(body, stringify(measurements));
});

afterAll(() => rm(folder, { recursive: true }));

const garments = [
  { ...bib, shapedBy: ['waistGirth', 'elbowGirth'] as const },
  { ...bib, name: 'cuff', shapedBy: ['elbowGirth'] as const },
];

describe('bodkin body', () => {
  test('says of each measurement which garments it acts on', async () => {
    const { code, out } = await bodkin(['body', body], { garments });
    expect(code).toBe(0);
    expect(out).toMatch(/^prompter, adult; lengths in cm\n/);
    expect(out).toMatch(/^waistGirth +74\.0 +bib +measured$/m);
    expect(out).toMatch(/^elbowGirth +\S+ +± \S+ +bib, cuff +estimated: /m);
    expect(out).toMatch(/^hipGirth +98\.0 +measured$/m);
  });

  test('says which measurements need not be taken', async () => {
    const { out } = await bodkin(['body', body], { garments });
    expect(out).toMatch(/they need not be taken: .*wrist girth.*\.\n/);
    expect(out).not.toMatch(/need not be taken: .*elbow girth/);
  });

  test('asks for all of them where each shapes something', async () => {
    const all = [{ ...bib, shapedBy: measurementNames }];
    expect((await bodkin(['body', body], { garments: all })).out).not.toContain('need not be taken');
  });

  test('as JSON holds the same for other programs', async () => {
    const { out } = await bodkin(['body', body, '--json'], { garments });
    const result = JSON.parse(out);
    expect(Object.keys(result.measurements)).toEqual(measurementNames);
    expect(result.measurements).toMatchObject({
      waistGirth: { value: 740, from: 'measured', actsOn: ['bib'] },
      elbowGirth: { from: 'estimated', actsOn: ['bib', 'cuff'] },
      hipGirth: { actsOn: [] },
    });
  });

  test('reconciles measurements that contradict each other, and shows what was moved', async () => {
    const file = join(folder, 'deep.yaml');
    const deep = {
      ...measurements,
      neckShoulderPointToBustPoint: 26.5,
      neckShoulderPointToWaist: 47.5,
      scyeDepth: 25,
    };
    await writeFile(file, stringify(deep));
    expect((await bodkin(['body', file], { garments })).code).toBe(2);
    const { code, out, err } = await bodkin(['body', file, '--reconcile'], { garments });
    expect(code).toBe(0);
    expect(out).toMatch(/^scyeDepth .* reconciled: written 25\.0$/m);
    expect(out).toMatch(/^scyeDepth +25\.0 +1\d\.\d +-\d\.\d +1\.0 +-\d\.\d +looks misread: measure again/m);
    expect(err).toContain('looks misread');
    const asData = JSON.parse((await bodkin(['body', file, '--reconcile', '--json'], { garments })).out);
    expect(asData.measurements.scyeDepth).toMatchObject({
      from: 'reconciled',
      written: 250,
      suspicion: 'misread',
    });
    expect((await bodkin(['body', body, '--reconcile'], { garments })).out).toContain('Nothing contradicts');
  });
});

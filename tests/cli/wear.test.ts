import { readFileSync } from 'node:fs';
import { readFile, symlink } from 'node:fs/promises';
import { describe, expect, test } from 'vitest';
import { parse, stringify } from 'yaml';
import { refuseOverInput, writeFitting } from '../../cli/write-fitting.ts';
import { garments } from '../../drafts/garments.ts';
import type { FittingChange } from '../../engine/body/fitting.ts';
import { readBody } from '../../engine/body/read.ts';
import { cannotKnow } from '../../engine/wear/cannot-know.ts';
import { bodkin } from './session.ts';
import { temporaryFolder } from './temporary-folder.ts';

const { at, file } = temporaryFolder();

const lady = {
  units: 'cm',
  bustGirth: 92,
  underBustGirth: 75,
  waistGirth: 74,
  hipGirth: 99,
  backNeckPointToWaist: 40.5,
};

const changes: readonly FittingChange[] = [
  { kind: 'take in', seam: 'front princess seam', level: 'under-bust', mm: 13 },
  { kind: 'lower bust point', mm: 9 },
  { kind: 'lower shoulder', mm: 10, side: 'left' },
];

const fittingIn = (data: unknown): readonly FittingChange[] => {
  const read = readBody(data);
  if (!read.ok) throw new Error(read.issues.map(({ message }) => message).join('\n'));
  return read.value.fitting;
};

describe('measurements written again with a fitting', () => {
  test.each(['cm', 'mm', 'in'] as const)(
    'in %s are read as what was found, to a tenth of a mm',
    async (units) => {
      const inUnits = Object.fromEntries(
        Object.entries(lady).map(([name, value]) => [
          name,
          typeof value === 'number' ? (value * 10) / { cm: 10, mm: 1, in: 25.4 }[units] : units,
        ]),
      );
      const to = at(`again-${units}.yaml`);
      await writeFitting(to, stringify(inUnits), changes, units);
      const read = fittingIn(parse(await readFile(to, 'utf8')));
      expect(read.length).toBe(changes.length);
      for (const [i, change] of read.entries()) {
        expect(change).toMatchObject({ ...changes[i], mm: expect.closeTo(changes[i]?.mm ?? 0, 1) });
      }
    },
  );

  test('keep their remarks in YAML, and lose the old fitting', async () => {
    const text = `# taken on a Monday\nname: she\n${stringify(lady)}fitting:\n  - round back: 1 # pinned\n`;
    await writeFitting(at('kept.yaml'), text, changes.slice(0, 1), 'cm');
    const written = await readFile(at('kept.yaml'), 'utf8');
    expect(written).toContain('# taken on a Monday');
    expect(parse(written)).toEqual({
      name: 'she',
      ...lady,
      fitting: [{ 'take in': 'front princess seam', level: 'under-bust', by: 1.3 }],
    });
  });

  test('are JSON where the name says so', async () => {
    await writeFitting(at('again.json'), JSON.stringify(lady), changes, 'cm');
    expect(fittingIn(JSON.parse(await readFile(at('again.json'), 'utf8'))).length).toBe(3);
  });

  test('never take the place of what was read, by whatever name', async () => {
    const body = await file('hers.yaml', stringify(lady));
    await symlink(body, at('also-hers.yaml'));
    for (const to of [body, at('also-hers.yaml'), `${at('.')}/hers.yaml`])
      await expect(refuseOverInput(to, [body])).rejects.toMatchObject({
        issues: [{ code: 'fitting-over-input' }],
      });
    await expect(refuseOverInput(at('new.yaml'), ['-'])).rejects.toMatchObject({
      issues: [{ code: 'fitting-over-input' }],
    });
    await expect(refuseOverInput(at('new.yaml'), [body])).resolves.toBeUndefined();
  });
});

describe('bodkin wear --drafted-for', () => {
  test('says how last season’s bodice sits on the new lead, what to alter and what it cannot know', async () => {
    const old = await file('old.yaml', stringify({ name: 'last season', ...lady, underBustGirth: 69 }));
    const lead = await file('lead.yaml', stringify({ name: 'new lead', ...lady }));
    const words = [
      'wear',
      'bodice',
      '--body',
      lead,
      '--drafted-for',
      old,
      '--out',
      at('worn'),
      '--mesh',
      '20',
    ];
    const altered = at('altered.yaml');
    const { code, out, err } = await bodkin([...words, '--write-fitting', altered], { garments });
    expect(code, err).toBe(0);
    expect(out).toContain('bodice for last season, worn by new lead in cotton');
    expect(out).toMatch(/off: let out the front princess seam at the under-bust by \d+ mm on each layer/);
    for (const sentence of cannotKnow) expect(out).toContain(sentence);
    const written = parse(await readFile(altered, 'utf8'));
    expect(written).toMatchObject({ name: 'last season', underBustGirth: 69 });
    expect(fittingIn(written).map(({ kind }) => kind)).toContain('let out');
    const result = JSON.parse(await readFile(at('worn/worn.json'), 'utf8'));
    expect(result).toMatchObject({ body: 'new lead', draftedFor: 'last season', cannotKnow });

    const over = await bodkin([...words, '--write-fitting', old], { garments });
    expect(over.code).toBe(2);
    expect(over.err).toContain('Name another file');
  });
});

describe('the page of what is worn', () => {
  const page = readFileSync(new URL('../../cli/wear.md', import.meta.url), 'utf8').replace(/\s+/g, ' ');

  test('says all that the command says it cannot know', () => {
    for (const sentence of cannotKnow) expect(page).toContain(sentence);
    expect(readFileSync(new URL('../../README.md', import.meta.url), 'utf8')).toContain('(cli/wear.md)');
  });

  test('names only options that there are', async () => {
    const { out } = await bodkin(['wear', '--help'], { garments });
    const named = new Set([...page.matchAll(/--[a-z][a-z-]+/g)].map(([option]) => option));
    expect(named.size).toBeGreaterThan(5);
    for (const option of named) expect(out).toContain(option);
  });
});

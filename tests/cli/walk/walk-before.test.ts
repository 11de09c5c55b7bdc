import { copyFile, mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { readReport } from '../../../cli/input/read-report.ts';
import { garments } from '../../../drafts/garments.ts';
import { compareDrafts } from '../../../engine/comparison/compare.ts';
import { draftedNow } from '../../../engine/comparison/known-draft.ts';
import { drafted, shippedBody } from '../../drafts/drafted.ts';
import { measurements } from '../../engine/bib.ts';
import { bodkin } from '../session.ts';

let folder = '';
let before = '';
let after = '';

beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'bodkin-'));
  [before, after] = [join(folder, 'before.json'), join(folder, 'after.json')];
  const fitting = [{ 'take in': 'side seam', level: 'waist', by: 1 }];
  await writeFile(before, JSON.stringify(measurements));
  await writeFile(after, JSON.stringify({ ...measurements, fitting }));
});

afterAll(async () => {
  await rm(folder, { recursive: true });
});

const walk = (...words: readonly string[]) =>
  bodkin(['walk', 'dress', '--body', after, ...words], { garments });

describe('walk --before', () => {
  test('prints what moved, by how much and on which pieces, and what did not', async () => {
    const { code, out } = await walk('--before', before);
    expect(code).toBe(0);
    expect(out).toMatch(/^side front +waist +[\d.]+ +[\d.]+ +-(9|10)\.\d +\d/m);
    expect(out).toMatch(/^not moved by so much: .*strap/m);
    expect(out).toMatch(/^take in the side seam at the waist +new$/m);
    expect(out).not.toMatch(/^insert +neckline/m);
  });

  test('as JSON adds the comparison to what walk prints', async () => {
    const { out } = await walk('--before', before, '--json');
    const { comparison, ok } = JSON.parse(out);
    expect(ok).toBe(true);
    expect(comparison.pieces[0]).toMatchObject({ kind: 'redrawn', piece: 'centre front', laidBy: 'fold' });
    expect(Object.keys(comparison.pieces[0].edges[0])).toEqual([
      'kind',
      'edge',
      'before',
      'after',
      'moved',
      'allowance',
      'turn',
    ]);
    expect(Object.keys(comparison)).toEqual([
      'before',
      'after',
      'measurements',
      'fitting',
      'styling',
      'pieces',
      'notions',
      'seams',
      'joins',
      'girths',
      'shapes',
      'notCompared',
    ]);
  });

  test('says that nothing moved when nothing did', async () => {
    const { out } = await bodkin(['walk', 'dress', '--body', before, '--before', before], { garments });
    expect(out).toMatch(/since .*before\.json.*\n\n.*\n.*\n\nnot moved by so much: centre front, /);
    expect(out).toMatch(/^the same: 23 measurements, /m);
    expect(out).toMatch(/^not compared: the words on the pieces/m);
  });

  test('names the earlier file when that cannot be read', async () => {
    const { code, err } = await walk('--before', join(folder, 'none.yaml'));
    expect(code).toBe(2);
    expect(err).toContain('none.yaml');
  });

  test('draws no conclusion from measurements where only a sheet is walked', async () => {
    await bodkin(['draft', 'bib', '--body', before, '--out', join(folder, 'bib')]);
    const { code, err } = await bodkin([
      'walk',
      '--file',
      join(folder, 'bib', 'sheet.svg'),
      '--before',
      before,
    ]);
    expect(code).toBe(2);
    expect(err).toContain('nothing is drafted');
  });
});

describe('walk --before what an earlier draft wrote', () => {
  let old = '';
  const bib = (...words: readonly string[]) => bodkin(['walk', 'bib', '--body', before, ...words]);
  const lonely = async (file: string, name = file): Promise<string> => {
    const alone = await mkdtemp(join(folder, 'alone-'));
    await copyFile(join(old, file), join(alone, name));
    return join(alone, name);
  };

  beforeAll(async () => {
    old = join(folder, 'old');
    await bodkin(['draft', 'bib', '--body', after, '--out', old, '--set', 'notchType=wedge']);
  });

  test.each(['', 'report.json', 'sheet.svg'])(
    'compares everything, whichever is named (%j)',
    async (name) => {
      const { code, out, err } = await bib('--before', join(old, name));
      expect(code).toBe(0);
      expect(err).not.toContain('left out');
      expect(out).toMatch(/^notchType +wedge +slit$/m);
      expect(out).toMatch(/^take in the side seam at the waist +gone$/m);
      expect(out).toMatch(/^not moved by so much: centre front, side front$/m);
      expect(out.match(/^not compared: /gm)).toHaveLength(1);
    },
  );

  test('names what a sheet alone does not say, and what a report alone does not', async () => {
    const sheet = await bib('--before', await lonely('sheet.svg', 'other.svg'));
    expect(sheet.out).toMatch(/^take in the side seam at the waist +gone$/m);
    expect(sheet.out).toMatch(/^the same: 23 measurements/m);
    expect(sheet.out).toMatch(/^not compared: styling/m);
    expect(sheet.out).toMatch(/^not moved by so much: /m);
    expect(sheet.out).not.toMatch(/^the same: .*styling/m);
    const report = await bib('--before', await lonely('report.json'));
    expect(report.out).toMatch(/^not compared: outlines, cutting lines, allowances/m);
    expect(report.out).not.toContain('not moved');
    expect(report.out).toMatch(/^notchType +wedge +slit$/m);
  });

  test('says that measurements are missing where a sheet is from before they stood in one', async () => {
    const file = await lonely('sheet.svg', 'aged.svg');
    const old = await readFile(file, 'utf8');
    const [, text = ''] = /<metadata>(.*?)<\/metadata>/s.exec(old) ?? [];
    const { drawnFor: _, digest: __, ...rest } = JSON.parse(text);
    await writeFile(file, old.replace(text, JSON.stringify(rest)));
    expect((await bib('--before', file)).out).toMatch(
      /^not compared: measurements and fitting \(not known of the earlier draft/m,
    );
  });

  test('takes a report from before measurements stood in one, and says that they are missing', async () => {
    const file = await lonely('report.json');
    const { measurements: _, fitting: __, ...rest } = JSON.parse(await readFile(file, 'utf8'));
    await writeFile(file, JSON.stringify(rest));
    expect((await bib('--before', file)).out).toMatch(/^not compared: measurements and fitting/m);
  });

  test('does not call a shape new of which the earlier report says nothing', () => {
    const made = drafted('skirt', shippedBody('leading-lady'));
    const { shapes: _, ...rest } = JSON.parse(JSON.stringify({ ...made.report, styling: made.styling }));
    const earlier = readReport('report.json', rest);
    if (!earlier.ok) throw new Error(JSON.stringify(earlier.issues));
    const { shapes, notCompared } = compareDrafts(earlier.value, draftedNow(made));
    expect(shapes).toEqual([]);
    expect(notCompared.map(({ what }) => what)).toContainEqual(
      `shapes: ${made.report.shapes.map(({ name }) => name).join(', ')}`,
    );
  });

  test('leaves out what lies beside it of another draft, with a word', async () => {
    const mixed = await mkdtemp(join(folder, 'mixed-'));
    await bodkin(['draft', 'bib', '--body', before, '--out', mixed]);
    const report = JSON.parse(await readFile(join(mixed, 'report.json'), 'utf8'));
    await writeFile(join(mixed, 'report.json'), JSON.stringify({ ...report, body: 'understudy' }));
    const { out, err } = await bib('--before', mixed);
    expect(err).toMatch(/report\.json is of another draft and was left out/);
    expect(out).toMatch(/^not compared: styling/m);
  });

  test('compares two written sheets', async () => {
    const now = join(folder, 'now');
    await bodkin(['draft', 'bib', '--body', before, '--out', now]);
    const { code, out } = await bodkin(['walk', '--file', join(now, 'sheet.svg'), '--before', old]);
    expect(code).toBe(0);
    expect(out).toMatch(/^not compared: styling \(not known of the later draft/m);
  });

  test.each<[string, string, string]>([
    ['an empty folder', '', 'neither sheet.svg nor report.json'],
    ['a drawing that is no sheet', '<svg xmlns="http://www.w3.org/2000/svg"/>', 'does not say'],
    ['half a report', '{"seams": [], "girths": 3}', 'no whole report'],
    ['a report without girths', '{"garment": "bib", "body": "x", "styling": {}, "seams": []}', 'look at “'],
    [
      'the report of a draft that failed',
      '{"garment":"bib","body":"","styling":{},"seams":[],"joins":[],"girths":[],"shapes":[]}',
      'could not be made',
    ],
  ])('refuses %s with one sentence', async (_, text, said) => {
    const place = await mkdtemp(join(folder, 'bad-'));
    const file = join(place, 'old.txt');
    if (text !== '') await writeFile(file, text);
    const { code, err, out } = await bib('--before', text === '' ? place : file);
    expect(code).toBe(2);
    expect(err).toContain(said);
    expect(out).toBe('');
  });
});

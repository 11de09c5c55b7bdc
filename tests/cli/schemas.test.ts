import { mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { Ajv } from 'ajv';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { SchemaName } from '../../cli/results/schemas.ts';
import { garments } from '../../drafts/garments.ts';
import { shippedBodies, shippedBody } from '../drafts/drafted.ts';
import { bib, measurements } from '../engine/bib.ts';
import { bodkin } from './session.ts';

/** Schemas and documents are judged by Ajv, another hand's reading of JSON Schema draft 7. */
const ajv = new Ajv({ allErrors: true, strict: true, allowUnionTypes: true });

/** A schema as it ships. */
const shipped = async (name: SchemaName): Promise<object> =>
  JSON.parse(await readFile(new URL(`../../cli/schemas/${name}.json`, import.meta.url), 'utf8'));

/** What a schema has against a text; nothing where it is as promised. */
async function faults(name: SchemaName, text: string): Promise<unknown> {
  const known = ajv.getSchema(name) ?? ajv.addSchema(await shipped(name), name).getSchema(name);
  if (!known) throw new Error(`no schema ${name}`);
  return known(JSON.parse(text)) === true ? [] : known.errors?.slice(0, 5);
}

let folder = '';
let out = '';
const file = (name: string): string => join(folder, name);
const bodyFile = (name: string): string =>
  new URL(`../../measurements/${name}.yaml`, import.meta.url).pathname;

const fitting = [
  { 'take in': 'side seam', level: 'waist', by: 1 },
  { 'lower shoulder': 1, side: 'left' },
  { 'round back': 0.5 },
];
const traced = `<svg xmlns="http://www.w3.org/2000/svg"><rect id="test-square" x="900" width="100" height="100"/><path d="M0 0H400V500H0Z"/><path id="mid" class="notch" d="M200 490v20"/></svg>`;
const darted = traced.replace('H0Z', 'H250L200 200L150 500H0Z');

beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'bodkin-'));
  out = file('out');
  await writeFile(file('fitted.json'), JSON.stringify({ ...shippedBody('leading-lady'), fitting }));
  await writeFile(file('bare.json'), JSON.stringify({ ...measurements, cup: 'G', age: 12, stature: 120 }));
  await writeFile(file('short.json'), JSON.stringify({ units: 'cm', hipGirth: 9, zip: 3 }));
  // Longer down to the underarm than her back leaves above the bust.
  const apart = {
    ...measurements,
    backNeckPointToWaist: 40,
    neckShoulderPointToWaist: 43,
    neckShoulderPointToBustPoint: 26,
    scyeDepth: 24.5,
  };
  await writeFile(file('apart.json'), JSON.stringify(apart));
  await writeFile(file('reconciled.json'), JSON.stringify({ ...apart, reconcile: true }));
  await writeFile(file('traced.svg'), traced);
  await writeFile(file('darted.svg'), darted);
  await writeFile(file('words.txt'), 'just words');
});
afterAll(() => rm(folder, { recursive: true }));

const all = [...garments, bib];
const asked = (words: readonly string[]) => bodkin([...words, '--json'], { garments: all });

const bodies = [
  ...shippedBodies.map(bodyFile),
  'fitted.json',
  'bare.json',
  'short.json',
  'apart.json',
  'reconciled.json',
];
const pathOf = (body: string): string => (body.startsWith('/') ? body : file(body));

describe('what every command prints is as its schema says', () => {
  test.each(bodies)('of the body %s', async (body) => {
    const of = ['--body', pathOf(body)];
    const garment = /leading|fitted/.test(body) ? 'dress' : 'bodice';
    const drafted = await asked(['draft', garment, ...of, '--out', out, '--steps', '--why', 'waist']);
    expect(await faults('draft', drafted.out)).toEqual([]);
    const walked = await asked(['walk', 'trial', ...of]);
    expect(await faults('walk', walked.out)).toEqual([]);
    const completed = await asked(['body', pathOf(body)]);
    expect(await faults('body', completed.out)).toEqual([]);
    expect([walked.code, completed.code]).toEqual(
      body.includes('short') ? [2, 2] : [expect.any(Number), expect.any(Number)],
    );
  });

  test('of the files beside a pattern, and a sheet walked again', async () => {
    await asked(['draft', 'bodice', '--body', file('fitted.json'), '--out', out]);
    expect(await faults('report', await readFile(join(out, 'report.json'), 'utf8'))).toEqual([]);
    const again = await asked(['walk', '--file', join(out, 'sheet.svg')]);
    expect(again.code).toBe(0);
    expect(await faults('walk', again.out)).toEqual([]);
  });

  test('of what moved since before a fitting', async () => {
    const { out: printed } = await asked([
      ...['walk', 'dress', '--body', file('fitted.json')],
      ...['--before', bodyFile('leading-lady')],
    ]);
    expect(JSON.parse(printed).comparison.pieces.length).toBeGreaterThan(5);
    expect(await faults('walk', printed)).toEqual([]);
    await asked(['draft', 'dress', '--body', bodyFile('leading-lady'), '--out', file('old')]);
    for (const before of ['old', 'old/report.json', 'old/sheet.svg']) {
      const words = ['walk', 'dress', '--body', file('fitted.json'), '--before', file(before)];
      expect(await faults('walk', (await asked(words)).out)).toEqual([]);
    }
  });

  test('of a garment that is not true', async () => {
    const { code, out: printed } = await asked([
      ...['walk', 'bib', '--body', bodyFile('prompter'), '--set', 'misfit=2'],
    ]);
    expect(code).toBe(1);
    expect(await faults('walk', printed)).toEqual([]);
  });

  test('of graded sizes, of the nearest of them, and of what is wrong with a chart', async () => {
    const chart = new URL('../../measurements/charts/astm-d5585-misses-curvy.csv', import.meta.url).pathname;
    const sizes = ['--sizes', chart];
    expect(await faults('grade', (await asked(['grade', 'bodice', ...sizes])).out)).toEqual([]);
    const stock = new URL('../../measurements/charts/workshop-stock.yaml', import.meta.url).pathname;
    for (const body of shippedBodies.map(bodyFile)) {
      const near = await asked(['grade', 'bodice', '--sizes', stock, '--nearest', body]);
      expect(near.code).toBe(0);
      expect(await faults('grade', near.out)).toEqual([]);
    }
    expect(
      await faults('grade', (await asked(['grade', 'bodice', '--sizes', file('words.txt')])).out),
    ).toEqual([]);
    const many = await asked(['draft', 'skirt', '--bodies', chart, '--out', file('many')]);
    expect(await faults('draft-bodies', many.out)).toEqual([]);
    const walked = await asked(['walk', 'skirt', '--bodies', chart, '--lengths']);
    for (const line of walked.out.trim().split('\n')) expect(await faults('walk-line', line)).toEqual([]);
  });

  test('of orders sent, answered and collected, and of each answer', async () => {
    const rows = [
      { id: 'a', garment: 'skirt', body: measurements, write: ['report'] },
      { id: 'b', garment: 'skirt', body: {} },
      { id: '../c', garment: 'skirt', body: measurements },
    ];
    const lines = rows.map((row) => JSON.stringify(row));
    await writeFile(file('orders.ndjson'), lines.join('\n'));
    for (const line of lines) expect(await faults('order', line)).toEqual([]);
    expect(await faults('order', '{"id":"a","garment":"skirt"}')).not.toEqual([]);
    const sent = await asked(['send', file('orders.ndjson'), '--store', file('store')]);
    expect(JSON.parse(sent.out)).toMatchObject({ orders: 2, refused: 1 });
    expect(await faults('send', sent.out)).toEqual([]);
    expect(await faults('work', (await asked(['work', '--store', file('store')])).out)).toEqual([]);
    const collected = await asked(['collect', '--store', file('store'), '--out', file('collected')]);
    expect(JSON.parse(collected.out)).toMatchObject({ allTrue: 1, notDrafted: 1, refused: 1 });
    expect(await faults('collect', collected.out)).toEqual([]);
    const results = await readFile(join(file('collected'), 'results.ndjson'), 'utf8');
    for (const line of results.trim().split('\n')) expect(await faults('order-result', line)).toEqual([]);
    const { out: answers } = await asked(['work', file('orders.ndjson')]);
    expect(answers.trim().split('\n')).toHaveLength(3);
    for (const line of answers.trim().split('\n')) expect(await faults('order-answer', line)).toEqual([]);
  });

  test('of many bodies, line by line', async () => {
    const rows = [measurements, { ...measurements, hipGirth: 'wide' }, [], 3, { id: 'a' }];
    await writeFile(file('many.ndjson'), `${rows.map((row) => JSON.stringify(row)).join('\n')}\nnothing\n`);
    const { out: printed } = await asked(['walk', 'trial', '--bodies', file('many.ndjson')]);
    const lines = printed.trim().split('\n');
    expect(lines).toHaveLength(6);
    for (const line of lines) expect(await faults('walk-line', line)).toEqual([]);
  });

  test.each(['skirt', 'bib'])('of the sensitivity of the %s', async (garment) => {
    const words = ['body', file('fitted.json'), '--sensitivity', '--garment', garment];
    const { code, out: printed } = await asked(words);
    expect(code).toBe(0);
    expect(await faults('sensitivity', printed)).toEqual([]);
  });

  test('of a form', async () => {
    const { code, out: printed } = await asked([
      'body',
      bodyFile('prompter'),
      '--form',
      '--out',
      file('form'),
    ]);
    expect(code).toBe(0);
    expect(await faults('form', printed)).toEqual([]);
    expect(await faults('form', await readFile(join(file('form'), 'form.json'), 'utf8'))).toEqual([]);
  });

  test.each([
    ['a4', 0],
    ['a0', 0],
    ['roll:914', 0],
    ['projector', 0],
    ['a9', 2],
    ['roll:9', 2],
  ])('of a print on %s', async (paper, code) => {
    const of = ['--body', bodyFile('prompter'), '--out', file('x.pdf'), '--paper', paper];
    const printed = await asked(['print', 'skirt', ...of]);
    expect(printed.code).toBe(code);
    expect(await faults('print', printed.out)).toEqual([]);
  });

  test.each(['sew', 'teach'] as const)('of the pages of %s', async (command) => {
    const made = await asked([command, 'skirt', '--body', bodyFile('prompter'), '--out', out]);
    expect(made.code).toBe(0);
    expect(JSON.parse(made.out)).toMatchObject({
      garment: 'skirt',
      files: [{}, {}].map(() => expect.any(String)),
    });
    expect(await faults(command, made.out)).toEqual([]);
    const refused = await asked([command, 'bib', '--body', file('short.json'), '--out', out]);
    expect(refused.code).toBe(2);
    expect(await faults(command, refused.out)).toEqual([]);
  });

  test.each([
    [['traced.svg'], 0],
    [['traced.svg', '--spread', '60', '--along', 'edge 1..edge 3', '--lines', '4'], 0],
    [['traced.svg', '--mirror', 'edge 2'], 0],
    [['traced.svg', '--lengthen', '20', '--at', '40%', '--partner', 'traced.svg#edge 2'], 0],
    [['darted.svg', '--pivot-dart', 'edge 2@50%'], 0],
    [['traced.svg', '--lengthen', '20'], 2],
    [['traced.svg', '--pivot-dart', 'edge 9@10'], 2],
    [['words.txt'], 2],
  ])('of the alteration %j', async ([svg = '', ...words], code) => {
    const at = (word: string): string => (/\.svg/.test(word) ? file(word) : word);
    const { code: ended, out: printed, err } = await asked(['alter', file(svg), ...words.map(at)]);
    expect(ended, err).toBe(code);
    expect(await faults('alter', printed)).toEqual([]);
  });

  test('of a bodice that is worn', async () => {
    const words = ['--body', bodyFile('leading-lady'), '--out', file('worn'), '--mesh', '20', '--maps'];
    const bodice = await asked(['wear', 'bodice', ...words]);
    expect(bodice.code, bodice.err).toBe(0);
    expect(await faults('wear', bodice.out)).toEqual([]);
    expect(await faults('wear', await readFile(file('worn/worn.json'), 'utf8'))).toEqual([]);
    expect(await readFile(file('worn/side.svg'), 'utf8')).toContain('<title>');
    expect(await readFile(file('worn/front-strain.svg'), 'utf8')).toContain('over 3 %');
  });

  test('of a lay of pieces, and of other shapes', async () => {
    const words = ['lay', 'skirt', '--body', bodyFile('prompter'), '--width', '1400', '--rounds', '1'];
    const garment = await asked(words);
    expect(garment.code).toBe(0);
    expect(await faults('lay', garment.out)).toEqual([]);
    const shape = {
      data: [
        [0, 0],
        [2, 0],
        [2, 1],
        [0, 1],
      ],
    };
    const items = [{ id: 1, demand: 3, shape }];
    await writeFile(file('shapes.json'), JSON.stringify({ strip_height: 4, items }));
    const shapes = await asked(['lay', '--shapes', file('shapes.json'), '--rounds', '1']);
    expect(shapes.code, shapes.err).toBe(0);
    expect(await faults('lay', shapes.out)).toEqual([]);
    const refused = await asked(['lay', 'skirt']);
    expect(refused.code).toBe(2);
    expect(await faults('lay', refused.out)).toEqual([]);
  });

  test('of the lists', async () => {
    expect(await faults('list', (await asked(['list'])).out)).toEqual([]);
    expect(await faults('explain', (await asked(['explain'])).out)).toEqual([]);
    expect(await faults('explain', (await asked(['explain', 'edge-unsewn'])).out)).toEqual([]);
  });

  test.each<readonly string[]>([
    ['draft', 'dress'],
    ['draft', 'gown', '--body', 'x', '--out', 'y'],
    ['draft', 'dress', '--body', 'nowhere.yaml', '--out', 'y'],
    ['draft', 'dress', '--body', 'x', '--out', 'y', '--set', 'misfit'],
    ['print', 'dress', '--paper'],
    ['sew', 'dress', '--bdy', 'x'],
    ['teach'],
    ['walk'],
    ['walk', 'bib', '--workers', '0'],
    ['walk', 'bib', '--bodies', 'nowhere.ndjson', '--set', 'misfit=99'],
    ['walk', '--file', 'nowhere.svg'],
    ['alter'],
    ['alter', 'nowhere.svg'],
    ['body', 'nowhere.yaml'],
    ['body', 'x', '--sensitivity'],
    ['body', 'x', '--form'],
    ['list', 'gown'],
    ['explain', 'nothing-at-all'],
    ['knit'],
    ['help', 'knit'],
    ['--draft', 'nowhere.ts', 'list'],
  ])('of a refusal: %s %s %s', async (...words) => {
    const { code, out: printed } = await asked(words);
    expect(code).toBe(2);
    const refused = JSON.parse(printed);
    expect(await faults('refusal', JSON.stringify({ ok: refused.ok, issues: refused.issues }))).toEqual([]);
  });
});

describe('a schema', () => {
  test('holds what is left out, added or called otherwise for wrong', async () => {
    const { out: printed } = await asked([
      'walk',
      'bib',
      '--body',
      bodyFile('prompter'),
      '--set',
      'misfit=2',
    ]);
    const result = JSON.parse(printed);
    const { seams: _, ...less } = result;
    const [issue] = result.issues;
    for (const wrong of [
      less,
      { ...result, more: 1 },
      { ...result, notches: null },
      { ...result, issues: [{ ...issue, code: 'no-such-code' }] },
      { ...result, issues: [{ ...issue, severity: 'grave' }] },
    ])
      expect(await faults('walk', JSON.stringify(wrong))).not.toEqual([]);
    const own = { ...result, issues: [{ ...issue, code: 'own-apron-too-short' }] };
    expect(await faults('walk', JSON.stringify(own))).toEqual([]);
  });
});

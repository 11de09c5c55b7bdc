import { readdir, readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { Readable } from 'node:stream';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { skirt } from '../../../drafts/skirt/skirt.ts';
import { edgeLength } from '../../../engine/geometry/edge.ts';
import type { Draft } from '../../../engine/pattern/draft.ts';
import { drafted, pieceOf } from '../../drafts/drafted.ts';
import { bodkin } from '../session.ts';
import { temporaryFolder } from '../temporary-folder.ts';

const garments = [skirt as Draft];

const { at, file } = temporaryFolder();

const table = `# invented
name,units,age,bustGirth,waistGirth,hipGirth,backNeckPointToWaist,stature
prompter,cm,34,92,74,98,41,
"scene painter, tall",in,,37,30 1/2,41,16.5,70
`;

const body = { units: 'cm', bustGirth: 92, waistGirth: 74, hipGirth: 98, backNeckPointToWaist: 41 };

const linesOf = (out: string) =>
  out
    .trim()
    .split('\n')
    .map((line) => JSON.parse(line));

/** What comes by standard input, for the next command. */
const givenByPipe = (text: string) =>
  vi
    .spyOn(process, 'stdin', 'get')
    .mockReturnValue(Readable.from([Buffer.from(text)]) as typeof process.stdin);

afterEach(() => vi.restoreAllMocks());

describe('walk --bodies', () => {
  const walk = (...words: string[]) => bodkin(['walk', 'skirt', ...words], { garments });

  it('takes a table, row by row, as it takes lines', async () => {
    const { code, out } = await walk('--bodies', await file('bodies.csv', table));
    expect(code).toBe(0);
    expect(linesOf(out)).toMatchObject([
      { id: 'prompter', ok: true },
      { id: 'scene painter, tall', ok: true },
    ]);
    const semicolons = table
      .replace('# invented\n', '')
      .replaceAll(',', ';')
      .replace('painter; tall', 'painter, tall');
    expect(linesOf((await walk('--bodies', await file('semi.csv', semicolons))).out)).toHaveLength(2);
  });

  it('takes lines from standard input where the file is called -', async () => {
    givenByPipe(`${JSON.stringify({ ...body, name: 'prompter' })}\n`);
    const { code, out } = await walk('--bodies', '-');
    expect(code).toBe(0);
    expect(linesOf(out)).toMatchObject([{ id: 'prompter', ok: true }]);
  });

  it.each([
    [
      'bodies.ndjson',
      [
        { ...body, id: 'usher' },
        { ...body, id: 'M@uller' },
      ]
        .map((each) => JSON.stringify(each))
        .join('\n'),
    ],
    ['names.csv', `${table.split('\n').slice(0, 3).join('\n')}\nM@uller,cm,34,92,74,98,41,\n`],
  ])('tells by its line what is no text in UTF-8, and walks the others: %s', async (name, text) => {
    const latin1 = Buffer.from(text.replace('@', '\u00fc'), 'latin1');
    const { code, out } = await walk('--bodies', await file(name, latin1));
    expect(code).toBe(2);
    const [first, second] = linesOf(out);
    expect(first).toMatchObject({ ok: true });
    expect(second.issues).toMatchObject([{ code: 'line-not-text', severity: 'error' }]);
    expect(second.issues[0].message).toMatch(/^Line \d is not all text in UTF-8, at “.*M”/);
    const utf8 = await file(`utf8-${name}`, text.replace('@', '\u00fc'));
    expect((await walk('--bodies', utf8)).code).toBe(0);
  });

  it('calls the rows of a size chart by their sizes', async () => {
    const chart = new URL('../../../measurements/charts/astm-d5585-misses-curvy.csv', import.meta.url)
      .pathname;
    const { code, out } = await walk('--bodies', chart);
    expect(code).toBe(0);
    expect(linesOf(out).map(({ id }) => id)).toEqual([
      '00',
      '0',
      '2',
      '4',
      '6',
      '8',
      '10',
      '12',
      '14',
      '16',
      '18',
      '20',
    ]);
  });

  it('tells a row that cannot be read, and goes on', async () => {
    const rows = `${table}third,cm,many,92,74,98,41,\nfourth,cm,,92,wide,98,41,\nfifth,cm,,92,74,98,41,\n`;
    const { code, out } = await walk('--bodies', await file('some.csv', rows));
    expect(code).toBe(2);
    expect(linesOf(out).map(({ ok }) => ok)).toEqual([true, true, false, false, true]);
  });

  it('tells an id that is too long by its line', async () => {
    const long = JSON.stringify({ ...body, id: 'x'.repeat(201) });
    const { code, out } = await walk('--bodies', await file('long.ndjson', `${long}\n`));
    expect(code).toBe(2);
    expect(linesOf(out)).toMatchObject([{ id: 1, ok: false, issues: [{ code: 'id-too-long' }] }]);
  });

  it('ends with the code of a fault where the program fails on a body, and goes on', async () => {
    const path = await file('two.ndjson', `${JSON.stringify(body)}\n${JSON.stringify(body)}\n`);
    const { code, out } = await bodkin(['walk', 'bib', '--bodies', path, '--set', 'mood=broken']);
    expect(code).toBe(70);
    expect(linesOf(out).map(({ issues }) => issues[0].code)).toEqual(['program-fault', 'program-fault']);
  });

  it.each([
    ['a quote left open', `${table}"third,cm\n`],
    ['too few cells', `${table}third,cm\n`],
    ['a column twice', table.replace('age', 'name')],
  ])('refuses a table with %s in a sentence', async (_, text) => {
    const { code, err } = await walk('--bodies', await file('bad.csv', text));
    expect(code).toBe(2);
    expect(err).toMatch(/is no table of measurements|two columns are called/);
  });

  it('adds finished girths and the lengths of all edges, as the draft has them', async () => {
    const path = await file('one.ndjson', `${JSON.stringify(body)}\n{"units":"cm"}\n`);
    const [made, failed] = linesOf((await walk('--bodies', path, '--lengths')).out);
    const skirtNow = drafted('skirt', body);
    expect(made.girths).toEqual({ waist: 770, hip: 1096, hem: expect.any(Number) });
    for (const { name, edges } of skirtNow.garment.pieces)
      for (const edge of edges) expect(made.edges[name][edge.name]).toBeCloseTo(edgeLength(edge), 2);
    expect(Object.keys(made.edges)).toHaveLength(4);
    expect(pieceOf(skirtNow, 'skirt side front').name).toBe('skirt side front');
    expect(failed).toMatchObject({ ok: false, girths: {}, edges: {} });
    expect(linesOf((await walk('--bodies', path)).out)[0]).not.toHaveProperty('edges');
    expect((await walk('--body', path, '--lengths')).code).toBe(2);
  });
});

describe('draft --bodies', () => {
  const draft = (...words: string[]) => bodkin(['draft', 'skirt', ...words], { garments });

  it('writes a folder for each body, as for that body alone', async () => {
    const out = at('many');
    const { code, out: said, err } = await draft('--bodies', await file('bodies.csv', table), '--out', out);
    expect(code).toBe(0);
    expect(said).toMatch(/^prompter +prompter +yes +/m);
    expect(err).toContain(`wrote 2 folders into ${out}`);
    expect((await readdir(out)).sort()).toEqual(['prompter', 'scene-painter-tall']);
    const alone = at('alone');
    const one = await file('prompter.json', JSON.stringify({ ...body, name: 'prompter', age: 34 }));
    await draft('--body', one, '--out', alone);
    for (const name of await readdir(alone))
      expect(await readFile(join(out, 'prompter', name), 'utf8')).toBe(
        await readFile(join(alone, name), 'utf8'),
      );
  });

  it('keeps bodies of one name apart, leads nowhere but into the folder, and goes on after one that fails', async () => {
    const bodies = [
      { ...body, id: '../../up' },
      { ...body, id: 'Lady' },
      { ...body, id: 'lady' },
      { ...body, id: '…' },
      { ...body, id: 'bad', waistGirth: 9000 },
    ];
    const path = await file('odd.ndjson', bodies.map((one) => `${JSON.stringify(one)}\n`).join(''));
    const out = at('odd');
    const { code, out: said, err } = await draft('--bodies', path, '--out', out, '--json');
    expect(code).toBe(2);
    expect((await readdir(out)).sort()).toEqual(['Lady', 'body', 'lady-2', 'up']);
    expect(JSON.parse(said)).toMatchObject([
      { id: '../../up', ok: true, folder: 'up' },
      { folder: 'Lady' },
      { folder: 'lady-2' },
      { folder: 'body' },
      { id: 'bad', ok: false, folder: null, issues: [{ path: 'waistGirth' }] },
    ]);
    expect(err).toContain('bad: waistGirth');
    expect(await readFile(join(out, 'up', 'sheet.svg'), 'utf8')).toContain('../../up');
  });

  it('wants one body or many, and neither both nor none', async () => {
    const out = at('none');
    const path = await file('bodies.csv', table);
    expect((await draft('--out', out)).err).toContain('--body FILE, or --bodies FILE');
    expect((await draft('--out', out, '--bodies', path, '--body', path)).code).toBe(2);
    expect((await draft('--out', out, '--bodies', await file('empty.csv', ''))).err).toContain(
      'no measurements',
    );
    expect((await draft('--out', out, '--bodies', at('not-there.csv'))).err).toContain('Cannot read');
  });
});

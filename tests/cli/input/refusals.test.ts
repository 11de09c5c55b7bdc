import { mkdir, readdir, readFile, writeFile } from 'node:fs/promises';
import { createServer } from 'node:http';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { describe, expect, it } from 'vitest';
import { stringify } from 'yaml';
import { readEarlier } from '../../../cli/input/earlier-draft.ts';
import { Unusable } from '../../../cli/input/unusable.ts';
import { servedFrom } from '../../../cli/open/open.ts';
import { chunkFile, openStore } from '../../../cli/orders/store.ts';
import { readChunk } from '../../../cli/orders/work-chunk.ts';
import type { IssueCode } from '../../../engine/issue-codes/issue-codes.ts';
import { measurements } from '../../engine/bib.ts';
import { bodkin } from '../session.ts';
import { commandFolder } from '../temporary-folder.ts';

const given = commandFolder();

/** Files that a line may name, by the word that stands for each in it. */
const files: Readonly<Record<string, string>> = {
  HUGE: `# ${'x'.repeat(6_000_000)}`,
  KNOTTY: `a: ${'['.repeat(3000)}${']'.repeat(3000)}`,
  BROKEN: '- [a, b\n- }',
  LONG: stringify({ ...measurements, fitting: Array.from({ length: 61 }, () => ({ 'round back': 1 })) }),
  MANY: stringify({
    ...measurements,
    ...Object.fromEntries(Array.from({ length: 40 }, (_, i) => [`field${i}`, 1])),
  }),
  MAYBE: stringify({ ...measurements, reconcile: 'maybe' }),
  OFF: stringify({
    ...measurements,
    neckShoulderPointToBustPoint: 26.5,
    neckShoulderPointToWaist: 47.5,
    scyeDepth: 25,
    reconcile: true,
  }),
  LITTLE: stringify({
    ...measurements,
    neckShoulderPointToBustPoint: 26.5,
    neckShoulderPointToWaist: 45.5,
    scyeDepth: 22.5,
    reconcile: true,
  }),
  TWICE: 'name,bustGirth,bustGirth\na,92,92\n',
  RAGGED: 'name,bustGirth\n"a,92\n',
  CHART: stringify({
    units: 'cm',
    sizes: [{ size: '40', ...measurements, name: undefined, units: undefined }],
  }),
  EMPTY: '',
  REPORT: '{"garment":"bib","body":"x","styling":{},"seams":7,"joins":[],"girths":[],"ok":true}',
  UNMADE: '{"garment":"bib","body":"","styling":{},"seams":[],"joins":[],"girths":[],"ok":false}',
  NOTHING: 'export const five = 5;\n',
  SHAPES: '{"shapes":7}',
  PIECE:
    '<svg xmlns="http://www.w3.org/2000/svg"><rect id="test-square" x="900" width="100" height="100"/><path d="M0 0H400V500H0Z"/><path id="other" d="M0 600H400V990H0Z"/></svg>',
  NEARLY:
    '<svg xmlns="http://www.w3.org/2000/svg"><rect id="test-square" x="900" width="100" height="100"/><path d="M0 0H400V500H0V0.4"/></svg>',
};
const ends: Readonly<Record<string, string>> = {
  TWICE: 'csv',
  RAGGED: 'csv',
  REPORT: 'json',
  UNMADE: 'json',
  NOTHING: 'ts',
  SHAPES: 'json',
  PIECE: 'svg',
  NEARLY: 'svg',
};

/** Runs a line in which words in capitals are files, BODY a body, OUT a folder to write to and DIR an empty one. */
async function codesOf(line: string): Promise<{ readonly code: number; readonly codes: readonly string[] }> {
  const places = new Map([
    ['BODY', given.body],
    ['OUT', given.out],
    ['DIR', join(given.folder, 'dir')],
    ['GONE', join(given.folder, 'gone')],
    ['WORN', join(given.folder, 'worn')],
  ]);
  await mkdir(join(given.folder, 'dir'), { recursive: true });
  await mkdir(join(given.folder, 'worn'), { recursive: true });
  await writeFile(join(given.folder, 'worn', 'worn.json'), '{"garment":"dress","draftedFor":"usher"}');
  for (const [word, text] of Object.entries(files))
    if (line.includes(word)) {
      places.set(word, join(given.folder, `${word.toLowerCase()}.${ends[word] ?? 'yaml'}`));
      await writeFile(places.get(word) ?? '', text);
    }
  const ran = await bodkin([...line.split(' ').map((word) => places.get(word) ?? word), '--json']);
  const { issues = [] } = JSON.parse(ran.out || '{}') as { issues?: readonly { readonly code: string }[] };
  return { code: ran.code, codes: issues.map((issue) => issue.code) };
}

/** The codes of what a promise was broken off with. */
const codesIn = (error: unknown): readonly string[] =>
  error instanceof Unusable ? error.issues.map(({ code }) => code) : [String(error)];

const draft = 'draft bib --body BODY --out OUT';

describe('a line that cannot be carried out', () => {
  it.each<[IssueCode, string]>([
    ['unknown-code', 'explain no-such-code'],
    ['unknown-step', `${draft} --why hemming`],
    ['date-too-long', `${draft} --date ${'x'.repeat(41)}`],
    ['setting-not-understood', `${draft} --set misfit`],
    ['roll-width', 'print bib --body BODY --out OUT --paper roll:9'],
    ['garment-missing', 'walk --body BODY'],
    ['no-earlier-draft', 'walk bib --body BODY --before DIR'],
    ['report-damaged', 'walk bib --body BODY --before REPORT'],
    ['no-sewing-order', 'sew bib --body BODY --out OUT'],
    ['no-draft', 'list --draft NOTHING'],
    ['cannot-read', 'walk bib --body GONE'],
    ['file-too-large', 'walk bib --body HUGE'],
    ['file-knotty', 'walk bib --body KNOTTY'],
    ['not-yaml', 'walk bib --body BROKEN'],
    ['fitting-too-long', 'walk bib --body LONG'],
    ['unknown-fields', 'walk bib --body MANY'],
    ['reconcile-not-understood', 'walk bib --body MAYBE'],
    ['garment-needed', 'body BODY --sensitivity'],
    ['sensitivity-not-asked', 'body BODY --garment bib'],
    ['form-not-asked', 'body BODY --out OUT'],
    ['unknown-posture', 'body BODY --form --out OUT --set pride=1'],
    ['posture-out-of-range', 'body BODY --form --out OUT --set backHollow=900'],
    ['column-twice', 'grade bib --sizes TWICE'],
    ['not-a-table', 'grade bib --sizes RAGGED'],
    ['unknown-alignment', 'grade bib --sizes CHART --align moon'],
    ['not-shapes', 'lay --shapes SHAPES --width 900'],
    ['length-not-understood', 'lay bib --body BODY --width wide'],
    ['length-not-understood', 'lay bib --body BODY --width 55'],
    ['number-not-understood', 'wear bib --body BODY --out OUT --mesh 3'],
    ['unknown-cloth', 'wear bib --body BODY --out OUT --cloth coton'],
    ['report-empty', 'walk bib --body BODY --before UNMADE'],
    ['worn-of-another', 'sew bib --body BODY --out OUT --worn WORN'],
    ['no-store', 'collect --store GONE --out OUT'],
    ['no-orders', 'send EMPTY --store OUT'],
    ['then-nothing', 'alter PIECE --spread 10 --along left..right --then --out OUT'],
    ['two-at-once', 'alter PIECE --spread 10 --lengthen 10 --out OUT'],
    ['along-missing', 'alter PIECE --spread 10 --out OUT'],
    ['cup-missing', 'alter PIECE --cup-to D --along left..right --out OUT'],
    ['level-missing', 'alter PIECE --lengthen 10 --out OUT'],
    ['edges-miscounted', 'alter PIECE --edges top,side'],
  ])('is refused by name: %s (%s)', async (code, line) => {
    const ran = await codesOf(line);
    expect(ran.codes).toContain(code);
    expect(ran.code).toBe(2);
  });

  it.each<[IssueCode, string]>([
    ['outline-closed', 'alter NEARLY'],
    ['other-outlines', 'alter PIECE'],
    ['measurement-misread', 'body OFF'],
    ['measurement-reconciled', 'body LITTLE'],
  ])('and one that can be is told what was done for it: %s (%s)', async (code, line) => {
    const ran = await codesOf(line);
    expect(ran.codes).toContain(code);
    expect(ran.code).toBe(0);
  });

  it('is refused where an earlier draft holds no lines, or measurements where nothing is drafted', async () => {
    await codesOf(draft);
    const report = join(given.out, 'report.json');
    await writeFile(
      join(given.folder, 'alone.json'),
      JSON.stringify((await import(report, { with: { type: 'json' } })).default),
    );
    expect((await codesOf(`${draft} --before ${join(given.folder, 'alone.json')}`)).codes).toContain(
      'no-outlines',
    );
    const sheet = join(given.out, 'sheet.svg');
    // Beside a report that is of another draft the sheet alone is compared, and that is said.
    const told = JSON.parse(await readFile(report, 'utf8')) as object;
    await writeFile(report, JSON.stringify({ ...told, body: 'somebody else' }));
    const earlier = await readEarlier(given.out);
    expect(earlier.kind === 'written' && earlier.issues).toContainEqual(
      expect.objectContaining({ code: 'not-of-that-draft', severity: 'note', path: report }),
    );
    expect((await codesOf(`walk --file ${sheet} --before BODY`)).codes).toContain('before-not-drafted');
  });

  it('is refused where nothing was sent to a store, or not that, or a chunk is not what was sent', async () => {
    const store = await openStore(join(given.folder, 'store'));
    const collected = (...more: readonly string[]) =>
      codesOf(['collect', '--store', store.folder, '--out', 'OUT', ...more].join(' '));
    expect((await collected()).codes).toEqual(['no-set']);
    const orders = join(given.folder, 'orders.ndjson');
    const order = { id: 'a', garment: 'skirt', body: measurements, write: ['report'] };
    await writeFile(orders, `${JSON.stringify(order)}\n`);
    expect((await codesOf(`send ${orders} --store ${store.folder}`)).codes).toEqual([]);
    expect((await collected('--set', 'another')).codes).toEqual(['no-set']);
    const [chunk = ''] = (await readdir(join(store.folder, 'chunks'))).map(
      (name) => name.split('.')[0] ?? '',
    );
    expect(typeof (await readChunk(store, chunk))).toBe('function');
    await writeFile(chunkFile(store, chunk), '{}\n');
    expect(await readChunk(store, chunk).catch(codesIn)).toEqual(['chunk-damaged']);
    expect(await readChunk(store, 'gone').catch(codesIn)).toEqual(['chunk-damaged']);
  });

  it('is refused where another listens on the port, or nothing is built', async () => {
    const server = createServer().listen(0, '127.0.0.1');
    await new Promise((listens) => server.once('listening', listens));
    const address = server.address();
    const port = typeof address === 'object' ? address?.port : undefined;
    const gone = pathToFileURL(`${join(given.folder, 'gone')}/`);
    expect(await servedFrom(gone, Number(port)).catch(codesIn)).toEqual(['page-not-built']);
    const page = new URL('../../../cli/page/', import.meta.url);
    expect(await servedFrom(page, Number(port)).catch(codesIn)).toEqual(['cannot-listen']);
    server.close();
  });
});

import { mkdir, readdir, readFile } from 'node:fs/promises';
import { basename } from 'node:path';
import { fileURLToPath } from 'node:url';
import { unzipSync } from 'fflate';
import { afterAll, beforeAll, describe, expect, test, vi } from 'vitest';
import { parse } from 'yaml';
import { readFonts } from '../../../cli/files/fonts.ts';
import { answer } from '../../../cli/page/answers.ts';
import type { PageAnswer, PageRequest } from '../../../cli/page/messages.ts';
import type { ChartFile } from '../../../cli/page/requests/sizes-messages.ts';
import { usualFigures } from '../../../cli/page/views/cloth/her-unit.ts';
import { writeFitting } from '../../../cli/wear/write-fitting.ts';
import { garments } from '../../../drafts/index.ts';
import { bodkin } from '../session.ts';
import { temporaryFolder } from '../temporary-folder.ts';

/* What the worker of the page writes for its views, held to the files of the command line. */

const folder = temporaryFolder();
const file = (name: string): string =>
  fileURLToPath(new URL(`../../../measurements/${name}`, import.meta.url));
const lady = file('leading-lady.yaml');
const stock = file('charts/en-13402-3-women.yaml');

/** The fonts that lie beside the page. */
beforeAll(async () => {
  const { regular, bold } = await readFonts();
  vi.stubGlobal('fetch', async (url: URL) => new Response(url.href.includes('bold') ? bold : regular));
});
afterAll(() => vi.unstubAllGlobals());

/** All that is answered to a request, to its end. */
async function answers(request: PageRequest): Promise<readonly PageAnswer[]> {
  const all: PageAnswer[] = [];
  await answer(request, (one) => all.push(one));
  return all;
}

const command = async (...words: readonly string[]): Promise<void> => {
  const { code, err } = await bodkin(words, { garments: Object.values(garments) });
  expect(code, err).toBe(0);
};

async function expectSame(zip: PageAnswer | undefined, out: string): Promise<void> {
  const handed = zip && 'handed' in zip ? zip.handed[0] : undefined;
  const files = unzipSync(handed?.bytes ?? new Uint8Array());
  expect(Object.keys(files).toSorted()).toEqual((await readdir(out)).toSorted());
  for (const [name, bytes] of Object.entries(files))
    expect(Buffer.compare(Buffer.from(bytes), await readFile(`${out}/${name}`)), name).toBe(0);
}

const asked = async (garment: string) => ({
  body: parse(await readFile(lady, 'utf8')),
  garment,
  choices: {},
});

describe('the worker of the page', () => {
  test('grades as the command line does, and tells each size on the way', async () => {
    const chart = { file: basename(stock), text: await readFile(stock, 'utf8'), units: '', bodies: [] };
    const told = await answers({
      kind: 'sizes',
      number: 3,
      does: 'grade',
      asked: await asked('bodice'),
      chart,
    });
    expect(told.filter(({ kind }) => kind === 'grading')).toHaveLength(12);
    expect(told.at(-1)).toMatchObject({ kind: 'graded', number: 3, grade: { ok: true, garment: 'bodice' } });
    const [nest] = await answers({
      ...{ kind: 'sizes', number: 3, does: 'nest', piece: 'side back' },
      ...{ size: '92', cup: '', along: 'sizes', line: 'stitching', beside: true },
    });
    expect(nest).toMatchObject({ nest: { words: expect.stringContaining('92 in a heavy line') } });
    const out = folder.at('grade');
    await command('grade', 'bodice', '--sizes', stock, '--out', out, '--pdf');
    const [written] = await answers({ kind: 'sizes', number: 3, does: 'take', line: 'stitching' });
    await expectSame(written, out);
  }, 120_000);

  test('finds the size that the command line finds nearest, and says so in its words', async () => {
    const chart = { file: basename(stock), text: await readFile(stock, 'utf8'), units: '', bodies: [] };
    const [found] = await answers({
      ...{ kind: 'sizes', number: 1, does: 'nearest', chart },
      asked: await asked('bodice'),
    });
    const { out } = await bodkin(['grade', 'bodice', '--sizes', stock, '--nearest', lady], {
      garments: Object.values(garments),
    });
    if (found?.kind !== 'nearest found' || !found.near) throw new Error('not found');
    expect(out.startsWith(`${found.near.words}\n`)).toBe(true);
    for (const change of found.near.changes) expect(out).toContain(`  ${change}\n`);
  }, 60_000);

  test('grades a chart that names bodies as the command line does, once their files are there', async () => {
    const named = `units: cm\nsizes:\n  - {size: "40", bustGirth: 92, waistGirth: 76, hipGirth: 99, backNeckPointToWaist: 41}\n  - {size: "42", bustGirth: 96, waistGirth: 80, hipGirth: 103, backNeckPointToWaist: 41.2}\n  - {body: bodies/leading-lady.yaml}\n`;
    const body = await readFile(lady, 'utf8');
    const file = await folder.file('named.yaml', named);
    await mkdir(folder.at('bodies'), { recursive: true });
    await folder.file('bodies/leading-lady.yaml', body);
    const graded = async (bodies: ChartFile['bodies']) => {
      const told = await answers({
        ...{ kind: 'sizes', number: 4, does: 'grade', asked: await asked('skirt') },
        chart: { file: 'named.yaml', text: named, units: '', bodies },
      });
      const last = told.at(-1);
      if (last?.kind !== 'graded') throw new Error('not graded');
      return last;
    };
    const without = await graded([]);
    expect([without.grade, without.needs]).toEqual([undefined, ['leading-lady.yaml']]);
    expect(without.issues[0]?.message).toContain('leading-lady.yaml');
    const all = await graded([{ file: 'leading-lady.yaml', text: body }]);
    expect([all.grade?.ok, all.needs]).toEqual([true, []]);
    const out = folder.at('named');
    await command('grade', 'skirt', '--sizes', file, '--out', out, '--pdf');
    const [written] = await answers({ kind: 'sizes', number: 4, does: 'take', line: 'stitching' });
    await expectSame(written, out);
  }, 60_000);

  test('refuses a chart in words', async () => {
    const chart = { file: 'mine.csv', text: 'size,bustGirth\n40,92\n', units: '', bodies: [] };
    const told = await answers({
      ...{ kind: 'sizes', number: 1, does: 'grade', chart },
      asked: await asked('bodice'),
    });
    expect(told.at(-1)).toMatchObject({ kind: 'graded', grade: undefined });
    expect(JSON.stringify(told.at(-1))).toContain('Say in which unit you measured');
  });

  test('lays as the command line does in as many rounds, each plan better than the last', async () => {
    const cloth = { ...usualFigures(false), cloth: 'folded' } as const;
    const told = await answers({
      ...{ kind: 'lay', number: 2, does: 'begin', asked: await asked('bodice') },
      ...{ cloth, seconds: 600, rounds: 30 },
    });
    const laid = told.find((one) => one.kind === 'laid');
    expect(laid).toMatchObject({ issues: [], plans: [{ cloth: 'cloth' }, { cloth: 'lining' }] });
    const out = folder.at('lay');
    await mkdir(out, { recursive: true });
    await command(
      'lay',
      'bodice',
      '--body',
      lady,
      '--width',
      '1400',
      '--rounds',
      '30',
      '--seconds',
      '600',
      '--out',
      out,
    );
    const [written] = await answers({ kind: 'lay', number: 2, does: 'take' });
    await expectSame(written, out);
  }, 120_000);

  test('refuses a cloth in words that name the field', async () => {
    const cloth = { ...usualFigures(false), cloth: 'folded', width: 'wide' } as const;
    const told = await answers({
      ...{ kind: 'lay', number: 2, does: 'begin', asked: await asked('bodice') },
      ...{ cloth, seconds: 5 },
    });
    expect(told.at(-1)).toMatchObject({
      issues: [
        { message: expect.stringMatching(/^The width of the cloth takes a length from 100 to 5000 mm\b/) },
      ],
    });
  });

  test('adds a finding to a fitting as the command line writes it', async () => {
    const body = {
      ...(await asked('bodice')).body,
      fitting: [{ 'take in': 'side seam', level: 'waist', by: 0.5 }],
    };
    const changes = [{ kind: 'take in', seam: 'side seam', level: 'waist', mm: 4 }] as const;
    const [fitted] = await answers({ kind: 'fit', body, changes });
    const to = folder.at('altered.yaml');
    await writeFitting(to, 'units: cm\n', [{ ...changes[0], mm: 9 }], 'cm');
    expect(fitted).toEqual({ kind: 'fitted', fitting: parse(await readFile(to, 'utf8')).fitting });
  });
});

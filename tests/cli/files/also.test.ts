import { readdir, readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { skirt } from '../../../drafts/skirt/skirt.ts';
import type { Draft } from '../../../engine/pattern/draft.ts';
import { measurements } from '../../engine/bib.ts';
import { readCuttingFile } from '../../engine/cutting-file/read-back.ts';
import { bodkin } from '../session.ts';
import { commandFolder } from '../temporary-folder.ts';

const given = commandFolder();

const versionOf = async (path: string): Promise<unknown> =>
  readCuttingFile(await readFile(path, 'utf8')).header.$ACADVER;

describe('--also', () => {
  it('writes cutting files beside a draft, R12 or with curves or both, each once', async () => {
    const ran = await bodkin([
      ...['draft', 'bib', '--body', given.body, '--out', given.out],
      ...['--also', 'dxf', '--also', 'dxf-curves', '--also', 'dxf'],
    ]);
    expect(ran.err).toContain('wrote 2 pieces, cutting.dxf, cutting-curves.dxf, sheet.svg and report.json');
    expect((await readdir(given.out)).filter((name) => name.endsWith('.dxf')).sort()).toEqual([
      'cutting-curves.dxf',
      'cutting.dxf',
    ]);
    expect(await versionOf(join(given.out, 'cutting.dxf'))).toBe('AC1009');
    expect(await versionOf(join(given.out, 'cutting-curves.dxf'))).toBe('AC1015');
  });

  it('names a cutting file of an earlier draft that is left beside a new one', async () => {
    await bodkin(['draft', 'bib', '--body', given.body, '--out', given.out, '--also', 'dxf']);
    const ran = await bodkin(['draft', 'bib', '--body', given.body, '--out', given.out]);
    expect(ran.err).toContain('left from an earlier one: cutting.dxf');
  });

  it('writes the same with the words and notches of the draft, whatever it was asked with', async () => {
    const asked = ['--date', '2031-05-04', '--set', 'notchType=wedge', '--also', 'dxf-curves'];
    await bodkin(['draft', 'bib', '--body', given.body, '--out', given.out, ...asked]);
    const pdf = join(given.folder, 'paper', 'bib.pdf');
    const told = await bodkin([
      'print',
      'bib',
      '--body',
      given.body,
      '--paper',
      'a4',
      '--out',
      pdf,
      ...asked,
      '--json',
    ]);
    expect(JSON.parse(told.out).cuttingFiles).toEqual(['bib-curves.dxf']);
    expect((await readdir(join(given.folder, 'paper'))).sort()).toEqual(['bib-curves.dxf', 'bib.pdf']);
    const text = await readFile(join(given.out, 'cutting-curves.dxf'), 'utf8');
    expect(await readFile(join(given.folder, 'paper', 'bib-curves.dxf'), 'utf8')).toBe(text);
    expect(text).toContain('2031-05-04');
  });

  it('writes one into the folder of each of many bodies', async () => {
    const bodies = join(given.folder, 'bodies.ndjson');
    await writeFile(bodies, ['a', 'b'].map((id) => `${JSON.stringify({ ...measurements, id })}\n`).join(''));
    const ran = await bodkin(['draft', 'bib', '--bodies', bodies, '--out', given.out, '--also', 'dxf']);
    expect(ran.code).toBe(0);
    for (const name of await readdir(given.out))
      expect(await readdir(join(given.out, name))).toContain('cutting.dxf');
  });

  it('writes a block for every size of a grade', async () => {
    const chart = join(given.folder, 'chart.csv');
    await writeFile(
      chart,
      'size,units,bustGirth,waistGirth,hipGirth,backNeckPointToWaist\n38,cm,88,70,95,40\n40,cm,92,74,99,40\n',
    );
    const words = ['grade', 'skirt', '--sizes', chart, '--also', 'dxf'];
    const session = { garments: [skirt as Draft] };
    const without = await bodkin(words, session);
    expect(without.code).toBe(2);
    expect(without.err).toContain('--out FOLDER');
    const told = await bodkin([...words, '--out', given.out, '--json'], session);
    expect(JSON.parse(told.out).cuttingFiles).toEqual(['grade.dxf']);
    const { blocks, inserts } = readCuttingFile(await readFile(join(given.out, 'grade.dxf'), 'utf8'));
    expect(blocks.size).toBe(8);
    expect(inserts).toHaveLength(8);
    expect([...blocks.keys()]).toContain('40_2-SKIRT-SIDE-FRONT');
  });

  it('refuses a kind that there is not, and writes nothing', async () => {
    const ran = await bodkin(['draft', 'bib', '--body', given.body, '--out', given.out, '--also', 'dwg']);
    expect(ran.code).toBe(2);
    expect(ran.err).toContain('Choose dxf or dxf-curves.');
    expect(await readdir(given.folder)).toEqual(['body.yaml']);
  });
});

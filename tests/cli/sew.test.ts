import { mkdtemp, readdir, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { stringify } from 'yaml';
import { garments } from '../../drafts/garments.ts';
import { measurements } from '../engine/bib.ts';
import { bodkin } from './session.ts';

let folder = '';
let body = '';
let out = '';

beforeEach(async () => {
  folder = await mkdtemp(join(tmpdir(), 'bodkin-'));
  body = join(folder, 'body.yaml');
  out = join(folder, 'out');
  await writeFile(body, stringify(measurements));
});

afterEach(async () => {
  await rm(folder, { recursive: true });
});

describe('sew', () => {
  test('writes the steps as HTML and PDF, and lists them', async () => {
    const ran = await bodkin(['sew', 'bodice', '--body', body, '--out', out, '--date', '4 May'], {
      garments,
    });
    expect(ran.code).toBe(0);
    expect(ran.out).toMatch(/^bodice for prompter: all true\n/);
    expect(ran.out).toMatch(/ 2\. Cut out\n/);
    expect(ran.err).toContain('wrote sewing.html and sewing.pdf');
    expect((await readdir(out)).sort()).toEqual(['sewing.html', 'sewing.pdf']);
    expect((await readFile(join(out, 'sewing.pdf'), 'latin1')).slice(0, 5)).toBe('%PDF-');
    const page = await readFile(join(out, 'sewing.html'), 'utf8');
    expect(page).toContain('Sewing the bodice for prompter');
    expect(page).toContain('4 May');
    expect(page).toContain('Cloth to buy');
    expect(page).toMatch(/Thread<\/td><td>\d+ m</);
  });

  test('prints the cut list and what to buy, and gives both as data', async () => {
    const { out: said } = await bodkin(['sew', 'bodice', '--body', body, '--out', out], { garments });
    expect(said).toMatch(/to cut +self +lining\n/);
    expect(said).toMatch(/cloth +90 cm +115 cm +140 cm +150 cm\nself +\d\.\d m/);
    expect(said).toMatch(/drawstring +0\.\d m/);
    expect(said).toMatch(/\nthread +\d+ m/);
    const { out: data } = await bodkin(['sew', 'bodice', '--body', body, '--out', out, '--json'], {
      garments,
    });
    const { cutList, materials } = JSON.parse(data);
    expect(cutList[0].cut[0]).toEqual({ cloth: 'self', count: 1, onFold: true, pair: false });
    for (const { least, needed } of materials.cloths[0].widths) expect(needed).toBeGreaterThan(least);
    expect(materials.thread.map(({ stitch }: { stitch: string }) => stitch)).toContain('301');
  });

  test('takes styling from the command line', async () => {
    const words = ['sew', 'bodice', '--body', body, '--out', out, '--set', 'necklineGathers=fixed'];
    expect((await bodkin(words, { garments })).out).toContain('Gather the neckline of the insert for good');
  });

  test('of a garment without a sewing order ends with 2 and writes nothing', async () => {
    const ran = await bodkin(['sew', 'bib', '--body', body, '--out', out]);
    expect(ran.code).toBe(2);
    expect(ran.err).toContain('no sewing order');
    expect(await readdir(folder)).toEqual(['body.yaml']);
  });

  test('of what cannot be drafted ends with 2 and says why', async () => {
    const ran = await bodkin(['sew', 'bib', '--body', body, '--out', out, '--set', 'mood=bad']);
    expect(ran.code).toBe(2);
    expect(ran.err).toContain('No bib today.');
  });
});

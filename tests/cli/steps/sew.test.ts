import { readdir, readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { garments } from '../../../drafts/garments.ts';
import { bodkin } from '../session.ts';
import { commandFolder } from '../temporary-folder.ts';

const given = commandFolder();

describe('sew', () => {
  test('writes the steps as HTML and PDF, and lists them', async () => {
    const ran = await bodkin(['sew', 'bodice', '--body', given.body, '--out', given.out, '--date', '4 May'], {
      garments,
    });
    expect(ran.code).toBe(0);
    expect(ran.out).toMatch(/^bodice for prompter: all true\n/);
    expect(ran.out).toMatch(/ 2\. Cut out\n/);
    expect(ran.err).toContain('wrote sewing.html and sewing.pdf');
    expect((await readdir(given.out)).sort()).toEqual(['sewing.html', 'sewing.pdf']);
    expect((await readFile(join(given.out, 'sewing.pdf'), 'latin1')).slice(0, 5)).toBe('%PDF-');
    const page = await readFile(join(given.out, 'sewing.html'), 'utf8');
    expect(page).toContain('Sewing the bodice for prompter');
    expect(page).toContain('4 May');
    expect(page).toContain('Cloth to buy');
    expect(page).toMatch(/Thread<\/td><td>\d+ m</);
  });

  test('prints the cut list and what to buy, and gives both as data', async () => {
    const { out: said } = await bodkin(['sew', 'bodice', '--body', given.body, '--out', given.out], {
      garments,
    });
    expect(said).toMatch(/to cut +self +lining\n/);
    expect(said).toMatch(/cloth +90 cm +115 cm +140 cm +150 cm\nself +\d\.\d m/);
    expect(said).toMatch(/drawstring +0\.\d m/);
    expect(said).toMatch(/\nthread +\d+ m/);
    const { out: data } = await bodkin(
      ['sew', 'bodice', '--body', given.body, '--out', given.out, '--json'],
      {
        garments,
      },
    );
    const { cutList, materials } = JSON.parse(data);
    expect(cutList[0].cut[0]).toEqual({ cloth: 'self', count: 1, onFold: true, pair: false });
    for (const { least, needed } of materials.cloths[0].widths) expect(needed).toBeGreaterThan(least);
    expect(materials.thread.map(({ stitch }: { stitch: string }) => stitch)).toContain('301');
  });

  test('gives stitch, seam class and finish of every seam as data, and whatever is turned up', async () => {
    const words = ['sew', 'dress', '--body', given.body, '--out', given.out, '--json'];
    const { steps } = JSON.parse((await bodkin(words, { garments })).out);
    const seams = JSON.parse(
      (await bodkin(['walk', ...words.slice(1, 4), '--json'], { garments })).out,
    ).seams;
    const sews = (name: string) => steps.find((step: { sews?: string[] }) => step.sews?.includes(name));
    for (const { name } of seams)
      expect(sews(name), name).toMatchObject({
        stitch: expect.any(String),
        seamClass: expect.any(Number),
        finish: expect.any(String),
      });
    expect(sews('side')).toMatchObject({ stitch: '301', seamClass: 1, finish: 'enclosed' });
    expect(steps.find(({ title }: { title: string }) => title === 'Hem the skirt')).toMatchObject({
      turns: expect.arrayContaining([{ piece: 'skirt side front', edge: 'hem' }]),
      finish: 'overcast',
    });
  });

  test('takes styling from the command line', async () => {
    const words = [
      'sew',
      'bodice',
      '--body',
      given.body,
      '--out',
      given.out,
      '--set',
      'necklineGathers=fixed',
    ];
    expect((await bodkin(words, { garments })).out).toContain('Gather the neckline of the insert for good');
  });

  test('of a garment without a sewing order ends with 2 and writes nothing', async () => {
    const ran = await bodkin(['sew', 'bib', '--body', given.body, '--out', given.out]);
    expect(ran.code).toBe(2);
    expect(ran.err).toContain('no sewing order');
    expect(await readdir(given.folder)).toEqual(['body.yaml']);
  });

  test('of what cannot be drafted ends with 2 and says why', async () => {
    const ran = await bodkin(['sew', 'bib', '--body', given.body, '--out', given.out, '--set', 'mood=bad']);
    expect(ran.code).toBe(2);
    expect(ran.err).toContain('No bib today.');
  });
});

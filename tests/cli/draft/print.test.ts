import { readdir, readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { readPdf } from '../../engine/render/pdf/read-pdf.ts';
import { bodkin } from '../session.ts';
import { commandFolder } from '../temporary-folder.ts';

const given = commandFolder();
const printed = (): string => join(given.folder, 'paper', 'bib.pdf');

const print = (...more: readonly string[]) =>
  bodkin(['print', 'bib', '--body', given.body, '--out', printed(), ...more]);

describe('print', () => {
  test('writes one PDF and says how many pages it takes and how many the area alone would', async () => {
    const ran = await print('--paper', 'a4');
    expect(ran.err).toContain(`wrote ${printed()}`);
    expect(ran.out).toMatch(/^bib for prompter: all true\n/);
    expect(ran.out).toMatch(/pages +\d+: the first page and \d+ tiles?\n/);
    expect(ran.out).toMatch(/by area +no fewer than \d+ tiles?\n/);
    expect(ran.code).toBe(0);
    expect(await readdir(join(given.folder, 'paper'))).toEqual(['bib.pdf']);
    const pages = await readPdf(await readFile(printed()));
    expect(ran.out).toContain(`${pages.length}: the first page`);
  });

  test('prints what fits on one page without a first page', async () => {
    const ran = await print('--paper', 'roll:914');
    expect(ran.out).toContain('pages    1, with everything on it');
    const [page, ...others] = await readPdf(await readFile(printed()));
    expect(others).toEqual([]);
    expect(page?.width).toBeCloseTo((914 * 72) / 25.4, 3);
    expect(page?.text).toContain('Check the scale before you cut.');
  });

  test('gives a projector a grid of 50 mm squares over the whole page', async () => {
    await print('--paper', 'projector');
    const [page] = await readPdf(await readFile(printed()));
    const across = page?.paths
      .flatMap(({ curves }) => curves)
      .filter(({ from, to }) => from.x === to.x && from.y < 0.01 && to.y > 100)
      .map(({ from }) => Math.round(from.x));
    expect(across).toEqual(Array.from({ length: 25 }, (_, i) => 50 * i));
    expect(page?.text).toContain('The squares of the grid are 50 mm wide.');
  });

  test('tells other programs the same as JSON', async () => {
    const told = JSON.parse((await print('--paper', 'letter', '--json')).out);
    expect(told).toMatchObject({ ok: true, garment: 'bib', paper: 'letter', leftOut: expect.any(Number) });
    expect(told.pages).toHaveLength(told.tiles.length + 1);
    expect(told.pages[1]).toEqual({ width: 215.9, height: 279.4 });
    expect(told.tiles.length).toBeGreaterThanOrEqual(told.fewestByArea);
  });

  test.each([
    [['--paper', 'a5'], 'Did you mean “a4”?'],
    [['--paper', 'wallpaper'], 'Choose a4, letter'],
    [['--paper', 'roll:9'], '250 to 1700 mm'],
    [['--paper', 'roll:-914'], 'There is no paper'],
    [['--paper', 'a4', '--set', 'mood=bad'], 'No bib today.'],
    [['--paper', 'a4', '--date', 'x'.repeat(41)], 'at most 40'],
    [[], '--paper'],
  ])('that cannot be made (%j) ends with 2 and writes nothing', async (more, said) => {
    const ran = await print(...more);
    expect(ran.code).toBe(2);
    expect(ran.err).toContain(said);
    expect(await readdir(given.folder)).toEqual(['body.yaml']);
  });
});

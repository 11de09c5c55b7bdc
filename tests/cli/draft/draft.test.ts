import { mkdir, readdir, readFile, rm, symlink, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { stringify } from 'yaml';
import { writeFiles } from '../../../cli/files/write-files.ts';
import { measurements } from '../../engine/bib.ts';
import { bodkin } from '../session.ts';
import { commandFolder } from '../temporary-folder.ts';

const given = commandFolder();

/** Drafts the bib for the given body into the given folder. */
const draftBib = (...more: readonly string[]) =>
  bodkin(['draft', 'bib', '--body', given.body, '--out', given.out, ...more]);

describe('draft', () => {
  test('writes a file a piece, the sheet and the report, and nothing else', async () => {
    const ran = await draftBib();
    expect(ran.err).toContain('wrote 2 pieces');
    expect(ran.code).toBe(0);
    expect((await readdir(given.out)).sort()).toEqual([
      '1-centre-front.svg',
      '2-side-front.svg',
      'report.json',
      'sheet.svg',
    ]);
    expect((await readdir(given.folder)).sort()).toEqual(['body.yaml', 'out']);
  });

  test('names pieces of an earlier draft that it finds beside its own, and leaves them', async () => {
    await mkdir(given.out);
    await writeFile(join(given.out, '7-sleeve.svg'), '');
    await writeFile(join(given.out, 'notes.svg'), '');
    const ran = await draftBib();
    expect(ran.err).toContain('left from an earlier one: 7-sleeve.svg\n');
    expect(await readdir(given.out)).toContain('7-sleeve.svg');
  });

  test.each(['', 'sheet.svg', 'report.json'])(
    'draws the outlines of an earlier draft under its own, its sheet still true (--before old/%s)',
    async (name) => {
      const [old, earlier] = [join(given.folder, 'old'), join(given.folder, 'earlier.yaml')];
      await writeFile(earlier, stringify({ ...measurements, name: 'understudy' }));
      await bodkin(['draft', 'bib', '--body', earlier, '--out', old]);
      const ran = await draftBib('--before', join(old, name));
      expect(ran.code).toBe(0);
      expect(ran.err).toContain('drew the stitching line before, grey, under 2 pieces\n');
      const sheet = await readFile(join(given.out, 'sheet.svg'), 'utf8');
      expect(sheet.match(/<path class="earlier" data-piece="(centre|side) front"/g)).toHaveLength(2);
      expect(sheet).toContain('>stitching line before</text>');
      const walked = await bodkin(['walk', '--file', join(given.out, 'sheet.svg')]);
      expect(walked.code).toBe(0);
      expect(await readFile(join(given.out, '1-centre-front.svg'), 'utf8')).not.toContain('earlier');
    },
  );

  test('draws over its own earlier draft in the same folder, and says so of a report without a sheet', async () => {
    await draftBib();
    const again = await draftBib('--before', given.out);
    expect(again.code).toBe(0);
    expect(await readFile(join(given.out, 'sheet.svg'), 'utf8')).toContain('class="earlier"');
    await rm(join(given.out, 'sheet.svg'));
    const without = await draftBib('--before', given.out);
    expect(without.code).toBe(2);
    expect(without.err).toContain('holds no outlines');
  });

  test('prints the short table', async () => {
    const { out: table } = await draftBib();
    expect(table).toMatch(/^bib for prompter: all true\n/);
    expect(table).toMatch(/pieces +2: 1 centre front, 2 side front\n/);
    expect(table).toMatch(/seams walked +1\n/);
    expect(table).toMatch(/worst mismatch +0\.0000 mm \(princess seam\)\n/);
    expect(table).toMatch(/waist +340\.0 +20\.0 +360\.0 +360\.0 +0\.000\n/);
    expect(table).toMatch(/cup +\S/);
    expect(table).toMatch(/issues +/);
  });

  test('writes the report that walk prints, and prints it with the cut list when JSON is asked for', async () => {
    const drafted = await draftBib('--json');
    const walked = await bodkin(['walk', 'bib', '--body', given.body, '--json']);
    const { cutList, materials, ...report } = JSON.parse(drafted.out);
    expect(report).toEqual(JSON.parse(walked.out));
    expect(cutList).toHaveLength(2);
    expect(materials.cloths[0].widths[0]).toMatchObject({ width: 900, laid: 'folded', needed: null });
    expect(await readFile(join(given.out, 'report.json'), 'utf8')).toBe(walked.out);
  });

  test('prints the cut list, and below which length no lay of the cloth goes, in the reader’s unit', async () => {
    const { out: said } = await draftBib();
    expect(said).toMatch(
      /to cut +self +lining\n1 centre front +1 on the fold +1 on the fold\n2 side front +2, a pair/,
    );
    expect(said).toMatch(/no lay under +90 cm +115 cm +140 cm +150 cm\nself +0\.\d\d m/);
    const { out: inches } = await draftBib('--units', 'in');
    expect(inches).toMatch(/no lay under +36 in +45 in +54 in +60 in\nself +0\.\d\d yd/);
  });

  test('prints the date it is given on every drawing, and the construction log when asked', async () => {
    const ran = await draftBib('--date', '4 May', '--steps');
    for (const file of ['1-centre-front.svg', '2-side-front.svg', 'sheet.svg'])
      expect(await readFile(join(given.out, file), 'utf8')).toContain('bib for prompter, 4 May');
    expect(ran.out).toContain('1. Fold: the cloth [common practice, no source]');
  });

  test('takes choices from a file, and those of the command line over them', async () => {
    const styling = join(given.folder, 'styling.yaml');
    await writeFile(styling, 'misfit: 3\nnotchType: wedge\n');
    const words = [
      'draft',
      'bib',
      '--body',
      given.body,
      '--out',
      given.out,
      '--styling',
      styling,
      '--set',
      'misfit=0',
      '--json',
    ];
    expect(JSON.parse((await bodkin(words)).out).styling).toEqual({
      misfit: 0,
      notchType: 'wedge',
      mood: 'good',
    });
  });

  test.each([
    [['--set', 'mood=bad'], 'No bib today.'],
    [['--set', 'misfit=10'], '0 to 9 mm'],
    [['--date', 'x'.repeat(41)], 'at most 40'],
  ])('that cannot be made (%j) ends with 2 and writes nothing', async (more, said) => {
    const ran = await draftBib(...more);
    expect(ran.code).toBe(2);
    expect(ran.err).toContain(said);
    expect(await readdir(given.folder)).toEqual(['body.yaml']);
  });

  test.each([
    ['{', 'neither YAML nor JSON'],
    ['just words', ''],
    ['- 1\n- 2\n', ''],
    ['', ''],
    ['bustGirth: 92', ''],
    [`a: &a [x, x]\nb: &b [*a, *a]\n${'c: [*b, *b]\n'.repeat(200)}`, ''],
  ])('for measurements that read %j ends with 2', async (text, said) => {
    await writeFile(given.body, text);
    const ran = await draftBib();
    expect(ran.err).toContain(said);
    expect(ran.err).not.toMatch(/\n\s+at |NaN|undefined/);
    expect(ran.err).not.toBe('');
    expect(ran.code).toBe(2);
  });

  test('shows names from a file without their control characters', async () => {
    await writeFile(given.body, JSON.stringify({ ...measurements, name: 'up\u001b[2Jset' }));
    const ran = await draftBib();
    expect(ran.out + ran.err).not.toContain('\u001b');
  });

  test('shows the verdict in colour only where colours are wanted', async () => {
    const words = ['draft', 'bib', '--body', given.body, '--out', given.out];
    expect((await bodkin(words, { colour: true })).out).toContain('\u001b[32mall true');
    expect((await bodkin(words)).out).not.toContain('\u001b');
  });
});

describe('writing files', () => {
  test('puts nothing in place when one of them cannot be written', async () => {
    await writeFiles(given.out, new Map([['a.txt', 'old']]));
    const files = new Map([
      ['a.txt', 'new'],
      [`${'b'.repeat(300)}.txt`, 'too long a name'],
    ]);
    await expect(writeFiles(given.out, files)).rejects.toThrow('Cannot write');
    expect(await readdir(given.out)).toEqual(['a.txt']);
    expect(await readFile(join(given.out, 'a.txt'), 'utf8')).toBe('old');
  });

  test('puts nothing in place when a folder stands where one of them should go', async () => {
    await mkdir(join(given.out, 'b.txt'), { recursive: true });
    const files = new Map([
      ['a.txt', 'new'],
      ['b.txt', 'new'],
    ]);
    await expect(writeFiles(given.out, files)).rejects.toThrow('is a folder');
    expect(await readdir(given.out)).toEqual(['b.txt']);
  });

  test('leads nowhere but into the folder, not even through a link that lies there', async () => {
    await expect(writeFiles(given.out, new Map([['../a.txt', 'x']]))).rejects.toThrow(
      'not a plain file name',
    );
    await writeFile(join(given.folder, 'elsewhere'), 'mine');
    await symlink(join(given.folder, 'elsewhere'), join(given.out, 'a.txt'));
    await writeFiles(given.out, new Map([['a.txt', 'new']]));
    expect(await readFile(join(given.folder, 'elsewhere'), 'utf8')).toBe('mine');
    expect(await readFile(join(given.out, 'a.txt'), 'utf8')).toBe('new');
  });

  test('says so when the folder is a file', async () => {
    await expect(writeFiles(given.body, new Map([['a', 'x']]))).rejects.toThrow(
      `Cannot write into ${given.body}`,
    );
  });
});

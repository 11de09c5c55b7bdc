import { readdir, readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { garments } from '../../../drafts/garments.ts';
import { bodkin } from '../session.ts';
import { commandFolder } from '../temporary-folder.ts';

const given = commandFolder();

describe('teach', () => {
  test('writes the construction as HTML and PDF', async () => {
    const words = ['teach', 'skirt', '--body', given.body, '--out', given.out, '--date', '4 May'];
    const ran = await bodkin(words, { garments });
    expect(ran.code).toBe(0);
    expect(ran.out).toMatch(/^skirt for prompter: all true\n/);
    expect(ran.err).toContain('wrote lesson.html and lesson.pdf');
    expect((await readdir(given.out)).sort()).toEqual(['lesson.html', 'lesson.pdf']);
    expect((await readFile(join(given.out, 'lesson.pdf'), 'latin1')).slice(0, 5)).toBe('%PDF-');
    const page = await readFile(join(given.out, 'lesson.html'), 'utf8');
    for (const said of ['Drawing the skirt for prompter', '4 May', 'Half hip', 'skirt side front, 1 : '])
      expect(page).toContain(said);
  });

  test('writes the same files to the byte for the same words', async () => {
    const read = async (): Promise<Buffer> => {
      await bodkin(['teach', 'skirt', '--body', given.body, '--out', given.out], { garments });
      return readFile(join(given.out, 'lesson.pdf'));
    };
    expect((await read()).equals(await read())).toBe(true);
  });

  test('of what cannot be drafted ends with 2 and says why', async () => {
    const ran = await bodkin(['teach', 'bib', '--body', given.body, '--out', given.out, '--set', 'mood=bad']);
    expect(ran.code).toBe(2);
    expect(ran.err).toContain('No bib today.');
  });
});

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

describe('teach', () => {
  test('writes the construction as HTML and PDF', async () => {
    const words = ['teach', 'skirt', '--body', body, '--out', out, '--date', '4 May'];
    const ran = await bodkin(words, { garments });
    expect(ran.code).toBe(0);
    expect(ran.out).toMatch(/^skirt for prompter: all true\n/);
    expect(ran.err).toContain('wrote lesson.html and lesson.pdf');
    expect((await readdir(out)).sort()).toEqual(['lesson.html', 'lesson.pdf']);
    expect((await readFile(join(out, 'lesson.pdf'), 'latin1')).slice(0, 5)).toBe('%PDF-');
    const page = await readFile(join(out, 'lesson.html'), 'utf8');
    for (const said of ['Drawing the skirt for prompter', '4 May', 'Half hip', 'skirt side front, 1 : '])
      expect(page).toContain(said);
  });

  test('writes the same files to the byte for the same words', async () => {
    const read = async (): Promise<Buffer> => {
      await bodkin(['teach', 'skirt', '--body', body, '--out', out], { garments });
      return readFile(join(out, 'lesson.pdf'));
    };
    expect((await read()).equals(await read())).toBe(true);
  });

  test('of what cannot be drafted ends with 2 and says why', async () => {
    const ran = await bodkin(['teach', 'bib', '--body', body, '--out', out, '--set', 'mood=bad']);
    expect(ran.code).toBe(2);
    expect(ran.err).toContain('No bib today.');
  });
});

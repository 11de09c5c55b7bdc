import { readFileSync } from 'node:fs';
import { mkdtemp, readdir, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { stringify } from 'yaml';
import { formChoiceNames, formChoices } from '../../../engine/form/choices.ts';
import { measurements } from '../../engine/bib.ts';
import { bodkin } from '../session.ts';

let folder = '';
let body = '';
const form = (...words: readonly string[]) =>
  bodkin(['body', body, '--form', '--out', join(folder, 'form'), ...words]);

beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'bodkin-'));
  body = join(folder, 'prompter.yaml');
  await writeFile(body, stringify(measurements));
});

afterAll(() => rm(folder, { recursive: true }));

describe('bodkin body --form', () => {
  test('writes the form from three sides, as glTF and as data, and says what is given back and assumed', async () => {
    const { code, out } = await form();
    expect(code).toBe(0);
    expect((await readdir(join(folder, 'form'))).sort()).toEqual(
      ['back.svg', 'form.glb', 'form.json', 'front.svg', 'side.svg'].sort(),
    );
    expect(out).toMatch(/^waist girth +74\.00 +74\.00 +0\.000$/m);
    expect(out).toMatch(/^hip breadth +\d+\.\d\d +\d+\.\d\d +\d\.\d\d$/m);
    expect(out).toMatch(/^backHollow +\d\.\d\d +1\.68 to 4\.32 +found likeliest +how far the waist/m);
    expect(out).toContain('front.svg, side.svg, back.svg, form.glb, form.json written into');
  });

  test('is to the byte the same each time', async () => {
    const files = async () =>
      Promise.all(['front.svg', 'form.glb', 'form.json'].map((name) => readFile(join(folder, 'form', name))));
    const first = await files();
    await form();
    expect(await files()).toEqual(first);
  });

  test('gives the reasons of what is assumed in the reader’s unit too', async () => {
    expect((await form('--units', 'in')).out).toMatch(/grows with the cup, 2 9\/16 to 3 11\/16 in;/);
  });

  test('stands as it is chosen to', async () => {
    const { code, out } = await form('--set', 'backHollow=4.5cm', '--set', 'armRise=30', '--json');
    expect(code).toBe(0);
    const { assumed, tapes } = JSON.parse(out);
    expect(assumed.find(({ name }: { name: string }) => name === 'backHollow')).toMatchObject({
      value: 45,
      how: 'chosen',
    });
    expect(tapes.every(({ held }: { held: boolean }) => held)).toBe(true);
  });

  test.each([
    [['--set', 'backHolow=45'], 'Did you mean “backHollow”?'],
    [['--set', 'armRise=60'], 'armRise lies from 0 to 45 degrees.'],
    [['--set', 'armRise=3cm'], 'armRise lies from 0 to 45 degrees.'],
    [['--set', 'lean='], 'lean lies from -6 to 6 cm.'],
    [['--sensitivity'], 'Ask for the form alone'],
    [['--garment', 'bib'], 'Ask for the form alone'],
  ])('refuses %s', async (words, says) => {
    const { code, err } = await form(...words);
    expect(code).toBe(2);
    expect(err).toContain(says);
  });

  test('needs a folder, and a folder needs it', async () => {
    expect((await bodkin(['body', body, '--form'])).err).toContain('A form needs --out DIR');
    expect((await bodkin(['body', body, '--out', folder])).err).toContain('only written to with --form');
  });
});

describe('the page on forms', () => {
  const page = readFileSync(new URL('../../../cli/form.md', import.meta.url), 'utf8');

  test.each(formChoiceNames)('tells of the choice %s what the program says', (name) => {
    const row = page.split('\n').find((line) => line.startsWith(`| \`${name}\``)) ?? '';
    expect(row).not.toBe('');
    const choice = formChoices[name];
    if (!('usual' in choice) || choice.spread === 0) return;
    const parts = choice.unit === 'share' ? 2 : 0;
    const [least, most] = [-1, 1].map((sign) => (choice.usual + sign * 1.645 * choice.spread).toFixed(parts));
    expect(row).toContain(`${least} to ${most}`);
  });

  test('is named in the README', () => {
    expect(readFileSync(new URL('../../../README.md', import.meta.url), 'utf8')).toContain('(cli/form.md)');
  });
});

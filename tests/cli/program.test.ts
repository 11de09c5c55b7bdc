import { describe, expect, test } from 'vitest';
import { bodkin } from './session.ts';

describe('help', () => {
  test.each([
    [[], 'Commands:'],
    [['draft'], '--out <folder>'],
    [['print'], '--paper <paper>'],
    [['walk'], '--bodies <file>'],
    [['body'], 'measurements'],
    [['list'], '--json'],
    [['explain'], 'code'],
    [['completion'], 'fish'],
  ])('bodkin %s --help is a result', async (words, shown) => {
    const { code, out, err } = await bodkin([...words, '--help']);
    expect(code).toBe(0);
    expect(out).toContain('Usage: bodkin');
    expect(out).toContain(shown);
    expect(err).toBe('');
  });

  test.each([
    [['help'], 'Commands:'],
    [['help', 'draft'], '--out <folder>'],
    [['draft', 'help'], '--out <folder>'],
  ])('bodkin %s is the same', async (words, shown) => {
    const { code, out, err } = await bodkin(words);
    expect(code).toBe(0);
    expect(out).toContain(shown);
    expect(err).toBe('');
  });
});

describe('a command line that makes no sense', () => {
  test.each<[string[], string]>([
    [[], 'Usage: bodkin'],
    [['knit'], 'There is no command “knit”'],
    [['lst'], 'Did you mean “list”?'],
    [['help', 'lst'], 'Did you mean “list”?'],
    [['draft', '--body', 'x', '--out', 'y'], 'needs <garment>'],
    [['draft', 'bib', '--bdy', 'x'], 'There is no option --bdy of “bodkin draft”. Did you mean --body?'],
    [['draft', 'bib', '--body', '--bdy', '--oout=x'], 'Did you mean --out?'],
    [['list', 'bib', 'bob'], 'takes fewer words'],
    [['walk', 'bib', '--body'], 'missing after --body'],
    [['completion', 'tcsh'], 'Allowed choices are bash, zsh, fish.'],
    [['explain', 'seam-dose-not-walk'], 'Did you mean “seam-does-not-walk”?'],
    [['draft', 'bib', '--out', 'x'], '--body'],
    [['draft', 'bib', '--body', 'x'], '--out'],
    [['draft', 'bibb', '--body', 'x', '--out', 'y'], 'Did you mean “bib”?'],
    [['walk', 'gown', '--body', 'x'], 'Known are: bib'],
    [['walk'], 'which garment'],
    [['walk', 'bib'], '--body FILE'],
    [['walk', 'bib', '--body', 'x', '--bodies', 'y'], 'cannot be used with'],
    [['walk', 'bib', '--bodies', 'x', '--workers', '0'], 'whole number from 1'],
    [['walk', 'bib', '--bodies', 'x', '--workers', 'two'], 'whole number from 1'],
    [['walk', 'bib', '--body', 'nowhere.yaml'], 'no such file'],
    [['walk', 'bib', '--bodies', 'nowhere.ndjson'], 'no such file'],
    [['walk', 'bib', '--bodies', 'engine'], 'it is a folder'],
    [['walk', '--file', 'nowhere.svg'], 'no such file'],
    [['walk', '--file', 'package.json'], 'not a whole SVG drawing'],
    [['walk', 'bib', '--body', 'x', '--set', 'misfit'], 'name=value'],
    [['walk', 'bib', '--body', 'x', '--styling', 'nowhere.yaml'], 'no such file'],
    [['body', 'nowhere.yaml'], 'no such file'],
    [['list', '--yaml'], 'There is no option --yaml'],
  ])('%j ends with 2, words on standard error and no result', async (words, said) => {
    const { code, out, err } = await bodkin(words);
    expect(err).toContain(said);
    expect(code).toBe(2);
    expect(out).toBe('');
    expect(err).not.toMatch(/\n\s+at /);
  });

  test.each<[string[], string, string]>([
    [['knit'], 'unknown-command', 'command'],
    [['--bdy'], 'unknown-option', '--bdy'],
    [['draft', 'bib', '--bdy', 'x'], 'unknown-option', '--bdy'],
    [['draft', 'bib', '--out', 'x'], 'body-missing', '--body'],
    [['draft', 'bib', '--body', 'x'], 'option-missing', '--out'],
    [['draft', '--body', 'x', '--out', 'y'], 'argument-missing', 'garment'],
    [['walk', 'bib', '--workers', '0'], 'value-unusable', '--workers'],
    [['walk', 'bib', '--body', 'x', '--bodies', 'y'], 'options-conflict', '--body'],
    [['walk', 'bib', '--styling'], 'option-without-value', '--styling'],
    [['list', 'a', 'b'], 'too-many-arguments', 'list'],
  ])('%j is told as data where that is asked for', async (words, code, path) => {
    const { out } = await bodkin([words[0] ?? '', '--json', ...words.slice(1)]);
    expect(JSON.parse(out)).toMatchObject({ ok: false, issues: [{ code, severity: 'error', path }] });
  });

  test('tells a fault of the program as data, and throws it', async () => {
    let out = '';
    const write = async (text: string) => {
      out += text;
    };
    const body = new URL('../../measurements/prompter.yaml', import.meta.url).pathname;
    const words = ['walk', 'bib', '--body', body, '--set', 'mood=broken', '--json'];
    await expect(bodkin(words, { write })).rejects.toThrow('scissors lost');
    expect(JSON.parse(out).issues).toMatchObject([{ code: 'program-fault', severity: 'error' }]);
  });
});

describe('explain', () => {
  test('says what a code means, or all of them', async () => {
    const { code, out } = await bodkin(['explain', 'seam-does-not-walk']);
    expect(code).toBe(0);
    expect(out).toMatch(/^seam-does-not-walk: The two sides of a seam are not equally long\. /);
    expect((await bodkin(['explain'])).out.split('\n').length).toBeGreaterThan(150);
  });
});

describe('list', () => {
  test('shows each choice with default, unit, range and help', async () => {
    const { code, out } = await bodkin(['list']);
    expect(code).toBe(0);
    expect(out).toMatch(/misfit +0 +mm +0 to 9 +how wrong the seam is/);
    expect(out).toMatch(/notchType +slit +word +slit \| wedge +how notches are drawn/);
  });

  test('as JSON holds the same for other programs', async () => {
    const { out } = await bodkin(['list', '--json']);
    expect(JSON.parse(out)).toMatchObject([
      { name: 'bib', title: 'A bib of two pieces', choices: [{ min: 0 }, {}, {}] },
    ]);
  });
});

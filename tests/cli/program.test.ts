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
  ])('bodkin %s --help is a result', async (words, shown) => {
    const { code, out, err } = await bodkin([...words, '--help']);
    expect(code).toBe(0);
    expect(out).toContain('Usage: bodkin');
    expect(out).toContain(shown);
    expect(err).toBe('');
  });
});

describe('a command line that makes no sense', () => {
  test.each<[string[], string]>([
    [[], 'Usage: bodkin'],
    [['knit'], 'unknown command'],
    [['lst'], 'Did you mean list'],
    [['draft', '--body', 'x', '--out', 'y'], 'missing required argument'],
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
    [['list', '--yaml'], 'unknown option'],
  ])('%j ends with 2, words on standard error and no result', async (words, said) => {
    const { code, out, err } = await bodkin(words);
    expect(err).toContain(said);
    expect(code).toBe(2);
    expect(out).toBe('');
    expect(err).not.toMatch(/\n\s+at /);
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

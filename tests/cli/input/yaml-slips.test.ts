import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { bodkin } from '../session.ts';

let folder = '';
beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'bodkin-'));
});
afterAll(() => rm(folder, { recursive: true }));

/** What is told of a file with this text. */
async function told(text: string): Promise<{ readonly code: number; readonly err: string }> {
  const file = join(folder, 'prompter.yaml');
  await writeFile(file, text);
  return bodkin(['body', file]);
}

const rest = 'waistGirth: 74\nhipGirth: 98\nbackNeckPointToWaist: 41\n';

describe('a slip in a file of YAML is told by its line, its text and what was meant', () => {
  test.each<[string, string, number, string, string]>([
    ['a tab', `units: cm\nbustGirth: 92\n${rest}fitting:\n\t- round back: 1\n`, 7, '- round back: 1', 'tab'],
    ['a top line with a tab', `units: cm\n\tbustGirth: 92\n${rest}`, 2, 'bustGirth: 92', 'blanks'],
    ['no blank after a colon', `units: cm\nbustGirth:92\n${rest}`, 2, 'bustGirth:92', '“bustGirth: 92”'],
    [
      'no blank in the last line',
      `units: cm\nbustGirth: 92\n${rest}stature:167 # tall\n`,
      6,
      'stature:167',
      '“stature: 167”',
    ],
    [
      'no blank in a list',
      `units: cm\nfitting:\n  - round back:1\n`,
      3,
      '- round back:1',
      '“- round back: 1”',
    ],
    [
      'no blank after a dash',
      `units: cm\nfitting:\n  -round back: 1\n`,
      3,
      '-round back: 1',
      '“- round back: 1”',
    ],
    ['no blank anywhere', 'units:cm\nbustGirth:92\n', 1, 'units:cm', '“units: cm”'],
    ['no colon', `units: cm\nbustGirth 92\n${rest}`, 2, 'bustGirth 92', '“bustGirth: 92”'],
    ['an equals sign', `units: cm\nbustGirth = 92.5\n${rest}`, 2, 'bustGirth = 92.5', '“bustGirth: 92.5”'],
    ['an open quote', `units: cm\nname: "lady\nbustGirth: 92\n${rest}`, 2, 'name: "lady', '“name: "lady"”'],
    [
      'an open bracket',
      `units: cm\nsure: [waistGirth\nbustGirth: 92\n`,
      2,
      'sure: [waistGirth',
      '“sure: [waistGirth]”',
    ],
    [
      'a decimal comma in brackets',
      `units: cm\nbustGirth: [92,5]\n${rest}`,
      2,
      'bustGirth: [92,5]',
      '“bustGirth: 92.5”',
    ],
    [
      'a decimal comma in braces',
      `units: cm\nfitting:\n  - {take in: side seam, level: waist, by: 0,5}\n`,
      3,
      '- {take in: side seam, level: waist, by: 0,5}',
      'by: 0.5}”',
    ],
    ['a field twice', `units: cm\nbustGirth: 92\nbustGirth: 93\n${rest}`, 3, 'bustGirth: 93', 'keep one'],
    [
      'a line too far right',
      `units: cm\nbustGirth: 92\n  waistGirth: 74\n`,
      3,
      'waistGirth: 74',
      'further right',
    ],
    [
      'a second colon',
      `name: lady: leading\nunits: cm\n`,
      1,
      'name: lady: leading',
      '“name: "lady: leading"”',
    ],
    [
      'two figures on a line',
      `units: cm\nbustGirth: 92 waistGirth: 74\n`,
      2,
      'bustGirth: 92 waistGirth: 74',
      'give each a line of its own',
    ],
    [
      'all on one line',
      'units: cm, bustGirth: 92, waistGirth: 74\n',
      1,
      'units: cm, bustGirth: 92, waistGirth: 74',
      'give each a line of its own',
    ],
    ['a semicolon', `units: cm\nbustGirth; 92\n${rest}`, 2, 'bustGirth; 92', '“bustGirth: 92”'],
    ['two bodies in one file', `units: cm\n${rest}---\nunits: cm\n`, 5, '---', 'a file holds one'],
  ])('%s', async (_, text, line, shown, meant) => {
    const { code, err } = await told(text);
    expect(code).toBe(2);
    expect(err).toContain(`prompter.yaml, line ${line}: “${shown}”`);
    expect(err).toContain(meant);
  });

  test('and no slip is seen where there is none', async () => {
    const good = `# a comment: with 92,5\nname: "lady: the leading one" # a:1\nunits: cm\nbustGirth: 92,5\n${rest}sure: [waistGirth, hipGirth]\n`;
    expect((await told(good)).code).toBe(0);
    const asJson = '{"units":"cm","bustGirth":92,"waistGirth":74,"hipGirth":98,"backNeckPointToWaist":41}';
    expect((await told(asJson)).code).toBe(0);
    const inText = `name: >-\n  leading lady\n\n  Act 2:3 and on\nunits: cm\nbustGirth: 92\n${rest}`;
    expect((await told(inText)).err).not.toContain('blank');
    const afterIt = inText.replace('bustGirth: 92', 'bustGirth:92');
    expect((await told(afterIt)).err).toContain('line 6');
  });

  test('and for scripts in data', async () => {
    const file = join(folder, 'script.yaml');
    await writeFile(file, `units: cm\nbustGirth:92\n${rest}`);
    const { out } = await bodkin(['body', file, '--json']);
    const [issue] = JSON.parse(out).issues;
    expect(issue).toMatchObject({ code: 'yaml-slip', severity: 'error' });
    expect(issue.message).toContain('line 2');
  });
});

describe('a file that is no text in UTF-8', () => {
  const text = `name: Zoë\nunits: cm\nbustGirth: 92\n${rest}`;
  test.each([
    ['Latin-1', Buffer.from(text, 'latin1')],
    ['UTF-16', Buffer.from(`\uFEFF${text}`, 'utf16le')],
  ])('is told, and no name drawn with what it cannot hold: %s', async (_, bytes) => {
    const file = join(folder, 'encoded.yaml');
    await writeFile(file, bytes);
    const { code, err } = await bodkin(['body', file]);
    expect(code).toBe(2);
    expect(err.replace(/\s+/g, ' ')).toContain('Save it with that encoding');
  });
});

test('what stands in a text of several lines is no slip', async () => {
  const { code, err } = await told(
    `name: >-\n  EN 13402-3:2005, from\n  memory\nunits: cm\nbustGirth: 92\n${rest}`,
  );
  expect([code, err]).toEqual([0, '']);
  expect((await told(`name: |\n  any\nunits: cm\nbustGirth:92\n${rest}`)).err).toContain('line 4');
});

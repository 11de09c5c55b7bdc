import { mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { garments } from '../../../drafts/garments.ts';
import { measurements } from '../../engine/bib.ts';
import { bodkin } from '../session.ts';

let folder = '';
let body = '';

beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'bodkin-'));
  body = join(folder, 'body.json');
  await writeFile(body, JSON.stringify(measurements));
});

afterAll(async () => {
  await rm(folder, { recursive: true });
});

const keysOf = (value: unknown): readonly string[] => Object.keys(Object(value));

describe('walk', () => {
  test('as JSON prints exactly the fields it promises', async () => {
    const { code, out } = await bodkin(['walk', 'bib', '--body', body, '--json', '--set', 'misfit=2']);
    const result = JSON.parse(out);
    expect(code).toBe(1);
    expect(keysOf(result)).toEqual([
      'ok',
      'garment',
      'body',
      'styling',
      'measurements',
      'fitting',
      'seams',
      'joins',
      'girths',
      'shapes',
      'notches',
      'issues',
    ]);
    expect(result.measurements[0]).toEqual({ name: 'bustGirth', value: 920, unit: 'mm', from: 'measured' });
    expect(result.fitting).toEqual([]);
    expect(keysOf(result.seams[0])).toEqual([
      'name',
      'a',
      'b',
      'lengthA',
      'lengthB',
      'ease',
      'gatherRatio',
      'mismatch',
    ]);
    expect(keysOf(result.joins[0])).toEqual(['name', 'pieces', 'angle']);
    expect(keysOf(result.girths[0])).toEqual(['level', 'body', 'ease', 'target', 'finished', 'error']);
    expect(result.shapes[1]).toEqual({
      name: 'princess seam, tightest bend',
      piece: 'centre front',
      value: expect.any(Number),
      low: 1000,
      high: null,
      unit: 'mm',
      ok: false,
      bound: false,
    });
    for (const issue of result.issues)
      expect(keysOf(issue)).toEqual(['code', 'severity', 'path', 'message', 'limits']);
    expect(result).toMatchObject({ ok: false, garment: 'bib', body: 'prompter', styling: { misfit: 2 } });
    expect(result.seams[0].b).toEqual([{ piece: 'side front', edge: 'princess', reversed: true }]);
    expect(result.seams[0].mismatch).toBeCloseTo(2, 6);
  });

  test('as JSON keeps its shape when nothing could be drafted, and ends with 2', async () => {
    const { code, out } = await bodkin(['walk', 'bib', '--body', body, '--json', '--set', 'mood=bad']);
    expect(code).toBe(2);
    const { issues, ...rest } = JSON.parse(out);
    expect(rest).toEqual({
      ok: false,
      garment: 'bib',
      body: '',
      styling: {},
      measurements: null,
      fitting: null,
      seams: [],
      joins: [],
      girths: [],
      shapes: [],
      notches: 0,
    });
    expect(issues).toContainEqual({
      code: 'own-no-bib',
      severity: 'error',
      path: 'princess',
      message: 'No bib today.',
      limits: null,
    });
  });

  test('prints a line for each seam, join and girth', async () => {
    const { code, out } = await bodkin(['walk', 'bib', '--body', body]);
    expect(code).toBe(0);
    expect(out).toMatch(
      /princess seam +centre front\/princess +side front\/princess +201\.\d\d +201\.\d\d +0\.0000/,
    );
    expect(out).toMatch(/waist over princess +0\.000 +centre front, side front/);
    expect(out).toMatch(/waist +340\.0/);
  });

  test('says which shapes lie outside their bands, and with --bands prints them all', async () => {
    const { code, out } = await bodkin(['walk', 'bib', '--body', body]);
    expect(code).toBe(0);
    expect(out).toMatch(
      /princess seam, tightest bend +centre front +[\d.]+ +at least 1000\.0 +outside: a bust/,
    );
    expect(out).not.toMatch(/princess seam +side front/);
    expect(out).toContain('shapes: 1 of 2 in their bands');
    const all = await bodkin(['walk', 'bib', '--body', body, '--bands']);
    expect(all.out).toMatch(/princess seam +side front +201\.\d +150\.0 to 250\.0/);
  });

  test('of a written sheet finds what the garment had, and what was bent since', async () => {
    const out = join(folder, 'out');
    await bodkin(['draft', 'bib', '--body', body, '--out', out]);
    const sheet = join(out, 'sheet.svg');
    const walked = await bodkin(['walk', '--file', sheet, '--json']);
    const result = JSON.parse(walked.out);
    expect(walked.code).toBe(0);
    expect(result).toMatchObject({ ok: true, garment: 'bib', body: 'prompter' });
    expect(result.seams[0].mismatch).toBeLessThan(0.001);
    expect(result.shapes.map((shape: { name: string }) => shape.name)).toEqual([
      'princess seam',
      'princess seam, tightest bend',
    ]);
    const bent = (await readFile(sheet, 'utf8')).replace(
      /(data-edge="princess"[^>]* d="M[\d.]+ [\d.]+C)([\d.]+)/,
      (_, before, x) => `${before}${Number(x) + 20}`,
    );
    await writeFile(sheet, bent);
    const again = await bodkin(['walk', '--file', sheet]);
    expect(again.code).toBe(1);
    expect(again.err).toContain('princess seam');
    const piece = await bodkin(['walk', '--file', join(out, '1-centre-front.svg')]);
    expect(piece.code).toBe(2);
    expect(piece.err).toContain('Walk sheet.svg instead');
  });
});

describe('walk over many bodies', () => {
  const many = async (rows: readonly string[], ...more: readonly string[]) => {
    const file = join(folder, 'many.ndjson');
    await writeFile(file, rows.join('\n'));
    const ran = await bodkin(['walk', 'bib', '--bodies', file, ...more]);
    const results = ran.out
      .split('\n')
      .filter((line) => line !== '')
      .map((line) => JSON.parse(line));
    return { ...ran, results };
  };
  const row = (more: object) => JSON.stringify({ ...measurements, ...more });

  test('gives one line a body with exactly the fields it promises, in order', async () => {
    const rows = Array.from({ length: 40 }, (_, i) => row({ id: `w${i}` }));
    const { code, results } = await many(rows);
    expect(code).toBe(0);
    expect(results.map(({ id }) => id)).toEqual(rows.map((_, i) => `w${i}`));
    expect(keysOf(results[0])).toEqual(['id', 'ok', 'issues', 'issuesLeftOut', 'worst', 'milliseconds']);
    expect(keysOf(results[0].worst)).toEqual(['seam', 'join', 'girth']);
  });

  test('answers a bad line with its issues and goes on', async () => {
    const { code, results } = await many([
      'not JSON',
      '[]',
      '"word"',
      'null',
      '',
      '{}',
      row({ id: 7, bustGirth: 'wide' }),
      row({ id: 'last' }),
    ]);
    expect(code).toBe(2);
    expect(results.map(({ ok }) => ok)).toEqual([false, false, false, false, false, false, true]);
    expect(results.map(({ id }) => id)).toEqual([1, 2, 3, 4, 6, 7, 'last']);
    for (const { issues, worst } of results.slice(0, -1)) {
      expect(issues.length).toBeGreaterThan(0);
      expect(worst).toEqual({ seam: null, join: null, girth: null });
    }
  });

  test('ends with 1 when a check fails, and carries the worst of each kind', async () => {
    const { code, results } = await many([row({ id: 'a' })], '--set', 'misfit=2');
    expect(code).toBe(1);
    expect(results[0]).toMatchObject({ ok: false, worst: { join: 0, girth: 0 } });
    expect(results[0].worst.seam).toBeCloseTo(2, 6);
  });

  test('says once what no body can be drafted with', async () => {
    const { code, out, err } = await bodkin([
      ...['walk', 'bib', '--bodies', 'nowhere.ndjson'],
      ...['--set', 'misfit=99', '--set', 'moood=bad'],
    ]);
    expect({ code, out }).toEqual({ code: 2, out: '' });
    expect(err.match(/misfit/g)).toHaveLength(1);
    expect(err).toContain('“mood”');
  });

  test.each(['bodice', 'dress'])(
    'says once what cannot go together whatever the body: %s',
    async (garment) => {
      const words = ['walk', garment, '--bodies', 'nowhere.ndjson', '--set', 'neckline=round'];
      const { code, out, err } = await bodkin(words, { garments });
      expect({ code, out }).toEqual({ code: 2, out: '' });
      expect(err).toMatch(/^error: A gathered front is straight .* it cannot be round\./);
      expect(err.split('\n')).toHaveLength(2);
    },
  );

  test('stops, with the code of what was found, when nobody reads on', async () => {
    const file = join(folder, 'long.ndjson');
    await writeFile(file, `{}\n${`${row({})}\n`.repeat(200)}`);
    let lines = 0;
    const ran = await bodkin(['walk', 'bib', '--bodies', file], {
      write: async (text) => {
        lines += text.split('\n').length - 1;
      },
      isRead: () => lines === 0,
    });
    expect(ran.code).toBe(2);
    expect(lines).toBeLessThan(50);
  });

  test('a fault of the program on one body is told on its line', async () => {
    const { code, results } = await many([row({ id: 'a' })], '--set', 'mood=broken');
    expect(code).toBe(70);
    expect(results[0].issues[0]).toMatchObject({ code: 'program-fault' });
    expect(results[0].issues[0].message).toContain('scissors lost');
  });

  test('an empty file is no measurements, as it is for one body', async () => {
    const { code, out, err } = await many([]);
    expect({ code, out }).toEqual({ code: 2, out: '' });
    expect(err).toContain('There are no measurements in');
  });

  test('takes the mark of an editor, and refuses what is said twice', async () => {
    const body = JSON.stringify(measurements);
    const { out } = await many([`\uFEFF${body}`, body.replace('"waistGirth"', '"hipGirth":99,"waistGirth"')]);
    const [first, second] = out
      .trim()
      .split('\n')
      .map((line) => JSON.parse(line));
    expect(first.ok).toBe(true);
    expect(second.issues[0]).toMatchObject({ code: 'said-twice', severity: 'error' });
  });

  test('goes on after a line of lists in lists, however deep', async () => {
    const deep = `{"x":${'['.repeat(8000)}${']'.repeat(8000)}}`;
    const { out } = await many([deep, JSON.stringify(measurements)]);
    const [first, second] = out
      .trim()
      .split('\n')
      .map((line) => JSON.parse(line));
    expect(first.ok).toBe(false);
    expect(second.ok).toBe(true);
  });

  test('tells the gravest issues of a line and counts the rest, however many there are', async () => {
    const odd = Object.fromEntries(Array.from({ length: 5000 }, (_, i) => [`zz${i}`, 1]));
    const { out } = await many([JSON.stringify({ ...measurements, ...odd })]);
    const [line] = out
      .trim()
      .split('\n')
      .map((text) => JSON.parse(text));
    expect(line.issues.length).toBeLessThanOrEqual(20);
    expect(out.length).toBeLessThan(8000);
    // What is near a name that is not known is told, never all there are.
    expect(out).not.toContain('Known are');
  });
});

import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { bodkin } from '../session.ts';

/** Any one document is answered within this, ms; an answer may be that it is too large. */
const AT_MOST = 2000;

let folder = '';
beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'bodkin-'));
});
afterAll(() => rm(folder, { recursive: true }));

const body = 'units: cm\nbustGirth: 92\nwaistGirth: 74\nhipGirth: 98\nbackNeckPointToWaist: 41\n';
const many = (count: number, text: (i: number) => string): string =>
  Array.from({ length: count }, (_, i) => text(i)).join('');
const svg = (content: string): string =>
  `<svg xmlns="http://www.w3.org/2000/svg" width="100mm" height="100mm" viewBox="0 0 100 100">${content}</svg>`;

// Each of these once kept the program busy for tens of seconds, took all memory, or never came to an end.
const measurements: Readonly<Record<string, string>> = {
  'eighty thousand unknown fields': body + many(80_000, (i) => `zz${i}: 1\n`),
  'eight thousand unknown fields': body + many(8_000, (i) => `zz${i}: 1\n`),
  'as many unknown fields as may be': body + many(1_900, (i) => `zz${i}: 1\n`),
  'fifty thousand changes of a fitting': `${body}fitting:\n${many(50_000, () => '  - {sideSeam: 1}\n')}`,
  'a hundred and fifty thousand tags': `${body}x: ${'!!str '.repeat(150_000)}a\n`,
  'fifteen thousand tags': `${body}x: ${'!!str '.repeat(15_000)}a\n`,
  'two hundred thousand anchors': `${body}x: [${many(200_000, (i) => `&a${i} 1,`)}]\n`,
  'brackets in brackets': `${body}x: ${'{'.repeat(90_000)}`,
  'lists in lists': `${body}x: ${'- '.repeat(45_000)}`,
  'quotes without end': '"'.repeat(99_000),
  'other quotes without end': `x: ${"'".repeat(90_001)}`,
  'brackets that close nothing': `x: ${']}'.repeat(45_000)}`,
  'commas without end': `${body}x: [${','.repeat(90_000)}]`,
  'short fields without end': `{${many(14_000, (i) => `k${i}: 1,`)}}`,
  'a fitting of empty changes': `${body}fitting: [${'{},'.repeat(1_900)}]`,
  nothing: '',
  'the mark of an editor': '\uFEFF',
};

const drawings: Readonly<Record<string, string>> = {
  'pictures that never end': svg(`<path d="M0 0" style="${'(data:'.repeat(700_000)}"/>`),
  'a section of five megabytes': svg(`<![CDATA[${'x'.repeat(4_900_000)}]]>`),
  'sections that never end': svg('<![CDATA['.repeat(500_000)),
  'an element of four hundred thousand attributes': svg(`<path ${many(400_000, (i) => `a${i}="1" `)}/>`),
  'types of document without end': '<!DOCTYPE '.repeat(400_000),
  'a million references': `<!DOCTYPE svg [<!ENTITY a "${'x'.repeat(200)}">]>${svg('&a;'.repeat(1_000_000))}`,
  'definitions without end': `<!DOCTYPE svg [${'<!ENTITY a "b">'.repeat(300_000)}]>${svg('')}`,
  'an attribute of five megabytes': svg(`<path d="M0 0" a="${'x'.repeat(4_900_000)}"/>`),
  'a name without end': `<svg ${'a'.repeat(4_900_000)}`,
  'a comment without end': `<svg><!--${'- '.repeat(2_400_000)}`,
  'a million groups': svg('<g/>'.repeat(1_000_000)),
  'groups in groups': svg('<g>'.repeat(300_000) + '</g>'.repeat(300_000)),
  'a path of a million lines': svg(`<path d="M0 0${'L1 1'.repeat(1_000_000)}"/>`),
};

const reports: Readonly<Record<string, string>> = {
  'three hundred thousand seams': `{"seams":[${'{},'.repeat(300_000)}{}],"girths":[]}`,
  'lists in lists': `{"girths":[],"seams":${'['.repeat(5_000)}${']'.repeat(5_000)}}`,
  'as many choices as may be': `{"garment":"bib","body":"x","seams":[],"girths":[],"joins":[],"styling":{${many(29_000, (i) => `"k${i}":[],`)}"z":1}}`,
  'a million choices': `{"garment":"bib","body":"x","seams":[],"girths":[],"joins":[],"styling":{${many(500_000, (i) => `"k${i}":[],`)}"z":1}}`,
};

async function answered(words: readonly string[]): Promise<{ readonly code: number; readonly ms: number }> {
  const [start, used] = [performance.now(), process.cpuUsage()];
  const { code } = await bodkin(words);
  // Beside other tests the clock runs on while this one waits for its turn.
  const { user, system } = process.cpuUsage(used);
  return { code, ms: Math.min(performance.now() - start, (user + system) / 1000) };
}

describe('a document that means harm, or is merely large', () => {
  it.each(Object.keys(measurements))('is answered in time as measurements: %s', async (name) => {
    const file = join(folder, 'body.yaml');
    await writeFile(file, measurements[name] ?? '');
    const { code, ms } = await answered(['body', file]);
    expect(code).toBe(2);
    expect(ms).toBeLessThan(AT_MOST);
  });

  it.each(Object.keys(reports))('is answered in time as an earlier report: %s', async (name) => {
    const [file, good] = [join(folder, 'report.json'), join(folder, 'good.yaml')];
    await writeFile(file, reports[name] ?? '');
    await writeFile(good, body);
    const { code, ms } = await answered(['walk', 'bib', '--body', good, '--before', file]);
    expect(code).toBe(2);
    expect(ms).toBeLessThan(AT_MOST);
  });

  it('is called what it was given for: choices, or a report, and not measurements', async () => {
    const [file, good] = [join(folder, 'long.yaml'), join(folder, 'good.yaml')];
    await writeFile(good, body);
    await writeFile(
      file,
      many(3_000, (i) => `c${i}: 1\n`),
    );
    expect((await bodkin(['walk', 'bib', '--body', good, '--styling', file])).err).toMatch(
      /no set of measurements or choices/,
    );
    await writeFile(file, reports['three hundred thousand seams'] ?? '');
    expect((await bodkin(['walk', 'bib', '--body', good, '--before', file])).err).toMatch(
      /no report of a draft, and too large for measurements/,
    );
  });

  it('is refused by its size, from five megabytes on', async () => {
    const [file, good] = [join(folder, 'large.svg'), join(folder, 'good.yaml')];
    await writeFile(good, body);
    await writeFile(file, svg(`<path d="M0 0${'L1 1'.repeat(1_300_000)}"/>`));
    for (const words of [
      ['alter', file, '--out', join(folder, 'out')],
      ['walk', '--file', file],
      ['walk', 'bib', '--body', good, '--before', file],
      ['lay', '--shapes', file, '--out', join(folder, 'out')],
    ]) {
      const { code, err } = await bodkin(words);
      expect([code, err]).toEqual([2, expect.stringMatching(/larger than 5 MB/)]);
    }
  });

  it('may hold a scan besides, of which no line is read', async () => {
    const file = join(folder, 'scan.svg');
    const scan = `<image href="data:image/jpeg;base64,${'A'.repeat(19_000_000)}"/>`;
    await writeFile(file, svg(`${scan}<path class="outline" d="M10 10L90 10L90 90L10 90Z"/>`));
    const { code, ms } = await answered(['alter', file, '--out', join(folder, 'scan')]);
    expect(code).toBe(0);
    expect(ms).toBeLessThan(AT_MOST);
    await writeFile(file, svg(`${scan}${scan}`));
    const { err } = await bodkin(['alter', file, '--out', join(folder, 'scan')]);
    expect(err).toMatch(/larger than 20 MB/);
  });

  it.each(Object.keys(drawings))('is answered in time as a drawing: %s', async (name) => {
    const file = join(folder, 'drawing.svg');
    const good = join(folder, 'good.yaml');
    await writeFile(file, drawings[name] ?? '');
    await writeFile(good, body);
    for (const words of [
      ['alter', file, '--out', join(folder, 'out')],
      ['walk', '--file', file],
      ['walk', 'bib', '--body', good, '--before', file],
    ]) {
      const { code, ms } = await answered(words);
      expect(code).toBe(2);
      expect(ms).toBeLessThan(AT_MOST);
    }
  });
});

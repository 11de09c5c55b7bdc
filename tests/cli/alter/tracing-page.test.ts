import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { meanings } from '../../../engine/reading/marked.ts';
import { turnWords } from '../../../engine/reading/outline-edges.ts';
import { readOutline } from '../../../engine/reading/read-outline.ts';
import { notchWords } from '../../../engine/reading/traced-notches.ts';
import { bodkin } from '../session.ts';

const url = new URL('../../../cli/tracing.md', import.meta.url);
const page = readFileSync(url, 'utf8');
const root = new URL('../../..', import.meta.url).pathname;

/** The block of code of this kind. */
const block = (kind: string): string =>
  new RegExp(`^\`\`\`${kind}\n([^]*?)^\`\`\``, 'm').exec(page)?.[1] ?? `no ${kind}`;

/** The rows of the table under a heading, a list of cells each. */
const rowsUnder = (heading: string): readonly (readonly string[])[] =>
  (page.split(`## ${heading}\n`)[1]?.split('\n## ')[0] ?? '')
    .split('\n')
    .filter((line) => line.startsWith('| `'))
    .map((line) =>
      line
        .split('|')
        .map((cell) => cell.trim())
        .slice(1, -1),
    );

const quoted = (text = ''): readonly string[] =>
  [...text.matchAll(/`([^`]+)`/g)].map(([, word = '']) => word);

/** What may stop or remark on an alteration: everything that is written to a reader of this page. */
const sources = [
  ...[
    'read-outline',
    'outline-edges',
    'outline-fault',
    'drawing-remarks',
    'traced-notches',
    'traced-scale',
    'read-markup',
  ].map((file) => `engine/reading/${file}.ts`),
  ...readdirSync(join(root, 'engine/shaping')).map((file) => `engine/shaping/${file}`),
  'engine/alter.ts',
  ...readdirSync(join(root, 'cli/alter')).map((file) => `cli/alter/${file}`),
].map((file) => readFileSync(join(root, file), 'utf8').replace(/\s+/g, ' '));

const codes = new Set(
  sources.flatMap((code) =>
    [
      ...code.matchAll(
        /(?:\b(?:refuse|refused|refusedFile|note|fileNote|warning|unusable)\( ?|code: )'([a-z-]+)'/g,
      ),
    ].map(([, found = '']) => found),
  ),
);

describe('the page about tracing', () => {
  test('shows a drawing and a command that give what it prints', async () => {
    const folder = await mkdtemp(join(tmpdir(), 'bodkin-'));
    await writeFile(join(folder, 'front.svg'), block('svg'));
    const words = [...block('sh').matchAll(/"([^"]*)"|(\S+)/g)].map(([, text, word]) => text ?? word ?? '');
    const [program, ...line] = words.map((word) => (word === 'front.svg' ? join(folder, word) : word));
    expect(program).toBe('bodkin');
    const { code, out, err } = await bodkin(line);
    await rm(folder, { recursive: true });
    expect(err).toBe('');
    expect(code).toBe(0);
    expect(out).toBe(block('text'));
  });

  test('shows a drawing as a program would save it: labelled layers, transforms, pixels, one name space', () => {
    const svg = block('svg');
    expect(svg).toMatch(/width="\d+px" height="\d+px" viewBox="/);
    expect(svg.match(/<g id="layer\d" aria-label="/g)?.length).toBeGreaterThan(3);
    for (const way of ['translate(', 'matrix(']) expect(svg).toContain(`transform="${way}`);
    expect([...svg.matchAll(/\b(?:[\w-]+:)[\w-]+=/g)].map(([found]) => found)).toEqual([]);
  });

  test('lists the words that mark a line, those of one meaning together, and no other', () => {
    const rows = rowsUnder('Words that mark a line').map(([words]) => quoted(words));
    expect(rows.flat().toSorted()).toEqual(Object.keys(meanings).toSorted());
    for (const words of rows) expect(new Set(words.map((word) => meanings[word])).size).toBe(1);
    const told = new Set(quoted(page.split('## Words that mark a line\n')[1]));
    expect([...notchWords, ...turnWords].filter((word) => !told.has(word))).toEqual([]);
  });

  test.each(['id', 'class', 'aria-label', 'data-layer'])('says truly that words count in %s', (attribute) => {
    const svg = `<svg><g ${attribute}="My OUTLINE 2"><path d="M0 0H90V90H0Z"/></g><path d="M0 0H400V400H0Z"/></svg>`;
    const read = readOutline(svg, { corner: 0.4, mmPerUnit: 1 });
    expect(read.ok && read.value.edges[0]?.curves[0]?.to).toEqual({ x: 90, y: 0 });
  });

  test('lists every message there is, each in words that the message has', () => {
    const rows = rowsUnder('What the messages say');
    const listed = rows.flatMap(([names]) => quoted(names));
    expect(listed.toSorted()).toEqual([...codes].toSorted());
    const unsaid = rows
      .map(([, says = '']) => says)
      .filter((says) => !sources.some((code) => code.includes(says)));
    expect(unsaid).toEqual([]);
    expect(rows.filter((cells) => cells.length !== 3 || cells.includes(''))).toEqual([]);
  });

  test('names options that there are, and links to what is there', async () => {
    const { out: help } = await bodkin(['alter', '--help']);
    const named = new Set([...page.matchAll(/(?<![\w-])--[a-z][a-z-]+/g)].map(([option]) => option));
    expect([...named].filter((option) => !help.includes(`${option} `))).toEqual([]);
    for (const [, link = ''] of page.matchAll(/\]\(([^)#\s]+)/g))
      expect(existsSync(new URL(link, url))).toBe(true);
    expect(readFileSync(join(root, 'README.md'), 'utf8')).toContain('(cli/tracing.md)');
  });
});

import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';

const folder = fileURLToPath(new URL('../../drafts', import.meta.url));

/** Where numbers belong: choices, rules and bands, each with its source; and the order of seams, and what stocks are tried on. */
const tables = /(^|\/)([a-z-]*rules|[a-z-]*choices|bands|allowances|sewing-rank|notch-shapes|shapes-of)\.ts$/;

/** Numbers of the method, not of the trade: how strong a wish is, what a cubic or a spline is made of, first guesses. */
const method: Readonly<Record<string, readonly string[]>> = {
  'keep-near.ts': ['0.05', '0.02', '0.002'],
  'lining/facing-pieces.ts': ['3'],
  'sleeve/arm-edges.ts': ['1.5', '3'],
  'sleeve/cap-lines.ts': ['0.4', '8', '9'],
};

/** What a number may stand behind: the order of pieces, the bends an edge may have, classes of ISO 4916. */
const ordinal =
  /\b(number|inflections|seamClass|count|times): (?:gore\.number \+ |part === '\w*' \? |[\d. :])*$|seamEdge\(|princess\(|\[\w*$/;

/** A source without comments, words and patterns. */
const withoutWords = (source: string): string =>
  source
    .replace(/\/\*[\s\S]*?\*\/|\/\/.*/g, '')
    .replace(/'(?:[^'\\\n]|\\.)*'/g, "''")
    .replace(/`[^`]*`/g, '``')
    .replace(/\/\^.*\$\//g, '');

/** Numbers in a file that are no half, whole or double, no named constant with its reason, and no ordinal. */
function numbersIn(file: string): readonly string[] {
  const source = readFileSync(`${folder}/${file}`, 'utf8');
  const explained = [...source.matchAll(/\*\/\n(?:export )?const [A-Z_]+ = ([\d.e-]+);/g)].map(([, n]) => n);
  const known = new Set(['0', '1', '2', '0.5', ...explained, ...(method[file] ?? [])]);
  return withoutWords(source)
    .split('\n')
    .flatMap((line) =>
      [...line.matchAll(/(?<![\w.$])\d+(?:\.\d+)?(?:e-?\d+)?(?!\w)/g)]
        .filter(({ 0: n, index }) => {
          const turnsDegrees = n === '180' && line.includes('Math.PI');
          return !known.has(n) && !turnsDegrees && !ordinal.test(line.slice(0, index));
        })
        .map(([n]) => `${file}: ${n} in “${line.trim()}”`),
    );
}

const files = readdirSync(folder, { recursive: true, encoding: 'utf8' }).filter((file) =>
  file.endsWith('.ts'),
);

test('no file of a draft is longer than can be read in one sitting', () => {
  const lines = (file: string): number => readFileSync(`${folder}/${file}`, 'utf8').split('\n').length - 1;
  expect(files.filter((file) => lines(file) > 200)).toEqual([]);
});

test('every number in a draft is a measurement, a choice, a rule or a band, or says what it is for', () => {
  expect(files.length).toBeGreaterThan(150);
  expect(files.filter((file) => !tables.test(file)).flatMap(numbersIn)).toEqual([]);
});

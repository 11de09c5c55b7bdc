import { readdirSync, readFileSync } from 'node:fs';
import { join, relative } from 'node:path';
import { parseArgs } from 'node:util';
import { Stryker } from '@stryker-mutator/core';
import fc from 'fast-check';

/**
 * Changes operators of the engine one at a time, and says which changes the tests of the same folder do not notice:
 *
 *     npm run mutants -- --mutate engine/geometry/one-way.ts     (or engine/geometry/trim.ts:31-72)
 *     npm run mutants -- --sample 100 --seed 7                   (places of a few lines, drawn at random)
 */
const { values } = parseArgs({
  options: {
    mutate: { type: 'string' },
    sample: { type: 'string' },
    seed: { type: 'string', default: '1911' },
  },
});

/** What may be changed, and the tests that are to notice. */
const folders: Readonly<Record<string, readonly string[]>> = {
  'engine/geometry': ['tests/engine/geometry/**/*.test.ts'],
  'engine/numeric': ['tests/engine/numeric/**/*.test.ts'],
  'engine/constraints': ['tests/engine/constraints/**/*.test.ts'],
  'engine/finishing': ['tests/engine/finishing/**/*.test.ts'],
  'engine/checks': ['tests/engine/checks/**/*.test.ts', 'tests/engine/evaluate-unfit.test.ts'],
  'engine/reading': [
    'tests/engine/reading/**/*.test.ts',
    'tests/engine/render/*.test.ts',
    'tests/engine/cutting-file/*.test.ts',
  ],
};

/** Lines of a place that is drawn at random; an operator that stretches over more is never drawn. */
const LINES = 3;

/** So many places, each line of the folders as likely as every other. */
function placesAt(random: number, count: number): readonly string[] {
  const places = Object.keys(folders).flatMap((folder) =>
    readdirSync(folder, { recursive: true, encoding: 'utf8' })
      .filter((name) => name.endsWith('.ts'))
      .map((name) => join(folder, name))
      .toSorted()
      .flatMap((file) =>
        readFileSync(file, 'utf8')
          .split('\n')
          .map((_, i) => `${file}:${i + 1}-${i + LINES}`),
      ),
  );
  return fc.sample(fc.noBias(fc.constantFrom(...places)), { numRuns: count, seed: random });
}

const wanted = values.sample
  ? placesAt(Number(values.seed), Number(values.sample))
  : (values.mutate?.split(',') ?? Object.keys(folders).map((folder) => `${folder}/**/*.ts`));

/** Whether a change only moves a limit onto its own side or off it, as `<` to `<=` does. */
const isLimitOnly = (before: string, after: string): boolean =>
  before.replace(/([<>])=/g, '$1') === after.replace(/([<>])=/g, '$1');

type MutantResult = Awaited<ReturnType<Stryker['runMutationTest']>>[number];

/** What stands between two places of a file; lines and columns count from 1. */
function standing(file: string, { start, end }: MutantResult['location']): string {
  const lines = readFileSync(file, 'utf8')
    .split('\n')
    .slice(start.line - 1, end.line);
  const rest = (lines.at(-1)?.length ?? 0) - end.column + 1;
  const text = lines.join('\n');
  return text.slice(start.column - 1, text.length - rest);
}

const [changes, limits]: [boolean[], boolean[]] = [[], []];
for (const [folder, testFiles] of Object.entries(folders)) {
  const mutate = [...new Set(wanted)].filter((place) => place.startsWith(`${folder}/`));
  if (mutate.length === 0) continue;
  const results = await new Stryker({ mutate, testFiles: [...testFiles] }).runMutationTest();
  for (const { status, fileName, location, replacement = '' } of results) {
    if (status === 'Ignored') continue;
    const before = standing(fileName, location);
    const isNoticed = status === 'Killed' || status === 'Timeout';
    (isLimitOnly(before, replacement) ? limits : changes).push(isNoticed);
    const { line, column } = location.start;
    if (!isNoticed)
      say(`${relative('.', fileName)}:${line}:${column}  ${before}  ->  ${replacement}  (${status})`);
  }
  say(
    `Up to ${folder}: ${countOf(changes)} changes noticed, and ${countOf(limits)} of < to <= and the like.`,
  );
}
if (changes.length + limits.length === 0)
  say(`There is no operator to change there. Name files of ${Object.keys(folders).join(', ')}.`);

function countOf(noticed: readonly boolean[]): string {
  return `${noticed.filter(Boolean).length} of ${noticed.length}`;
}

function say(line: string): void {
  process.stdout.write(`${line}\n`);
}

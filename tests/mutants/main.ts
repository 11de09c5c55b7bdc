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
  'engine/constraints': ['tests/engine/constraints/**/*.test.ts'],
  'engine/finishing': ['tests/engine/finishing/**/*.test.ts'],
  'engine/checks': ['tests/engine/checks/**/*.test.ts'],
  'engine/reading': ['tests/engine/reading/**/*.test.ts', 'tests/engine/render/*.test.ts'],
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

/** What a change makes of a place, and what stood there; both without `=` after `<` and `>`, they are alike where only a limit itself changes sides. */
const atLimit = (before: string, after: string): boolean =>
  before.replace(/([<>])=/g, '$1') === after.replace(/([<>])=/g, '$1');

const tallies = { changes: [0, 0], limits: [0, 0] };
for (const [folder, testFiles] of Object.entries(folders)) {
  const mutate = [...new Set(wanted)].filter((place) => place.startsWith(`${folder}/`));
  if (mutate.length === 0) continue;
  for (const mutant of await new Stryker({ mutate, testFiles: [...testFiles] }).runMutationTest()) {
    if (mutant.status === 'Ignored') continue;
    const { start, end } = mutant.location;
    const lines = readFileSync(mutant.fileName, 'utf8')
      .split('\n')
      .slice(start.line - 1, end.line);
    const before = lines
      .join('\n')
      .slice(start.column - 1, end.line === start.line ? end.column - 1 : undefined);
    const kind = atLimit(before, mutant.replacement ?? '') ? 'limits' : 'changes';
    const noticed = mutant.status === 'Killed' || mutant.status === 'Timeout';
    tallies[kind][0] += Number(noticed);
    tallies[kind][1]++;
    if (!noticed)
      process.stdout.write(
        `${relative('.', mutant.fileName)}:${start.line}:${start.column} ${before} -> ${mutant.replacement} (${mutant.status}${kind === 'limits' ? ', a limit only' : ''})\n`,
      );
  }
}
const says = ([noticed, all]: readonly number[]): string => `${noticed} of ${all}`;
process.stdout.write(
  `${says(tallies.changes)} changes were noticed, and ${says(tallies.limits)} of < to <= and the like.\n`,
);

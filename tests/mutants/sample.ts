import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import config from '../../.stryker.config.json' with { type: 'json' };

/**
 * Prints so many places, a few lines each, drawn at random from all that may be mutated, as the value of `--mutate`:
 * npm run mutants -- --mutate "$(npx tsx tests/mutants/sample.ts 60 7)"
 */
const [count = '60', seed = '1911'] = process.argv.slice(2);

/** Lines of one place: operators that stretch over more are never drawn. */
const LINES = 3;

const files = config.mutate.flatMap((folder) =>
  readdirSync(folder.replace('/**', ''), { recursive: true, encoding: 'utf8' })
    .filter((name) => name.endsWith('.ts'))
    .map((name) => join(folder.replace('/**', ''), name))
    .toSorted(),
);
const places = files.flatMap((file) =>
  readFileSync(file, 'utf8')
    .split('\n')
    .map((_, i) => `${file}:${i + 1}-${i + LINES}`),
);
const drawn = fc.sample(fc.noBias(fc.constantFrom(...places)), {
  numRuns: Number(count),
  seed: Number(seed),
});
process.stdout.write([...new Set(drawn)].join(','));

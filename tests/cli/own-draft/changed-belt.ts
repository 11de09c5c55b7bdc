import { readFileSync } from 'node:fs';
import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll } from 'vitest';

const root = new URL('../../../', import.meta.url).pathname;

/** The belt of the lesson as a draft of one's own, wherever it lies. */
const belt = `${readFileSync(join(root, 'tests/drafts/belt.ts'), 'utf8').replaceAll('../../', root)}\nexport default belt;\n`;

/** A change of the belt's source: what stands there, once at least, and what is to stand there instead. */
export type Change = readonly [was: string, is: string];

/** A changed belt in a file of its own. */
export interface ChangedBelt {
  readonly file: string;
  /** The line, from 1, on which some of the changed text stands first. */
  readonly lineOf: (text: string) => number;
}

/** A folder for one file of tests, and in it the belt with changes made to its source; the first occurrence is changed. */
export function beltFolder(): (name: string, ...changes: readonly Change[]) => Promise<ChangedBelt> {
  let folder = '';
  beforeAll(async () => {
    folder = await mkdtemp(join(tmpdir(), 'bodkin-'));
  });
  afterAll(() => rm(folder, { recursive: true }));
  return async (name, ...changes) => {
    const source = changes.reduce((text, [was, is]) => {
      if (!text.includes(was)) throw new Error(`the belt has no ${was}`);
      return text.replace(was, () => is);
    }, belt);
    const file = join(folder, `${name}.ts`);
    await writeFile(file, source);
    return { file, lineOf: (text) => source.slice(0, source.indexOf(text)).split('\n').length };
  };
}

/** A body that ships. */
export const leadingLady = join(root, 'measurements/leading-lady.yaml');

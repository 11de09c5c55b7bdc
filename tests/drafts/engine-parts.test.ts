import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join, normalize } from 'node:path';
import { describe, expect, it } from 'vitest';
import * as library from '../../drafts/index.ts';

const drafts = new URL('../../drafts/', import.meta.url).pathname;

/** Files that are the program's, not one garment's. */
const program = ['index.ts', 'engine-parts.ts', 'garments.ts', 'garments-by-name.ts', 'usual.ts'];

const all: Readonly<Record<string, unknown>> = { ...library, ...library.engineParts };

/** Everything that the drafts import from outside their own files, with the file that it comes from. */
const imported = readdirSync(drafts, { recursive: true, encoding: 'utf8' })
  .filter((file) => file.endsWith('.ts') && !program.includes(file))
  .flatMap((file) =>
    [
      ...readFileSync(drafts + file, 'utf8').matchAll(/^import (?!type )\{([^}]*)\} from '([^']+)'/gms),
    ].flatMap(([, names = '', from = '']) => {
      const path = normalize(join(drafts, dirname(file), from));
      if (path.startsWith(drafts) && !program.some((each) => path === drafts + each)) return [];
      return names
        .split(',')
        .map((name) => name.trim().split(' as ')[0] ?? '')
        .filter((name) => name !== '' && !name.startsWith('type '))
        .map((name) => ({ name, path }));
    }),
  );

describe('a changed copy of a draft', () => {
  it('finds under its name all that the draft imports of the program, and nothing else under it', async () => {
    const wrong: string[] = [];
    for (const { name, path } of imported) {
      const own: Readonly<Record<string, unknown>> = await import(path);
      if (all[name] === undefined || all[name] !== own[name])
        wrong.push(`${name} of ${path.slice(drafts.length - 7)}`);
    }
    expect(imported.length).toBeGreaterThan(100);
    expect(wrong).toEqual([]);
  });
});

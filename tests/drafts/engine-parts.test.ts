import { readFileSync } from 'node:fs';
import { dirname, join, normalize } from 'node:path';
import { describe, expect, it } from 'vitest';
import * as library from '../../drafts/index.ts';

const drafts = new URL('../../drafts/', import.meta.url).pathname;

/** Not of one garment: what other files import of it is the program's. */
const usual = join(drafts, 'usual.ts');

const all: Readonly<Record<string, unknown>> = { ...library, ...library.engineParts };

/** What a file imports, types left out. */
const importsOf = (path: string): readonly { readonly names: string; readonly from: string }[] =>
  [...readFileSync(path, 'utf8').matchAll(/^import (?!type )\{([^}]*)\} from '(\.[^']+)'/gms)].map(
    ([, names = '', from = '']) => ({ names, from: normalize(join(dirname(path), from)) }),
  );

const isOwn = (path: string): boolean => path.startsWith(drafts) && path !== usual;

/** The files that the garments are drawn by. */
function filesOfGarments(): ReadonlySet<string> {
  const found = new Set<string>();
  const wanted = importsOf(join(drafts, 'garments-by-name.ts')).map(({ from }) => from);
  for (let path = wanted.pop(); path !== undefined; path = wanted.pop()) {
    if (found.has(path)) continue;
    found.add(path);
    wanted.push(
      ...importsOf(path)
        .map(({ from }) => from)
        .filter(isOwn),
    );
  }
  return found;
}

/** Everything that they import from outside, with the file that it comes from. */
const imported = [...filesOfGarments()].flatMap((file) =>
  importsOf(file)
    .filter(({ from }) => !isOwn(from))
    .flatMap(({ names, from: path }) =>
      names
        .split(',')
        .map((name) => name.trim().split(' as ')[0] ?? '')
        .filter((name) => name !== '' && !name.startsWith('type '))
        .map((name) => ({ name, path })),
    ),
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

import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join, normalize } from 'node:path';
import { describe, expect, it } from 'vitest';

const root = new URL('..', import.meta.url).pathname;

const files = ['engine', 'drafts', 'cli'].flatMap((folder) =>
  readdirSync(join(root, folder), { recursive: true, encoding: 'utf8' })
    .filter((file) => /\.tsx?$/.test(file))
    .map((file) => join(folder, file)),
);

/** The files of the tree that each file imports, types included. */
const imports: ReadonlyMap<string, readonly string[]> = new Map(
  files.map((file) => [
    file,
    [...readFileSync(join(root, file), 'utf8').matchAll(/from\s+'(\.[^']+\.tsx?)'/g)].map(([, path = '']) =>
      normalize(join(dirname(file), path)),
    ),
  ]),
);

/** A way round from a node to itself, where there is one. */
function circleIn(graph: ReadonlyMap<string, readonly string[]>): readonly string[] | undefined {
  const done = new Set<string>();
  const visit = (node: string, way: readonly string[]): readonly string[] | undefined => {
    if (way.includes(node)) return [...way.slice(way.indexOf(node)), node];
    if (done.has(node)) return undefined;
    done.add(node);
    for (const next of graph.get(node) ?? []) {
      const found = visit(next, [...way, node]);
      if (found) return found;
    }
    return undefined;
  };
  for (const node of graph.keys()) {
    const found = visit(node, []);
    if (found) return found;
  }
  return undefined;
}

/** The folder of a file; one that lies in none stands for itself. */
const folderOf = (file: string): string =>
  file.split('/').length > 2 ? file.split('/').slice(0, 2).join('/') : file;

describe('numbers below which something counts as nothing', () => {
  it('have a name and a reason, and stand in no comparison bare', () => {
    const bare = files.flatMap((file) =>
      readFileSync(join(root, file), 'utf8')
        .split('\n')
        .filter((line) => !/^\s*(?:\/?\*|\/\/)/.test(line))
        .filter((line) => /[<>]=?\s*(?:\w+ [-+] )?-?[\d.]*e-\d/.test(line))
        .filter((line) => !/\bconst \w+ = /.test(line))
        .map((line) => `${file}: ${line.trim()}`),
    );
    expect(bare).toEqual([]);
  });
});

describe('imports', () => {
  it('run from cli to drafts to engine, never back', () => {
    const rank = ['engine', 'drafts', 'cli'];
    const back = [...imports].flatMap(([file, wanted]) =>
      wanted
        .filter((other) => rank.indexOf(other.split('/')[0] ?? '') > rank.indexOf(file.split('/')[0] ?? ''))
        .map((other) => `${file} -> ${other}`),
    );
    expect(back).toEqual([]);
  });

  it('of the page go to the public surface, and beside it to files of the command line alone', () => {
    const beyond = [...imports].flatMap(([file, wanted]) =>
      file.startsWith('cli/page/')
        ? wanted.filter((other) => !other.startsWith('cli/') && other !== 'drafts/index.ts')
        : [],
    );
    expect(beyond).toEqual([]);
  });

  it('never run in a circle, from file to file', () => {
    expect(circleIn(imports)).toBeUndefined();
  });

  // Views of the page say what they keep, and its state holds that: the page runs in circles from folder to folder alone.
  it.each(['engine', 'cli'])('never run in a circle, from folder to folder: %s', (root) => {
    const folders = new Map<string, readonly string[]>();
    for (const [file, wanted] of imports) {
      if (!file.startsWith(`${root}/`) || file.startsWith('cli/page/')) continue;
      const from = folderOf(file);
      const to = wanted.map(folderOf).filter((folder) => folder !== from);
      folders.set(from, [...new Set([...(folders.get(from) ?? []), ...to])]);
    }
    expect(circleIn(folders)).toBeUndefined();
  });

  it('of geometry lead to no other folder', () => {
    const beyond = [...imports].flatMap(([file, wanted]) =>
      file.startsWith('engine/geometry/') ? wanted.map(folderOf) : [],
    );
    expect(beyond.filter((other) => other !== 'engine/geometry' && !other.endsWith('.ts'))).toEqual([]);
  });
});

describe('names', () => {
  const sources = files.map((file) => ({ file, text: readFileSync(join(root, file), 'utf8') }));

  it('that are exported for a type mean one type', () => {
    const where = new Map<string, readonly string[]>();
    for (const { file, text } of sources)
      for (const [, name = ''] of text.matchAll(/^export (?:abstract )?(?:type|interface|class) (\w+)/gm))
        where.set(name, [...(where.get(name) ?? []), file]);
    expect([...where].filter(([, places]) => places.length > 1)).toEqual([]);
  });

  it('are all that a file needs to write a number: digits are chosen by engine/text, and for drawings by the path writer', () => {
    const own = sources.filter(({ text }) => /\.to(?:Fixed|Precision|LocaleString)\(/.test(text));
    expect(own.map(({ file }) => file).filter((file) => !file.startsWith('engine/text/'))).toEqual([
      'engine/render/path-data.ts',
    ]);
  });
});

import { readFile } from 'node:fs/promises';
import { dirname, join, relative } from 'node:path';

/**
 * The page imports the public surface alone, which is one file; and a file that is loaded is loaded with all that it leads to. So
 * that what is wanted later is loaded later, a name is imported in the build from where it is declared.
 */
export function directImports(root) {
  const surface = join(root, 'drafts/index.ts');
  const read = declared(surface);
  return {
    name: 'direct imports',
    setup: ({ onLoad }) =>
      onLoad({ filter: /[\\/]cli[\\/]page[\\/].*\.tsx?$/ }, async ({ path }) => {
        const where = await read;
        const direct = (all, type, names, from) => {
          if (join(dirname(path), from) !== surface) return all;
          if (type) return '';
          const values = names.split(',').map((name) => name.trim());
          return values
            .filter((name) => name && !name.startsWith('type '))
            .map(
              (name) =>
                `import { ${name} } from ${JSON.stringify(fromHere(path, where.get(name) ?? surface))};`,
            )
            .join(' ');
        };
        const text = await readFile(path, 'utf8');
        return {
          contents: text.replace(/import (type )?\{([^}]*)\} from '([^']+)';/g, direct),
          loader: path.endsWith('x') ? 'tsx' : 'ts',
        };
      }),
  };
}

/** Where each name of the public surface is declared; those that come by `*` are not among them. */
async function declared(surface) {
  const text = await readFile(surface, 'utf8');
  const where = new Map();
  for (const [, names, from] of text.matchAll(/export \{([^}]*)\} from '([^']+)'/g))
    for (const name of names.split(',')) where.set(name.trim(), join(dirname(surface), from));
  return where;
}

const fromHere = (path, to) => {
  const way = relative(dirname(path), to).replaceAll('\\', '/');
  return way.startsWith('.') ? way : `./${way}`;
};

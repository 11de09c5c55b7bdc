import { dirname } from 'node:path';
import type { Plugin } from 'esbuild';
import { engineParts } from '../../drafts/index.ts';
import { filesJoined, importedBy } from './draft-files.ts';

/** What a changed draft imports of the program: the public surface, and what the drafts take from the engine besides. */
const program = `export * from 'bodkin'; import { engineParts } from 'bodkin'; export const { ${Object.keys(engineParts).join(', ')} } = engineParts;`;

/** Has esbuild read the files of a draft that are kept in one; each keeps its lines, so that a mistake is told with the line of the whole. */
export function severalFiles(path: string, text: string): Plugin {
  const files = new Map(filesJoined(text, path).map((file) => [file.name, file]));
  const names = new Set(files.keys());
  return {
    name: 'several files in one',
    setup: ({ onResolve, onLoad }) => {
      onResolve({ filter: /.*/, namespace: 'file' }, ({ kind }) => {
        const [first] = names;
        return kind === 'entry-point' && first !== undefined
          ? { path: first, namespace: 'joined' }
          : undefined;
      });
      onResolve({ filter: /^[.]/, namespace: 'joined' }, ({ importer, path: specifier }) => {
        const found = importedBy(importer, specifier, names);
        return typeof found === 'object'
          ? { path: found.file, namespace: 'joined' }
          : { path: 'program', namespace: 'program' };
      });
      onLoad({ filter: /.*/, namespace: 'joined' }, ({ path: name }) => {
        const { text: contents = '', line = 1 } = files.get(name) ?? {};
        return {
          contents: '\n'.repeat(line - 1) + contents,
          loader: name.endsWith('.js') ? 'js' : 'ts',
          resolveDir: dirname(path),
        };
      });
      onLoad({ filter: /.*/, namespace: 'program' }, () => ({
        contents: program,
        resolveDir: dirname(path),
      }));
    },
  };
}

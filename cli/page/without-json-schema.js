import { readFile } from 'node:fs/promises';

/**
 * The page reads by schemas and writes none as JSON Schema: what would is in every schema of the library, a fiftieth of all the
 * code of a first visit, and is left out.
 */
export const withoutJsonSchema = {
  name: 'without JSON Schema',
  setup: ({ onLoad }) =>
    onLoad(
      { filter: /zod[\\/]v4[\\/]core[\\/](json-schema-processors|to-json-schema)\.js$/ },
      async ({ path }) => {
        const text = await readFile(path, 'utf8');
        const names = [...text.matchAll(/^export (?:const|function) (\w+)|^export \{ (\w+ as \w+) \};/gm)];
        const none = names.map(([, name, renamed]) =>
          renamed ? `export { none as ${renamed.split(' ').at(-1)} };` : `export { none as ${name} };`,
        );
        return { contents: `const none = () => undefined;\n${none.join('\n')}\n` };
      },
    ),
};

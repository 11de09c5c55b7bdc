import { fileURLToPath } from 'node:url';

/**
 * Predicates of the plane alone, where nothing else is asked for: each file of them makes room for its work when it is loaded, so
 * that a bundler leaves none out that the library's index leads to. That of circles is as large as all that a first draft needs.
 */
export const flatPredicates = {
  name: 'flat predicates',
  setup: ({ onResolve }) =>
    onResolve({ filter: /^robust-predicates$/ }, ({ importer }) =>
      /constrainautor/.test(importer)
        ? undefined
        : { path: fileURLToPath(new URL('esm/orient2d.js', import.meta.resolve('robust-predicates'))) },
    ),
};

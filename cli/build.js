import { cp, mkdir, rm } from 'node:fs/promises';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';
import { buildPage, buildWornPage } from './page/build.js';
import { withoutWoff2 } from './without-woff2.js';

/*
 * Builds what is installed: the program with its libraries as one file, and its threads; the library that others import,
 * its own libraries left to be installed beside it, with its types; the pages, one of which has the types in it too.
 */

const root = fileURLToPath(new URL('../', import.meta.url));
const outdir = join(root, '.dist');

/** Some of the libraries ask for the parts of Node in the older way, which a module does not know of itself. */
const requiring = `import { createRequire as requirer } from 'node:module'; const require = requirer(import.meta.url);`;

const common = {
  absWorkingDir: root,
  outdir,
  outExtension: { '.js': '.mjs' },
  bundle: true,
  format: 'esm',
  sourcemap: true,
  sourcesContent: false,
  logLevel: 'warning',
};

await rm(outdir, { recursive: true, force: true });
await mkdir(outdir);
await build({
  ...common,
  entryPoints: { main: 'cli/main.ts', worker: 'cli/worker-main.ts' },
  platform: 'node',
  external: ['esbuild'],
  minifySyntax: true,
  minifyWhitespace: true,
  splitting: true,
  chunkNames: 'part-[hash]',
  banner: { js: requiring },
  plugins: [withoutWoff2],
});
await build({
  ...common,
  entryPoints: { index: 'drafts/index.ts' },
  platform: 'neutral',
  packages: 'external',
});
await buildPage(join(outdir, 'page'));
await buildWornPage(join(outdir, 'worn'));
// What makes a PNG of a drawing is not code that could be bundled.
await cp(fileURLToPath(import.meta.resolve('@resvg/resvg-wasm/index_bg.wasm')), join(outdir, 'resvg.wasm'));

import { cp, mkdir, readdir, readFile, rm, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { build } from 'esbuild';

/*
 * Builds the page: its views and its worker, beside the files that are served as they are and the invented
 * bodies. Every address in it is relative, so that the folder can be served from any place. And the page of a worn garment,
 * which shares its code.
 */

const root = fileURLToPath(new URL('../../', import.meta.url));
const page = join(root, 'cli/page');
const served = ['index.html', 'icon.svg'];

/** The style sheet: that of the page, then those of single views, which lie in their folders. */
async function styles() {
  const own = (await readdir(join(page, 'views'), { recursive: true })).filter((file) =>
    file.endsWith('.css'),
  );
  const files = ['page.css', ...own.sort().map((file) => join('views', file))];
  return (await Promise.all(files.map((file) => readFile(join(page, file), 'utf8')))).join('\n');
}

/** Builds the page into a folder, which is emptied first. */
export async function buildPage(outdir = join(root, '.dist/page')) {
  await rm(outdir, { recursive: true, force: true });
  await mkdir(join(outdir, 'bodies'), { recursive: true });
  const common = {
    absWorkingDir: root,
    outdir,
    bundle: true,
    format: 'esm',
    platform: 'browser',
    target: 'es2023',
    minify: true,
    legalComments: 'linked',
    logLevel: 'warning',
  };
  await build({
    ...common,
    entryPoints: { page: 'cli/page/main.tsx' },
    splitting: true,
    chunkNames: 'view-[hash]',
    jsx: 'automatic',
    jsxImportSource: 'preact',
  });
  await build({
    ...common,
    entryPoints: { worker: 'cli/page/worker.ts' },
    splitting: true,
    chunkNames: 'part-[hash]',
  });
  for (const file of served) await cp(join(page, file), join(outdir, file));
  await writeFile(join(outdir, 'page.css'), await styles());
  for (const file of await readdir(join(root, 'measurements')))
    if (file.endsWith('.yaml')) await cp(join(root, 'measurements', file), join(outdir, 'bodies', file));
}

/** Builds what the page of a worn garment is made with, which `bodkin wear` puts into it whole. */
export async function buildWornPage(outdir = join(root, '.dist/worn')) {
  await rm(outdir, { recursive: true, force: true });
  await build({
    absWorkingDir: root,
    outdir,
    entryPoints: { worn: 'cli/page/worn/main.tsx', style: 'cli/page/worn/worn.css' },
    jsx: 'automatic',
    jsxImportSource: 'preact',
    bundle: true,
    format: 'iife',
    platform: 'browser',
    target: 'es2023',
    minify: true,
    legalComments: 'inline',
    charset: 'ascii',
    logLevel: 'warning',
  });
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? '').href) {
  await buildPage();
  await buildWornPage();
}

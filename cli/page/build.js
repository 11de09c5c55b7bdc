import { createHash } from 'node:crypto';
import { cp, mkdir, readdir, readFile, rm, writeFile } from 'node:fs/promises';
import { dirname, join, relative } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { build, transform } from 'esbuild';
import { parse } from 'yaml';
import { withoutWoff2 } from '../without-woff2.js';
import { declarationsForEditor, writeTypes } from './declarations.js';
import { directImports } from './direct-imports.js';
import { flatPredicates } from './flat-predicates.js';
import { withoutJsonSchema } from './without-json-schema.js';

/*
 * Builds the page: its views and its worker, beside the files that are served as they are and the invented
 * bodies. Every address in it is relative, so that the folder can be served from any place. And the page of a worn garment,
 * which shares its code.
 */

const root = fileURLToPath(new URL('../../', import.meta.url));
const page = join(root, 'cli/page');
const served = ['index.html', 'icon.svg'];

/** What few ever ask for, and is large: it is laid up once somebody has. */
const whenAsked = ['types.js', 'declarations.json'];

/** Everything that is served, and a version of it all, for the worker that keeps the page for when there is no network. */
async function offline(outdir) {
  const entries = await readdir(outdir, { recursive: true, withFileTypes: true });
  const files = entries
    .filter((entry) => entry.isFile() && !entry.name.endsWith('.txt'))
    .map((entry) => relative(outdir, join(entry.parentPath, entry.name)).replaceAll('\\', '/'))
    .sort();
  const digest = createHash('sha256');
  for (const file of files) digest.update(file).update(await readFile(join(outdir, file)));
  const said = {
    files: ['./', ...files.filter((file) => !whenAsked.includes(file))],
    whenAsked,
    version: digest.digest('hex').slice(0, 16),
  };
  const constants = Object.entries(said).map(
    ([name, value]) => `const ${name} = ${JSON.stringify(value)};\n`,
  );
  return constants.join('') + (await readFile(join(page, 'offline.js'), 'utf8'));
}

/** What every view shares, in this order; what comes last is other where the reader has colours of her own, and on paper. */
const shared = ['paper', 'head', 'body', 'tables', 'forms'].map((name) => `styles/${name}.css`);
const last = ['forced-colours', 'print'].map((name) => `styles/${name}.css`);

/** The style sheet of the page: what is shared, then that of single views, which lie in their folders. */
async function styles() {
  const own = (await readdir(join(page, 'views'), { recursive: true })).filter((file) =>
    file.endsWith('.css'),
  );
  const views = own.sort().map((file) => join('views', file));
  const files = [...shared, 'worn/stage.css', ...views, ...last];
  const all = await Promise.all(files.map((file) => readFile(join(page, file), 'utf8')));
  return (await transform(all.join('\n'), { loader: 'css', minify: true })).code;
}

/** The font of PDFs, and what each face is called there. */
const faces = { 'regular.ttf': '400Regular', 'bold.ttf': '700Bold' };

/** The file of a face, as the package ships it. */
const faceFile = (weight) =>
  fileURLToPath(import.meta.resolve(`@expo-google-fonts/source-sans-3/${weight}/SourceSans3_${weight}.ttf`));

/** The library of matrices as its modules: as the one file that it is shipped as too, nothing of it could be left out. */
const matrices = join(dirname(fileURLToPath(import.meta.resolve('ml-matrix'))), 'src/index.js');

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
    plugins: [directImports(root), withoutJsonSchema, flatPredicates],
    alias: { 'ml-matrix': matrices },
  };
  await build({
    ...common,
    entryPoints: { page: 'cli/page/main.tsx' },
    splitting: true,
    chunkNames: 'view-[hash]',
    jsx: 'automatic',
    jsxImportSource: 'preact',
    // Where a browser tells whether keys wait, the editor reads a long text for 100 ms at once; where none does, for no longer than it is idle.
    define: { 'navigator.scheduling': 'undefined' },
    inject: ['cli/page/short-idle.ts'],
  });
  await build({
    ...common,
    entryPoints: { worker: 'cli/page/worker.ts' },
    splitting: true,
    chunkNames: 'part-[hash]',
    // Tables are read by what the library has for browsers; its other code takes much of Node along.
    alias: { ...common.alias, 'csv-parse/sync': 'csv-parse/browser/esm/sync' },
    plugins: [...common.plugins, withoutWoff2],
  });
  // What edited code is run by: one script, for nothing can be imported where it is run.
  await build({ ...common, format: 'iife', entryPoints: { runner: 'cli/page/runner.ts' } });
  // What knows types, for the editor: one script too, for it is loaded whole or not at all.
  await build({ ...common, entryPoints: { types: 'cli/page/views/code/types/worker.ts' } });
  for (const file of served) await cp(join(page, file), join(outdir, file));
  await writeFile(join(outdir, 'page.css'), await styles());
  for (const [name, weight] of Object.entries(faces)) await cp(faceFile(weight), join(outdir, 'fonts', name));
  await cp(join(root, 'measurements/charts'), join(outdir, 'charts'), { recursive: true });
  await writeFile(join(outdir, 'bodies.json'), JSON.stringify(await bodies()));
  await writeFile(join(outdir, 'drafts.json'), JSON.stringify(await sources()));
  const types = join(root, '.dist/types');
  await writeTypes(root, types);
  await writeFile(join(outdir, 'declarations.json'), JSON.stringify(await declarationsForEditor(types)));
  await writeFile(join(outdir, 'names.json'), JSON.stringify(await programNames(outdir)));
  for (const file of await readdir(join(root, 'measurements')))
    if (file.endsWith('.yaml')) await cp(join(root, 'measurements', file), join(outdir, 'bodies', file));
  await writeFile(join(outdir, 'offline.js'), await offline(outdir));
}

/** The bodies that edited code is held to, as data. */
async function bodies() {
  const files = (await readdir(join(root, 'measurements'))).filter((file) => file.endsWith('.yaml'));
  return Promise.all(
    files.sort().map(async (file) => parse(await readFile(join(root, 'measurements', file), 'utf8'))),
  );
}

/**
 * The source of the drafts: their files, the file and name of each garment's draft, and the belt of the lesson as a draft of
 * one's own.
 */
async function sources() {
  const drafts = join(root, 'drafts');
  const read = async (file) => [file.replaceAll('\\', '/'), await readFile(join(drafts, file), 'utf8')];
  const names = (await readdir(drafts, { recursive: true })).filter((file) => file.endsWith('.ts')).sort();
  const { 'garments-by-name.ts': table, ...files } = Object.fromEntries(await Promise.all(names.map(read)));
  // These are of the program, not of one garment.
  for (const file of ['index.ts', 'garments.ts', 'engine-parts.ts', 'usual.ts']) delete files[file];
  const garments = Object.fromEntries(
    [...table.matchAll(/import \{ (\w+) \} from '(\.[^']+)'/g)].map(([, name, file]) => [name, file]),
  );
  return { files, garments, belt: ownBelt(await readFile(join(root, 'tests/drafts/belt.ts'), 'utf8')) };
}

/** What the editor knows of the program's names. What reads them is the editor's own, and is made to run here first. */
async function programNames(outdir) {
  const outfile = join(outdir, 'names.mjs');
  await build({
    absWorkingDir: root,
    outfile,
    entryPoints: ['cli/page/names-for-editor.ts'],
    bundle: true,
    format: 'esm',
    platform: 'node',
    logLevel: 'warning',
  });
  const { namesForEditor } = await import(pathToFileURL(outfile).href);
  await rm(outfile);
  return namesForEditor(root);
}

/** The belt, importing what it needs from the program by its name, as a draft outside this folder does. */
function ownBelt(text) {
  const imports = /^import (type )?\{([^}]*)\} from '[^']+';\n/gm;
  const imported = [...text.matchAll(imports)].flatMap(([, type = '', names]) =>
    names
      .split(',')
      .map((name) => name.trim())
      .filter(Boolean)
      .map((name) => type + name),
  );
  const all = imported.toSorted((a, b) => a.replace('type ', '').localeCompare(b.replace('type ', '')));
  const own = text.replace(imports, '').trim();
  return `import {\n${all.map((name) => `  ${name},\n`).join('')}} from 'bodkin';\n\n${own}\n\nexport default belt;\n`;
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

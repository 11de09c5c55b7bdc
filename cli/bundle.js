import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { mkdir, readFile, rename, writeFile } from 'node:fs/promises';
import { join, relative } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';

const root = fileURLToPath(new URL('../', import.meta.url));
const cache = join(root, 'node_modules', '.cache', 'bodkin');

/** What becomes one file each: the program, and its threads, which `workers.ts` finds beside it. */
const entries = { main: 'cli/main.ts', worker: 'cli/worker-main.ts' };

/** Some of the libraries ask for the parts of Node in the older way, which a module does not know of itself. */
const requiring = `import { createRequire as requirer } from 'node:module'; const require = requirer(import.meta.url);`;

/**
 * The address of the program. It is TypeScript in hundreds of files, and to read them one by one, with the libraries,
 * takes longer than to draft a dress. So all are bundled into one, which is used until a byte of any has changed. Where
 * no bundle can be made or kept, tsx reads file by file, and says what is wrong with them.
 */
export async function program() {
  try {
    if (!isFresh()) await make();
    return pathToFileURL(bundle('main')).href;
  } catch {
    const { register } = await import('tsx/esm/api');
    register();
    return new URL('main.ts', import.meta.url).href;
  }
}

const bundle = (name) => join(cache, `${name}.mjs`);

/** Whether the bundles are there and their sources are as they were. */
function isFresh() {
  try {
    const [line, ...others] = Object.keys(entries).map((name) => firstLine(readFileSync(bundle(name))));
    return (
      others.every((other) => other === line) && line === madeOf(JSON.parse(line.slice(line.indexOf(' '))))
    );
  } catch {
    return false;
  }
}

const firstLine = (bytes) => bytes.subarray(0, bytes.indexOf('\n')).toString();

/** The first line of a bundle: a fingerprint of the names and contents of its sources, and those names. */
function madeOf(files, read = (file) => readFileSync(join(root, file))) {
  const hash = createHash('sha256');
  for (const file of files) hash.update(`${file}\n`).update(read(file));
  return `//${hash.digest('hex')} ${JSON.stringify(files)}`;
}

/** Each bundle takes its name when it is whole, since another process may be reading or making the same. */
async function make() {
  const { build } = await import('esbuild');
  const self = fileURLToPath(import.meta.url);
  const sources = new Map([[relative(root, self), readFileSync(self)]]);
  const { outputFiles } = await build({
    absWorkingDir: root,
    entryPoints: entries,
    outdir: cache,
    outExtension: { '.js': '.mjs' },
    bundle: true,
    format: 'esm',
    platform: 'node',
    minifySyntax: true,
    minifyWhitespace: true,
    banner: { js: requiring },
    plugins: [withoutWoff2, keeping(sources)],
    logLevel: 'silent',
    write: false,
  });
  const line = madeOf([...sources.keys()], (file) => sources.get(file));
  await mkdir(cache, { recursive: true });
  for (const { path, text } of outputFiles) {
    const passing = `${path}.${process.pid}`;
    await writeFile(passing, `${line}\n${text}`);
    await rename(passing, path);
  }
}

/** The fonts are TrueType: what unpacks another kind of font is a third of all the code, and is left out. */
const withoutWoff2 = {
  name: 'without WOFF2',
  setup: ({ onLoad }) =>
    onLoad({ filter: /brotli[\\/]decompress\.js$/ }, () => ({
      contents: 'module.exports = () => { throw new Error("WOFF2 fonts are not read."); };',
    })),
};

/** Keeps every source as it was bundled: somebody may be changing it this moment. */
const keeping = (sources) => ({
  name: 'keep sources',
  setup: ({ onLoad }) =>
    onLoad({ filter: /./ }, async ({ path }) => {
      const contents = await readFile(path);
      sources.set(relative(root, path), contents);
      return { contents, loader: 'default' };
    }),
});

import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { mkdir, readFile, rename, writeFile } from 'node:fs/promises';
import { relative } from 'node:path';
import { fileURLToPath } from 'node:url';

const root = new URL('../', import.meta.url);
const cache = new URL('node_modules/.cache/bodkin/', root);

/** What becomes one file each: the program, and its threads, which `workers.ts` finds beside it. */
const entries = { main: 'cli/main.ts', worker: 'cli/worker-main.ts' };

/**
 * The address of the program. It is TypeScript in hundreds of files, and to read them one by one takes longer than
 * to draft a dress. So they are bundled into one, which is used until a byte of any of them has changed; libraries
 * stay where they are. Where no bundle can be made or kept, tsx reads file by file, and says what is wrong with them.
 */
export async function program() {
  try {
    if (!isFresh()) await make();
    return bundle('main').href;
  } catch {
    const { register } = await import('tsx/esm/api');
    register();
    return new URL('main.ts', import.meta.url).href;
  }
}

const bundle = (name) => new URL(`${name}.mjs`, cache);

/** Whether the bundles are there and their sources are as they were. */
function isFresh() {
  try {
    const [line, ...others] = Object.keys(entries).map((name) =>
      firstLine(readFileSync(bundle(name), 'utf8')),
    );
    return others.every((other) => other === line) && line === madeOf(line.split(' ').slice(2));
  } catch {
    return false;
  }
}

const firstLine = (text) => text.slice(0, text.indexOf('\n'));

/** The first line of a bundle: a fingerprint of the names and contents of its sources, and those names. */
function madeOf(files, read = (file) => readFileSync(new URL(file, root))) {
  const hash = createHash('sha256');
  for (const file of files) hash.update(`${file}\n`).update(read(file));
  return `//${hash.digest('hex')} of ${files.join(' ')}`;
}

/** Each bundle takes its name when it is whole, since another process may be reading or making the same. */
async function make() {
  const { build } = await import('esbuild');
  const self = 'cli/bundle.js';
  const sources = new Map([[self, readFileSync(new URL(self, root))]]);
  const { outputFiles } = await build({
    absWorkingDir: fileURLToPath(root),
    entryPoints: entries,
    outdir: fileURLToPath(cache),
    outExtension: { '.js': '.mjs' },
    bundle: true,
    format: 'esm',
    platform: 'node',
    packages: 'external',
    plugins: [keeping(sources)],
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

/** Keeps every source as it was bundled: somebody may be changing it this moment. */
const keeping = (sources) => ({
  name: 'keep sources',
  setup: ({ onLoad }) =>
    onLoad({ filter: /./ }, async ({ path }) => {
      const contents = await readFile(path);
      sources.set(relative(fileURLToPath(root), path).replaceAll('\\', '/'), contents);
      return { contents, loader: 'default' };
    }),
});

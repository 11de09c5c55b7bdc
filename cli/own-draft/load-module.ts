import { existsSync } from 'node:fs';
import { mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join, relative, resolve } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import type { SourcePlace } from '../../engine/issue.ts';
import { besideProgram, inPackage } from '../beside.ts';
import { isJoined } from './draft-files.ts';
import { severalFiles } from './several-files.ts';

/** A module that cannot be read, and where. */
export class NotReadable extends Error {
  readonly place: SourcePlace | undefined;

  constructor(message: string, place: SourcePlace | undefined) {
    super(message);
    this.place = place;
  }
}

/** Some libraries ask for the parts of Node in the older way, which a module does not know of itself. */
const requiring = `import { createRequire as requirer } from 'node:module'; const require = requirer(import.meta.url);`;

/** What a draft means by “bodkin”: this very program, wherever the draft lies. */
const library = [inPackage('drafts/index.ts'), besideProgram('index.mjs')]
  .map((url) => fileURLToPath(url))
  .find((path) => existsSync(path)) as string;

/** What the library loads only to write a PDF, which no draft does; where it is installed alone they are not there. */
const neverReached = ['any-ascii', 'fontkit', 'pdfkit'];

/**
 * What a module in TypeScript or JavaScript exports, wherever it lies. It is made one file with all that it imports, and
 * read with its source map, so that a stack tells the lines as they were written. Throws `NotReadable` for what is no
 * program, and whatever the module throws itself.
 */
export async function loadModule(file: string): Promise<{ readonly default?: unknown }> {
  const folder = await mkdtemp(join(tmpdir(), 'bodkin-draft-'));
  try {
    const made = join(folder, 'draft.mjs');
    await writeFile(made, await bundled(file, made));
    process.setSourceMapsEnabled(true);
    return await import(/* @vite-ignore */ pathToFileURL(made).href);
  } finally {
    await rm(folder, { recursive: true });
  }
}

/** The source map tells the files of the source from where the made one lies. */
async function bundled(file: string, made: string): Promise<Uint8Array> {
  // Only a draft written elsewhere needs it.
  const { build } = await import('esbuild');
  const text = await readFile(file, 'utf8').catch(() => '');
  try {
    const { outputFiles } = await build({
      entryPoints: [resolve(file)],
      outfile: made,
      bundle: true,
      format: 'esm',
      platform: 'node',
      alias: { bodkin: library },
      external: neverReached,
      banner: { js: requiring },
      sourcemap: 'inline',
      sourcesContent: false,
      write: false,
      logLevel: 'silent',
      plugins: isJoined(text) ? [severalFiles(resolve(file), text)] : [],
    });
    const [output] = outputFiles;
    if (!output) throw new NotReadable('There is nothing in it.', undefined);
    return output.contents;
  } catch (error) {
    throw notReadable(error, file);
  }
}

/** The first fault that was found, in its own words. */
function notReadable(error: unknown, file: string): unknown {
  if (!(error instanceof Error) || !('errors' in error) || !Array.isArray(error.errors)) return error;
  const [fault] = error.errors as readonly {
    readonly text: string;
    readonly location: { readonly file: string; readonly line: number } | null;
  }[];
  if (!fault) return error;
  const { text, location } = fault;
  if (!location) return new NotReadable(text, undefined);
  const same = resolve(location.file) === resolve(file);
  return new NotReadable(text, { file: same ? file : relative('', location.file), line: location.line });
}

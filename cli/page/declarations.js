import { execFile } from 'node:child_process';
import { readdir, readFile, rm } from 'node:fs/promises';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { promisify } from 'node:util';

/** Writes the declarations of the importable package into a folder, which is emptied first. */
export async function writeTypes(root, outdir) {
  await rm(outdir, { recursive: true, force: true });
  const compiler = join(root, 'node_modules/typescript/bin/tsc');
  const project = ['-p', join(root, '.tsconfig.types.json'), '--outDir', outdir];
  await promisify(execFile)(process.execPath, [compiler, ...project], { maxBuffer: 1e7 }).catch((error) => {
    throw new Error(`${error.stdout}${error.message}`);
  });
}

/**
 * The declarations that the editor checks a draft against, by path: those of the program, as they were written into a folder, and
 * of the language itself, without what only browsers have.
 */
export async function declarationsForEditor(types) {
  const names = (await readdir(types, { recursive: true })).filter((file) => file.endsWith('.d.ts'));
  const read = async (file) => [`/${file.replaceAll('\\', '/')}`, await readFile(join(types, file), 'utf8')];
  return Object.fromEntries([...(await Promise.all(names.sort().map(read))), ...(await language())]);
}

/** The library of the language, with all that it refers to. */
async function language() {
  const folder = fileURLToPath(new URL('.', import.meta.resolve('typescript-in-javascript')));
  const found = new Map();
  const waiting = ['es2023'];
  for (let name = waiting.pop(); name !== undefined; name = waiting.pop()) {
    const path = `/lib/lib.${name}.d.ts`;
    if (found.has(path)) continue;
    const text = await readFile(join(folder, `lib.${name}.d.ts`), 'utf8');
    found.set(path, text);
    for (const [, next] of text.matchAll(/^\/\/\/ <reference lib="([\w.]+)"/gm)) waiting.push(next);
  }
  return found;
}

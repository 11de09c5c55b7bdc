import { createHash } from 'node:crypto';
import { readdir, readFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { readFonts } from '../files/fonts.ts';
import { digestName } from './manifest.ts';

/** From where the program was read: the built one lies in one folder, the sources in several. */
const here = fileURLToPath(import.meta.url);
const sources = ['engine', 'drafts', 'cli', 'measurements', 'package-lock.json'];

/**
 * A digest of all that an answer depends on beside its order: the program's own code, its fonts, and the Node that runs it, for
 * engines differ in the last digit of a sine. Two machines with the same digest write the same bytes.
 */
export async function codeDigest(): Promise<string> {
  const hash = createHash('sha256');
  const root = here.endsWith('.mjs') ? dirname(here) : join(dirname(here), '..', '..');
  for (const file of await codeFiles(root)) hash.update(file).update(await readFile(join(root, file)));
  const { regular, bold } = await readFonts();
  return digestName(process.version, hash.update(regular).update(bold).digest());
}

async function codeFiles(root: string): Promise<readonly string[]> {
  if (here.endsWith('.mjs')) return (await readdir(root)).filter((file) => file.endsWith('.mjs')).sort();
  const found: string[] = [];
  for (const source of sources) {
    const inside = await readdir(join(root, source), { recursive: true }).catch(() => ['']);
    found.push(
      ...inside.map((file) => join(source, file)).filter((file) => /\.(ts|mjs|json)\/?$/.test(file)),
    );
  }
  return found.map((file) => file.replace(/\/$/, '')).sort();
}

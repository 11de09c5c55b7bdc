import { execFile } from 'node:child_process';
import { cp, mkdir, mkdtemp, readdir, readFile, rm, symlink, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { promisify } from 'node:util';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';

const root = new URL('../../', import.meta.url).pathname;
const runFile = promisify(execFile);

let folder = '';
let cache = '';

/** A copy of the program, with the same libraries, whose sources can be changed. */
beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'bodkin-'));
  cache = join(folder, 'node_modules', '.cache');
  for (const part of ['cli', 'drafts', 'engine', 'measurements', 'package.json', 'tsconfig.json'])
    await cp(join(root, part), join(folder, part), { recursive: true });
  await mkdir(join(folder, 'node_modules'));
  for (const library of await readdir(join(root, 'node_modules')))
    if (!library.startsWith('.'))
      await symlink(join(root, 'node_modules', library), join(folder, 'node_modules', library));
});

afterAll(async () => {
  await rm(folder, { recursive: true });
});

const garments = async (): Promise<readonly string[]> => {
  const { stdout } = await runFile(process.execPath, [join(folder, 'cli', 'bodkin.js'), 'list', '--json']);
  return JSON.parse(stdout).map(({ name }: { readonly name: string }) => name);
};

const change = async (file: string, from: string, to: string): Promise<void> => {
  const text = await readFile(join(folder, file), 'utf8');
  expect(text).toContain(from);
  await writeFile(join(folder, file), text.replace(from, to));
};

describe('the bundled program', () => {
  test('is made once, and anew when a source has changed', async () => {
    expect(await garments()).toEqual(['dress', 'bodice', 'skirt', 'trial']);
    const bundles = join(cache, 'bodkin');
    const made = await readFile(join(bundles, 'main.mjs'), 'utf8');
    await writeFile(join(bundles, 'main.mjs'), made.replace('[dress,bodice,skirt,trial]', '[skirt]'));
    expect(await garments()).toEqual(['skirt']);
    await change('drafts/garments.ts', '[dress, bodice, skirt, trial]', '[dress, skirt]');
    expect(await garments()).toEqual(['dress', 'skirt']);
    expect((await readdir(bundles)).toSorted()).toEqual(['main.mjs', 'worker.mjs']);
  });

  test('can be done without, where nothing may be written', async () => {
    await rm(cache, { recursive: true });
    await writeFile(cache, '');
    expect(await garments()).toEqual(['dress', 'skirt']);
  });
});

import { type ChildProcess, spawn } from 'node:child_process';
import { readdir, readFile } from 'node:fs/promises';
import { join, relative } from 'node:path';

const program = new URL('../../../cli/bodkin.js', import.meta.url).pathname;

export interface Ended {
  readonly code: number | null;
  readonly out: string;
  readonly err: string;
}

/** The built program at work on one command line. */
export interface AtWork {
  readonly process: ChildProcess;
  readonly ended: Promise<Ended>;
  /** What it has said so far on standard error. */
  readonly err: () => string;
}

export function start(words: readonly string[], env: NodeJS.ProcessEnv = {}, input = ''): AtWork {
  const child = spawn(process.execPath, [program, ...words], {
    env: { ...process.env, COLUMNS: '500', ...env },
  });
  let [out, err] = ['', ''];
  child.stdout.on('data', (part) => {
    out += part;
  });
  child.stderr.on('data', (part) => {
    err += part;
  });
  child.stdin.end(input);
  const ended = new Promise<Ended>((resolve) => {
    child.on('close', (code) => resolve({ code, out, err }));
  });
  return { process: child, ended, err: () => err };
}

export const bodkin = (words: readonly string[], env: NodeJS.ProcessEnv = {}, input = ''): Promise<Ended> =>
  start(words, env, input).ended;

/** Every file below a folder, with its bytes. */
export async function filesBelow(folder: string): Promise<ReadonlyMap<string, string>> {
  const found = await readdir(folder, { recursive: true, withFileTypes: true });
  const files = found.filter((entry) => entry.isFile()).map((entry) => join(entry.parentPath, entry.name));
  const read = files
    .sort()
    .map(
      async (file): Promise<[string, string]> => [
        relative(folder, file),
        (await readFile(file)).toString('base64'),
      ],
    );
  return new Map(await Promise.all(read));
}

/** Waits until something is so. */
export async function until(holds: () => boolean | Promise<boolean>, most = 30_000): Promise<void> {
  for (const end = Date.now() + most; !(await holds()); ) {
    if (Date.now() > end) throw new Error('it never came to be so');
    await new Promise((resolve) => setTimeout(resolve, 20));
  }
}

/** Invented bodies, each a little larger than the one before. */
export const orderOf = (i: number, more: object = {}) => ({
  id: `rail-${i}`,
  garment: 'skirt',
  body: {
    units: 'cm',
    bustGirth: 88 + i / 4,
    waistGirth: 70 + i / 4,
    hipGirth: 96 + i / 4,
    backNeckPointToWaist: 41,
  },
  ...more,
});

export const ndjson = (rows: readonly unknown[]): string =>
  rows.map((row) => `${typeof row === 'string' ? row : JSON.stringify(row)}\n`).join('');

import { readdir } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import type { BodyData } from '../../engine/body/grid.ts';
import { inPackage } from '../beside.ts';
import { readBodyFile } from '../input/read-body.ts';

/** The bodies that come with the program, in the order of their files; the leading lady first, whom examples are for. */
export async function demoBodies(): Promise<readonly BodyData[]> {
  const folder = inPackage('measurements/');
  const files = (await readdir(folder)).filter((name) => name.endsWith('.yaml')).toSorted();
  const isFirst = (name: string): number => (name === 'leading-lady.yaml' ? 0 : 1);
  const ordered = files.toSorted((a, b) => isFirst(a) - isFirst(b));
  const read = await Promise.all(ordered.map((name) => readBodyFile(fileURLToPath(new URL(name, folder)))));
  return read.filter((data): data is BodyData => typeof data === 'object' && data !== null);
}

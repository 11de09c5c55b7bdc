import { basename, extname } from 'node:path';
import { readDataFile } from './read-data.ts';

/** One set of measurements from a YAML or JSON file, unchecked. Throws `Unusable` when the file cannot be read. */
export const readBodyFile = async (file: string): Promise<unknown> => bodyIn(file, await readDataFile(file));

/** What a file of measurements says. A body that has no name gets the file's. */
export function bodyIn(file: string, data: unknown): unknown {
  if (typeof data !== 'object' || data === null || Array.isArray(data)) return data;
  return { name: basename(file, extname(file)), ...data };
}

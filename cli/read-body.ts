import { basename, extname } from 'node:path';
import { readDataFile } from './read-data.ts';

/**
 * One set of measurements from a YAML or JSON file, unchecked. A body that has no name gets the file's. Throws
 * `Unusable` when the file cannot be read.
 */
export async function readBodyFile(file: string): Promise<unknown> {
  const data = await readDataFile(file);
  if (typeof data !== 'object' || data === null || Array.isArray(data)) return data;
  return { name: basename(file, extname(file)), ...data };
}

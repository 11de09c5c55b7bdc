import { isCsv } from './csv.ts';
import { dataIn } from './data-in.ts';
import { tableIn } from './table-file.ts';

/** No size chart is larger, bytes. */
export const largestChart = 100_000;

/** What a size chart in YAML, JSON or CSV says, unchecked; one that has no name gets the file's. */
export function chartIn(file: string, text: string): unknown {
  if (isCsv(file)) return { name: nameOf(file), sizes: tableIn(file, text) };
  const data = dataIn(file, text);
  if (typeof data !== 'object' || data === null || Array.isArray(data)) return data;
  return { name: nameOf(file), ...data };
}

const nameOf = (file: string): string =>
  file
    .split(/[\\/]/)
    .at(-1)
    ?.replace(/\.[^.]*$/, '') ?? file;

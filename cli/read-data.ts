import { createReadStream } from 'node:fs';
import { parse } from 'yaml';
import { unusable } from './unusable.ts';
import { reason } from './write-files.ts';

/** A set of measurements or a styling is a page of text; a file larger than this (bytes) is something else. */
const largest = 1_000_000;

/** The text of a file no larger than `most` bytes; nothing beyond that is ever read. */
export async function readTextFile(file: string, most: number): Promise<string> {
  const parts: Buffer[] = [];
  let size = 0;
  try {
    for await (const part of createReadStream(file, { end: most })) {
      parts.push(part);
      size += part.length;
    }
  } catch (error) {
    throw unusable('cannot-read', file, `Cannot read ${file}: ${reason(error)}`);
  }
  if (size > most) throw unusable('file-too-large', file, `${file} is larger than ${most / 1e6} MB.`);
  return Buffer.concat(parts).toString('utf8');
}

/** What a YAML or JSON file says, unchecked. YAML takes in JSON. */
export async function readDataFile(file: string): Promise<unknown> {
  const text = await readTextFile(file, largest);
  try {
    return parse(text, { logLevel: 'error' });
  } catch (error) {
    throw unusable('not-yaml', file, `${file} is neither YAML nor JSON: ${reason(error)}`);
  }
}

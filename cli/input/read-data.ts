import { dataIn, largest } from './data-in.ts';
import { partsOf } from './parts-of.ts';
import { reason } from './reason.ts';
import { unusable } from './unusable.ts';

/** Any document up to this (bytes) is answered within two seconds; a larger one was not written here, and is refused by its size. */
export const largestDocument = 5_000_000;

/** The text of a file, or of standard input for `-`, no larger than `most` bytes; nothing beyond that is ever read. */
export async function readTextFile(file: string, most: number): Promise<string> {
  const parts: Buffer[] = [];
  let size = 0;
  try {
    for await (const part of partsOf(file, most)) {
      parts.push(part);
      size += part.length;
      if (size > most) break;
    }
  } catch (error) {
    throw unusable('cannot-read', file, `Cannot read ${file}: ${reason(error)}`);
  }
  if (size > most) throw unusable('file-too-large', file, `${file} is larger than ${most / 1e6} MB.`);
  try {
    return new TextDecoder('utf-8', { fatal: true, ignoreBOM: true }).decode(Buffer.concat(parts));
  } catch {
    throw unusable(
      'cannot-read',
      file,
      `Cannot read ${file}: it is no text in UTF-8. Save it with that encoding.`,
    );
  }
}

/** What a YAML or JSON file says, unchecked. */
export const readDataFile = async (file: string): Promise<unknown> =>
  dataIn(file, await readTextFile(file, largest));

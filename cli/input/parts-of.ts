import { createReadStream } from 'node:fs';
import type { Readable } from 'node:stream';

/** What a file holds as it comes in, up to its byte `last` where one is named; for `-`, what comes by standard input. */
export const partsOf = (file: string, last = Infinity): Readable =>
  file === '-' ? process.stdin : createReadStream(file, { end: last });

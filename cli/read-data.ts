import { createReadStream } from 'node:fs';
import { parse } from 'yaml';
import { Unusable, unusable } from './unusable.ts';
import { reason } from './write-files.ts';
import { readableSlip, type Slip, slipBehind } from './yaml-slips.ts';

/** A set of measurements or a styling is a page of text; a file larger than this (bytes) is something else. */
export const largest = 100_000;

/** No set of measurements has more lines, or fields on them, lies deeper in brackets, or has more of YAML's other signs on one line. */
const mostLines = 2000;
const mostFields = 2000;
const deepest = 20;
const mostSigns = 40;

/** The text of a file, or of standard input for `-`, no larger than `most` bytes; nothing beyond that is ever read. */
export async function readTextFile(file: string, most: number): Promise<string> {
  const parts: Buffer[] = [];
  let size = 0;
  try {
    for await (const part of file === '-' ? process.stdin : createReadStream(file, { end: most })) {
      parts.push(part);
      size += part.length;
      if (size > most) break;
    }
  } catch (error) {
    throw unusable('cannot-read', file, `Cannot read ${file}: ${reason(error)}`);
  }
  if (size > most) throw unusable('file-too-large', file, `${file} is larger than ${most / 1e6} MB.`);
  return Buffer.concat(parts).toString('utf8');
}

/** A text without the mark (U+FEFF) that some programs put before everything else. */
export const withoutMark = (text: string): string => text.replace(/^\uFEFF/, '');

/** Whether a text would keep a reader of YAML busy for nothing: lines without end, brackets in brackets, tags in a row. */
function isKnotty(text: string): boolean {
  let depth = 0;
  let signs = 0;
  let lines = 0;
  let fields = 0;
  for (const sign of text) {
    if (sign === '[' || sign === '{') depth += 1;
    else if (sign === ']' || sign === '}') depth = Math.max(0, depth - 1);
    else if (sign === '\n') {
      signs = 0;
      lines += 1;
    } else if (sign === ',' || sign === ':') fields += 1;
    else if ('!&*?-|>'.includes(sign)) signs += 1;
    if (lines > mostLines || fields > 2 * mostFields || depth > deepest || signs > mostSigns) return true;
  }
  return false;
}

/** What a YAML or JSON file says, unchecked. YAML takes in JSON. */
export const readDataFile = async (file: string): Promise<unknown> =>
  dataIn(file, await readTextFile(file, largest));

/** The same of a text that was read from a file already. */
export function dataIn(file: string, given: string): unknown {
  if (given.length > largest)
    throw unusable('file-too-large', file, `${file} is larger than ${largest / 1e6} MB.`);
  const text = withoutMark(given);
  if (isKnotty(text))
    throw unusable(
      'file-knotty',
      file,
      `${file} is no set of measurements: it has too many lines or fields, or lists too deep in each other.`,
    );
  let data: unknown;
  try {
    data = parse(text, { logLevel: 'error' });
  } catch (error) {
    const slip = slipBehind(error, text);
    if (slip) throw slipped(file, slip);
    const why = reason(error).split('\n', 1)[0] ?? '';
    throw unusable('not-yaml', file, `${file} is neither YAML nor JSON: ${why}`);
  }
  const slip = readableSlip(text, data);
  if (slip) throw slipped(file, slip);
  return data;
}

/** So much of a line is shown. */
const mostShown = 60;

function slipped(file: string, { line, text, wrong, meant }: Slip): Unusable {
  const shown = (words: string): string =>
    `“${words.length > mostShown ? `${words.slice(0, mostShown - 1)}…` : words}”`;
  const probably = meant === undefined ? '' : ` Probably meant: ${shown(meant)}`;
  const message = `${file}, line ${line}: ${shown(text)} ${wrong}.${probably}`;
  return new Unusable([{ code: 'yaml-slip', severity: 'error', path: file, value: line, message }]);
}

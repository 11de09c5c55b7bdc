import { parse } from 'yaml';
import { Unusable, unusable } from './unusable.ts';
import { readableSlip, type Slip, slipBehind } from './yaml-slips.ts';

/** A set of measurements or a styling is a page of text; a file larger than this (bytes) is something else. */
export const largest = 100_000;

/** No set of measurements has more lines, or fields on them, lies deeper in brackets, or has more of YAML's other signs on one line. */
const mostLines = 2000;
const mostFields = 2000;
const deepest = 20;
const mostSigns = 40;

/** Two pairs of quotes a field; a text of nothing else keeps the reader busy for ten seconds. */
const mostQuotes = 4 * mostFields;

/** A text without the mark (U+FEFF) that some programs put before everything else. */
export const withoutMark = (text: string): string => text.replace(/^\uFEFF/, '');

/** Whether a text would keep a reader of YAML busy for nothing: lines without end, brackets in brackets, tags in a row. */
function isKnotty(text: string): boolean {
  let depth = 0;
  let signs = 0;
  let lines = 0;
  let fields = 0;
  let quotes = 0;
  for (const sign of text) {
    if (sign === '[' || sign === '{') depth += 1;
    else if (sign === ']' || sign === '}') {
      depth = Math.max(0, depth - 1);
      fields += 1;
    } else if (sign === '\n') {
      signs = 0;
      lines += 1;
    } else if (sign === ',' || sign === ':') fields += 1;
    else if (sign === '"' || sign === "'") quotes += 1;
    else if ('!&*?-|>'.includes(sign)) signs += 1;
    if (lines > mostLines || fields > 2 * mostFields || quotes > mostQuotes) return true;
    if (depth > deepest || signs > mostSigns) return true;
  }
  return false;
}

/** What the text of a YAML or JSON file says, unchecked. YAML takes in JSON. Throws `Unusable` where it says nothing. */
export function dataIn(file: string, given: string): unknown {
  if (given.length > largest)
    throw unusable('file-too-large', file, `${file} is larger than ${largest / 1e6} MB.`);
  const text = withoutMark(given);
  if (isKnotty(text))
    throw unusable(
      'file-knotty',
      file,
      `${file} is no set of measurements or choices: it has too many lines or fields, or lists too deep in each other.`,
    );
  let data: unknown;
  try {
    data = parse(text, { logLevel: 'error' });
  } catch (error) {
    const slip = slipBehind(error, text);
    if (slip) throw slipped(file, slip);
    const why = error instanceof Error ? error.message.split('\n', 1)[0] : '';
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

import { stat } from 'node:fs/promises';
import { parse } from 'csv-parse';
import { isCsv } from './csv.ts';
import { longestLine } from './json-line.ts';
import { type FileLine, lines } from './lines.ts';
import { partsOf } from './parts-of.ts';
import { reason } from './reason.ts';
import { type CsvSettings, csvSettings, headOf, rowOf, twiceNamed } from './table-file.ts';
import { type Unusable, unusable } from './unusable.ts';

/** The size of a file of bodies, bytes; 0 where it tells none, as a pipe does, and standard input (`-`). */
export async function sizeOf(file: string): Promise<number> {
  if (file === '-') return 0;
  try {
    const found = await stat(file);
    if (found.isDirectory()) throw new Error('it is a folder.');
    return found.size;
  } catch (error) {
    throw cannotRead(file, error);
  }
}

/**
 * The bodies of a file (`-` is standard input), one a line as JSON, empty lines left out; of a table (`.csv`, `.tsv`) each row as if it were such a
 * line, and called by its `size` where it is one of a chart. In constant memory, however long the file.
 */
export async function* bodyLines(file: string): AsyncGenerator<FileLine> {
  const read = isCsv(file) ? tableLines(file) : lines(partsOf(file), longestLine);
  try {
    for await (const line of read) if (line.text?.trim() !== '') yield line;
  } catch (error) {
    throw isCsv(file) && isCsvError(error) ? notATable(file, error) : cannotRead(file, error);
  }
}

async function* tableLines(file: string): AsyncGenerator<FileLine> {
  const parser = parse({ ...(await settingsOf(file)), info: true, max_record_size: longestLine });
  const source = partsOf(file).on('error', (error) => parser.destroy(error));
  let names: readonly string[] | undefined;
  try {
    for await (const { record, info } of source.pipe(parser) as AsyncIterable<Read>) {
      if (names) {
        const { age, size, ...row } = rowOf(names, record);
        const called = size === undefined ? row : { name: size, ...row };
        // What is no number is refused where the body is read.
        const years = Number.isNaN(Number(age)) ? age : Number(age);
        const said = age === undefined ? called : { ...called, age: years };
        yield { number: info.lines, text: JSON.stringify(said), end: info.bytes };
      } else {
        names = record;
        const twice = twiceNamed(record);
        if (twice !== undefined) throw new Error(`two columns are called “${twice.slice(0, 40)}”.`);
      }
    }
  } finally {
    source.destroy();
  }
}

/** What the reader of tables hands on: a row, and how far it has read. */
interface Read {
  readonly record: readonly string[];
  readonly info: { readonly lines: number; readonly bytes: number };
}

/** How a table is written, by its first line. */
async function settingsOf(file: string): Promise<CsvSettings> {
  const source = partsOf(file);
  try {
    for await (const { text } of lines(source, longestLine)) {
      const head = headOf(text ?? '');
      if (head !== '') return csvSettings(head);
    }
    return csvSettings('');
  } finally {
    source.destroy();
  }
}

const isCsvError = (error: unknown): boolean =>
  error instanceof Error && 'code' in error && String(error.code).startsWith('CSV_');

const notATable = (file: string, error: unknown): Unusable =>
  unusable('not-a-table', file, `${file} is no table of measurements: ${reason(error)}`);

const cannotRead = (file: string, error: unknown): Unusable =>
  unusable('cannot-read', file, `Cannot read ${file}: ${reason(error)}`);

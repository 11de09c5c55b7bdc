import { parse } from 'csv-parse/sync';
import { withoutMark } from './data-in.ts';
import { reason } from './reason.ts';
import { Unusable, unusable } from './unusable.ts';

/** How a table is read. */
export interface CsvSettings {
  readonly delimiter: string;
  readonly comment: string;
  readonly comment_no_infix: true;
  readonly trim: true;
  readonly skip_empty_lines: true;
  readonly bom: true;
}

/**
 * How a table is written, by its first line. Lines that begin with # say where it is from. Commas, semicolons or tabs may
 * stand between the cells: spreadsheets of many countries write a comma before the decimals.
 */
export const csvSettings = (head: string): CsvSettings => ({
  delimiter: ['\t', ';'].find((sign) => head.includes(sign)) ?? ',',
  comment: '#',
  comment_no_infix: true,
  trim: true,
  skip_empty_lines: true,
  bom: true,
});

/** The first line of a text that is neither empty nor a comment; nothing where there is none. */
export const headOf = (text: string): string =>
  withoutMark(text)
    .split(/\r?\n/)
    .find((line) => line.trim() !== '' && !line.startsWith('#')) ?? '';

/** The name of a column that another one has too. */
export const twiceNamed = (names: readonly string[]): string | undefined =>
  names.find((name, i) => name !== '' && names.indexOf(name) < i);

/** The cells of a row by the names of their columns; empty ones, and those of columns without a name, are left out. */
export const rowOf = (names: readonly string[], cells: readonly string[]): Readonly<Record<string, string>> =>
  Object.fromEntries(
    names.flatMap((name, i) => (name !== '' && cells[i] ? [[name, cells[i]] as const] : [])),
  );

/** The rows of a table by the names in its first line. */
export function tableIn(file: string, text: string): readonly Readonly<Record<string, string>>[] {
  try {
    const [names = [], ...rows]: string[][] = parse(text, csvSettings(headOf(text)));
    const twice = twiceNamed(names);
    if (twice !== undefined)
      throw unusable('column-twice', file, `${file} has two columns called “${twice.slice(0, 40)}”.`);
    return rows.map((cells) => rowOf(names, cells));
  } catch (error) {
    if (error instanceof Unusable) throw error;
    throw unusable('not-a-table', file, `${file} is no table of measurements: ${reason(error)}`);
  }
}

import { dirname, extname, isAbsolute, join } from 'node:path';
import { parse } from 'csv-parse/sync';
import type { Chart } from '../engine/grading/chart.ts';
import { bodyFilesIn, readChart } from '../engine/grading/read-chart.ts';
import type { Issue } from '../engine/issue.ts';
import type { Draft } from '../engine/pattern/draft.ts';
import { bodyIn } from './read-body.ts';
import { dataIn, readDataFile, readTextFile, withoutMark } from './read-data.ts';
import { Unusable, unusable } from './unusable.ts';
import { reason } from './write-files.ts';

/** No size chart is larger, bytes. */
const largest = 100_000;

/** A size chart from a YAML, JSON or CSV file, and the body files that stand in it, which lie beside it. */
export async function readChartFile(
  file: string,
  draft: Draft,
  units: string | undefined,
): Promise<{ readonly chart: Chart; readonly issues: readonly Issue[] }> {
  const text = await readTextFile(file, largest);
  const data = isCsv(file) ? { name: nameOf(file), sizes: tableIn(file, text) } : chartIn(file, text);
  const bodies = new Map<string, unknown>();
  for (const name of bodyFilesIn(data)) {
    const path = isAbsolute(name) ? name : join(dirname(file), name);
    bodies.set(name, bodyIn(path, await readDataFile(path)));
  }
  const read = readChart(data, { choices: draft.choices, units, bodies });
  if (!read.ok) throw new Unusable(read.issues);
  return { chart: read.value, issues: read.issues };
}

export const isCsv = (file: string): boolean => ['.csv', '.tsv'].includes(extname(file).toLowerCase());

function chartIn(file: string, text: string): unknown {
  const data = dataIn(file, text);
  if (typeof data !== 'object' || data === null || Array.isArray(data)) return data;
  return { name: nameOf(file), ...data };
}

const nameOf = (file: string): string =>
  file
    .split(/[\\/]/)
    .at(-1)
    ?.replace(/\.[^.]*$/, '') ?? file;

/**
 * The rows of a table by the names in its first line. Lines that begin with # say where it is from. Commas, semicolons or
 * tabs may stand between the cells: spreadsheets of many countries write a comma before the decimals.
 */
export function tableIn(file: string, given: string): readonly Readonly<Record<string, string>>[] {
  const text = withoutMark(given);
  const head = text.split(/\r?\n/).find((line) => line.trim() !== '' && !line.startsWith('#')) ?? '';
  const delimiter = ['\t', ';'].find((sign) => head.includes(sign)) ?? ',';
  try {
    const rows: string[][] = parse(text, {
      delimiter,
      comment: '#',
      comment_no_infix: true,
      trim: true,
      skip_empty_lines: true,
    });
    const [names = [], ...lines] = rows;
    const twice = names.find((name, i) => name !== '' && names.indexOf(name) < i);
    if (twice !== undefined)
      throw unusable('column-twice', file, `${file} has two columns called “${twice.slice(0, 40)}”.`);
    return lines.map((cells) =>
      Object.fromEntries(
        names.map((name, i) => [name, cells[i] ?? ''] as const).filter(([name]) => name !== ''),
      ),
    );
  } catch (error) {
    if (error instanceof Unusable) throw error;
    throw unusable('not-a-table', file, `${file} is no table of measurements: ${reason(error)}`);
  }
}

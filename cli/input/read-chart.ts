import { dirname, isAbsolute, join } from 'node:path';
import type { Chart } from '../../engine/grading/chart.ts';
import { bodyFilesIn, readChart } from '../../engine/grading/read-chart.ts';
import type { Issue } from '../../engine/issue.ts';
import type { Draft } from '../../engine/pattern/draft.ts';
import { chartIn, largestChart } from './chart-in.ts';
import { bodyIn } from './read-body.ts';
import { readDataFile, readTextFile } from './read-data.ts';
import { Unusable } from './unusable.ts';

/** A size chart from a YAML, JSON or CSV file, and the body files that stand in it, which lie beside it. */
export async function readChartFile(
  file: string,
  draft: Draft,
  units: string | undefined,
): Promise<{ readonly chart: Chart; readonly issues: readonly Issue[] }> {
  const text = await readTextFile(file, largestChart);
  const data = chartIn(file, text);
  const bodies = new Map<string, unknown>();
  for (const name of bodyFilesIn(data)) {
    const path = isAbsolute(name) ? name : join(dirname(file), name);
    bodies.set(name, bodyIn(path, await readDataFile(path)));
  }
  const read = readChart(data, { choices: draft.choices, units, bodies });
  if (!read.ok) throw new Unusable(read.issues);
  return { chart: read.value, issues: read.issues };
}

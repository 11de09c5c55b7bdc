import { bodyFilesIn, type Chart, type Draft, type Issue, readChart } from '../../../drafts/index.ts';
import { chartIn } from '../../input/chart-in.ts';
import { used } from '../../input/used.ts';
import { fileNamed } from '../file-named.ts';
import { opened } from './open.ts';
import { type ReaderUnits, readerUnits } from './reader-units.ts';
import type { ChartFile } from './sizes-messages.ts';

/** What the body files say that a chart names, by the name it uses, of whatever folder: and which of them did not come with it. */
export function bodiesOf({ file, text, bodies: came }: ChartFile): {
  readonly bodies: ReadonlyMap<string, unknown>;
  readonly needs: readonly string[];
} {
  const bodies = new Map<string, unknown>();
  const needs: string[] = [];
  for (const name of bodyFilesIn(chartIn(file, text))) {
    const found = came.find((body) => body.file === fileNamed(name));
    if (found) bodies.set(name, opened(found).body);
    else needs.push(fileNamed(name));
  }
  return { bodies, needs };
}

/** The chart that came as a file, with the body files that it names. Throws `Unusable` where it cannot be read. */
export function chartRead(
  draft: Draft,
  chart: ChartFile,
): { readonly chart: Chart; readonly issues: readonly Issue[]; readonly units: ReaderUnits } {
  const { file, text, units } = chart;
  const { bodies } = bodiesOf(chart);
  const read = readChart(chartIn(file, text), {
    choices: draft.choices,
    units: units === '' ? undefined : units,
    bodies,
  });
  const found = used(read);
  return { chart: found, issues: read.issues, units: readerUnits(found.rows[0]?.body ?? {}) };
}

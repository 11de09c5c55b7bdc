import type { Result } from '../issue.ts';
import { nearestWord } from '../text/nearest-word.ts';
import type { Chart, ChartSize } from './chart.ts';
import { chartIssue, shown } from './chart-issues.ts';

/**
 * The sizes of a chart that are named, with commas between: `40 C` or `40c` by size and cup, `40` in the cup by which the
 * chart's sizes are shown. A name that comes twice is there twice. Issue: `unknown-size`.
 */
export function chosenSizes({ rows, middle }: Chart, names: string): Result<readonly ChartSize[]> {
  const chosen = names
    .split(',')
    .filter((name) => name.trim() !== '')
    .map((name) => {
      const isCalled = (called: string): boolean => plain(called) === plain(name);
      const row =
        rows.find((one) => isCalled(one.name)) ??
        rows.find(({ size, cup }) => cup === middle.cup && isCalled(size));
      return { name, row };
    });
  const known = [...new Set(rows.flatMap(({ name, size }) => [size, name]))];
  const unknown = chosen.filter(({ row }) => !row).map(({ name }) => unknownSize(name, known));
  if (chosen.length === 0) unknown.push(unknownSize('', known));
  return unknown.length > 0
    ? { ok: false, issues: unknown }
    : { ok: true, value: chosen.flatMap(({ row }) => row ?? []), issues: [] };
}

/** The sizes of a chart's run in the cup by which it is shown. */
export const shownSizes = ({ rows, middle }: Chart): readonly ChartSize[] =>
  rows.filter(({ alone, cup }) => !alone && cup === middle.cup);

const plain = (name: string): string => name.replaceAll(/\s/g, '').toLowerCase();

function unknownSize(name: string, known: readonly string[]) {
  const near = nearestWord(name.trim(), known);
  const hint = near ? `Do you mean “${near}”?` : `There are ${known.slice(0, 12).join(', ')}.`;
  return chartIssue('unknown-size', '--only', `“${shown(name.trim())}” is no size of this chart. ${hint}`);
}

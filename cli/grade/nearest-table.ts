import type { MeasurementName } from '../../engine/body/body.ts';
import type { Off } from '../../engine/grading/nearest.ts';
import type { Issue } from '../../engine/issue.ts';
import type { WordTable } from '../../engine/materials/words.ts';
import { fixed } from '../../engine/text/figure.ts';
import { lengthsLine, type Reader } from '../output/reader.ts';
import { table } from '../output/table.ts';
import { issuesResult } from '../output/walk-result.ts';
import type { NearestResult } from '../results/grade.ts';
import { homeChanges, homeTable, leftWords, type Nearness, nearestWords, offTable } from './nearest-rows.ts';

/** Which size is nearest, what it is off, the alterations, and what they leave; in the reader's unit. */
export function nearestTable(nearness: Nearness, reader: Reader): string {
  const { units } = reader;
  return `${nearestWords(nearness)}

${lengthsLine(reader)}${printed(offTable(nearness, units), reader)}
Compared is what was measured of her and shapes the garment.

${printed(homeTable(nearness, units), reader)}
${alterationLines(homeChanges(nearness, units))}${leftLines(leftWords(nearness, units))}`;
}

/** A table whose first column names what its figures are of, and whose words stand in a last column without a heading. */
const printed = ({ titles, rows }: WordTable, { columns }: Reader): string =>
  table(
    titles.map((title, i) => (i === 0 || title === '' ? { title } : { title, right: true })),
    rows,
    columns,
  );

const alterationLines = (changes: readonly string[]): string =>
  changes.length === 0
    ? 'Nothing to alter.\n'
    : `Alterations, as a fitting says them:\n${changes.map((change) => `  ${change}\n`).join('')}`;

const leftLines = (left: readonly string[]): string =>
  left.length === 0
    ? ''
    : `No alteration of a fitting brings these home; draft from her own measurements instead where they matter:\n  ${left.join(', ')}\n`;

/** The same as data; mm, angles in degrees. */
export function nearestResult(
  { her, chart, near, next, home }: Nearness,
  issues: readonly Issue[],
): NearestResult {
  const angle = (name: MeasurementName, value: number): number =>
    rounded(name === 'shoulderSlope' ? (value * 180) / Math.PI : value);
  const offs = (list: readonly Off[]) =>
    list.map(({ measurement, hers, size, given }) => ({
      measurement,
      hers: angle(measurement, hers),
      size: angle(measurement, size),
      off: angle(measurement, size - hers),
      given,
    }));
  return {
    ok: true,
    body: her.name,
    chart: chart.name,
    nearest: { name: near.of.name, size: near.of.size, cup: near.of.cup || null, apart: rounded(near.apart) },
    next: next.map(({ of, apart }) => ({ name: of.name, apart: rounded(apart) })),
    off: offs(near.off),
    girths: home.girths.map(({ level, hers, size, altered }) => ({
      level,
      hers: rounded(hers),
      size: rounded(size),
      altered: rounded(altered),
    })),
    alterations: home.changes,
    left: offs(home.left),
    issues: issuesResult(issues),
  };
}

const rounded = (value: number): number => Number(fixed(value, 3));

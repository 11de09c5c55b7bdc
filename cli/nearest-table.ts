import type { Body, MeasurementName } from '../engine/body/body.ts';
import { changeWords, type FittingChange } from '../engine/body/fitting.ts';
import { measurementWords } from '../engine/body/measurement-words.ts';
import type { BroughtHome } from '../engine/grading/bring-home.ts';
import type { Chart } from '../engine/grading/chart.ts';
import type { NearSize, Off } from '../engine/grading/nearest.ts';
import type { Issue } from '../engine/issue.ts';
import { fixed } from '../engine/text/figure.ts';
import { lengthCell } from '../engine/text/length.ts';
import type { Unit } from '../engine/text/units.ts';
import { lengthsLine, type Reader } from './reader.ts';
import type { NearestResult } from './results/grade.ts';
import { type Column, table } from './table.ts';
import { issuesResult } from './walk-result.ts';

/** The nearest sizes of a chart to one body, and what brings the first of them home. */
export interface Nearness {
  readonly her: Body;
  readonly chart: Chart;
  readonly near: NearSize;
  readonly next: readonly NearSize[];
  readonly home: BroughtHome;
}

/** Which size is nearest, what it is off, the alterations, and what they leave; in the reader's unit. */
export function nearestTable({ her, chart, near, next, home }: Nearness, reader: Reader): string {
  const { units, columns: width } = reader;
  const size = `size ${near.of.name}`;
  const others = next.map(({ of, apart }) => `${of.name} (${fixed(apart, 2)})`).join(', ');
  const columns: readonly Column[] = [
    { title: 'measurement' },
    { title: her.name, right: true },
    { title: size, right: true },
    { title: 'off by', right: true },
    { title: '' },
  ];
  const rows = near.off.map((off) => [
    off.measurement,
    shown(off.measurement, off.hers, units),
    shown(off.measurement, off.size, units),
    signed(off, units),
    off.given ? '' : 'not in the chart, estimated',
  ]);
  const girths = table(
    [
      { title: 'finished girth' },
      { title: her.name, right: true },
      { title: size, right: true },
      { title: 'off by', right: true },
      { title: 'altered', right: true },
      { title: 'off by', right: true },
    ],
    home.girths.map(({ level, hers, size: plain, altered }) => [
      level,
      ...[hers, plain, plain - hers, altered, altered - hers].map((mm) => lengthCell(mm, units)),
    ]),
    width,
  );
  return `${her.name}: nearest in ${chart.name} is ${size}, ${fixed(near.apart, 2)} sizes off${others === '' ? '' : `; then ${others}`}

${lengthsLine(reader)}${table(columns, rows, width)}
Compared is what was measured of her and shapes the garment.

${girths}
${alterationLines(home.changes, units)}${leftLines(home.left, units)}`;
}

const alterationLines = (changes: readonly FittingChange[], units: Unit): string =>
  changes.length === 0
    ? 'Nothing to alter.\n'
    : `Alterations, as a fitting says them:\n${changes.map((change) => `  ${changeWords(change)}: ${lengthCell(change.mm, units)}\n`).join('')}`;

const leftLines = (left: readonly Off[], units: Unit): string =>
  left.length === 0
    ? ''
    : `No alteration of a fitting brings these home; draft from her own measurements instead where they matter:\n  ${left.map((off) => `${measurementWords(off.measurement)} ${signed(off, units)}`).join(', ')}\n`;

const shown = (name: MeasurementName, value: number, units: Unit): string =>
  name === 'shoulderSlope' ? `${fixed((value * 180) / Math.PI, 1)}°` : lengthCell(value, units);

/** What a size is off, with its sign; of the slope in degrees. */
function signed({ measurement, by, hers, size }: Off, units: Unit): string {
  const slope = measurement === 'shoulderSlope';
  const text = slope ? shown(measurement, size - hers, units) : lengthCell(by, units);
  return by > 0 && /[1-9]/.test(text) ? `+${text}` : text;
}

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

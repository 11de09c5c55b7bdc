import type { Body, MeasurementName } from '../engine/body/body.ts';
import { changeWords, type FittingChange } from '../engine/body/fitting.ts';
import { measurementWords } from '../engine/body/words.ts';
import type { BroughtHome } from '../engine/grading/bring-home.ts';
import type { Chart } from '../engine/grading/chart.ts';
import type { NearSize, Off } from '../engine/grading/nearest.ts';
import type { Issue } from '../engine/issue.ts';
import { fixed } from '../engine/text/length.ts';
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

/** Which size is nearest, what it is off, the alterations, and what they leave; cm, girths of the garment mm. */
export function nearestTable({ her, chart, near, next, home }: Nearness, width: number): string {
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
    shown(off.measurement, off.hers),
    shown(off.measurement, off.size),
    signed(off),
    off.given ? '' : 'not in the chart, estimated',
  ]);
  const girths = table(
    [
      { title: 'finished girth (mm)' },
      { title: her.name, right: true },
      { title: size, right: true },
      { title: 'off by', right: true },
      { title: 'altered', right: true },
      { title: 'off by', right: true },
    ],
    home.girths.map(({ level, hers, size: plain, altered }) => [
      level,
      ...[hers, plain, plain - hers, altered, altered - hers].map((mm) => fixed(mm, 1)),
    ]),
    width,
  );
  return `${her.name}: nearest in ${chart.name} is ${size}, ${fixed(near.apart, 2)} sizes off${others === '' ? '' : `; then ${others}`}

${table(columns, rows, width)}
Lengths in cm, the slope in degrees; compared is what was measured of her and shapes the garment.

${girths}
${alterationLines(home.changes)}${leftLines(home.left)}`;
}

const alterationLines = (changes: readonly FittingChange[]): string =>
  changes.length === 0
    ? 'Nothing to alter.\n'
    : `Alterations, as a fitting says them (cm):\n${changes.map((change) => `  ${changeWords(change)}: ${fixed(change.mm / 10, 2)}\n`).join('')}`;

const leftLines = (left: readonly Off[]): string =>
  left.length === 0
    ? ''
    : `No alteration of a fitting brings these home; draft from her own measurements instead where they matter:\n  ${left.map((off) => `${measurementWords(off.measurement)} ${signed(off)}`).join(', ')}\n`;

const shown = (name: MeasurementName, value: number): string =>
  name === 'shoulderSlope' ? `${fixed((value * 180) / Math.PI, 1)}°` : fixed(value / 10, 1);

/** What a size is off, with its sign; of the slope in degrees. */
function signed({ measurement, by, hers, size }: Off): string {
  const value = measurement === 'shoulderSlope' ? ((size - hers) * 180) / Math.PI : by / 10;
  const text = fixed(value, 1);
  return `${Number(text) > 0 ? '+' : ''}${text}${measurement === 'shoulderSlope' ? '°' : ''}`;
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

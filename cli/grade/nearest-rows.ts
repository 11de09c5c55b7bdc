import type { Body, MeasurementName } from '../../engine/body/body.ts';
import { changeWords } from '../../engine/body/fitting.ts';
import { measurementWords } from '../../engine/body/measurement-words.ts';
import type { BroughtHome } from '../../engine/grading/bring-home.ts';
import type { Chart } from '../../engine/grading/chart.ts';
import type { NearSize, Off } from '../../engine/grading/nearest.ts';
import type { WordTable } from '../../engine/materials/words.ts';
import { fixed } from '../../engine/text/figure.ts';
import { lengthCell } from '../../engine/text/length.ts';
import type { Unit } from '../../engine/text/units.ts';

/** The nearest sizes of a chart to one body, and what brings the first of them home. */
export interface Nearness {
  readonly her: Body;
  readonly chart: Chart;
  readonly near: NearSize;
  readonly next: readonly NearSize[];
  readonly home: BroughtHome;
}

/** Which size is nearest, in a sentence without its stop. */
export function nearestWords({ her, chart, near, next }: Nearness): string {
  const others = next.map(({ of, apart }) => `${of.name} (${fixed(apart, 2)})`).join(', ');
  return `${her.name}: nearest in ${chart.name} is size ${near.of.name}, ${fixed(near.apart, 2)} sizes off${others === '' ? '' : `; then ${others}`}`;
}

/** Measurement by measurement, what the nearest size is off. */
export const offTable = ({ her, near }: Nearness, units: Unit): WordTable => ({
  titles: ['measurement', her.name, `size ${near.of.name}`, 'off by', ''],
  rows: near.off.map((off) => [
    off.measurement,
    shown(off.measurement, off.hers, units),
    shown(off.measurement, off.size, units),
    signed(off, units),
    off.given ? '' : 'not in the chart, estimated',
  ]),
});

/** Finished girths: hers, of the size as it is, and of the size altered. */
export const homeTable = ({ her, near, home }: Nearness, units: Unit): WordTable => ({
  titles: ['finished girth', her.name, `size ${near.of.name}`, 'off by', 'altered', 'off by'],
  rows: home.girths.map(({ level, hers, size: plain, altered }) => [
    level,
    ...[hers, plain, plain - hers, altered, altered - hers].map((mm) => lengthCell(mm, units)),
  ]),
});

/** The alterations that bring the size home, each as a fitting says it. */
export const homeChanges = ({ home: { changes } }: Nearness, units: Unit): readonly string[] =>
  changes.map((change) => `${changeWords(change)}: ${lengthCell(change.mm, units)}`);

/** What no alteration brings home. */
export const leftWords = ({ home: { left } }: Nearness, units: Unit): readonly string[] =>
  left.map((off) => `${measurementWords(off.measurement)} ${signed(off, units)}`);

const shown = (name: MeasurementName, value: number, units: Unit): string =>
  name === 'shoulderSlope' ? `${fixed((value * 180) / Math.PI, 1)}°` : lengthCell(value, units);

/** What a size is off, with its sign; of the slope in degrees. */
function signed({ measurement, by, hers, size }: Off, units: Unit): string {
  const slope = measurement === 'shoulderSlope';
  const text = slope ? shown(measurement, size - hers, units) : lengthCell(by, units);
  return by > 0 && /[1-9]/.test(text) ? `+${text}` : text;
}

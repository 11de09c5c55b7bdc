import {
  type Body,
  type MeasurementName,
  measurementNames,
  type Provenance,
} from '../../engine/body/body.ts';
import { cupOf } from '../../engine/body/cup.ts';
import { changeWords } from '../../engine/body/fitting.ts';
import { measurementWords } from '../../engine/body/measurement-words.ts';
import type { Issue } from '../../engine/issue.ts';
import type { Draft } from '../../engine/pattern/draft.ts';
import { fixed } from '../../engine/text/figure.ts';
import { EIGHTHS, lengthCell, SIXTEENTHS } from '../../engine/text/length.ts';
import type { Unit } from '../../engine/text/units.ts';
import { withLengthsIn } from '../../engine/text/with-lengths-in.ts';
import { lengthsLine, type Reader, sizeDecimals } from '../output/reader.ts';
import { type Column, table } from '../output/table.ts';
import { issuesResult } from '../output/walk-result.ts';
import type { CompletedResult, MeasurementResult } from '../results/body.ts';

const columns: readonly Column[] = [
  { title: 'measurement' },
  { title: 'value', right: true },
  { title: 'likely error', right: true },
  { title: 'acts on' },
  { title: 'from' },
];

/**
 * Every measurement with where it came from and the garments it acts on, and the cup; lengths in the reader's unit, what
 * was measured as finely as a tape shows it, angles in degrees.
 */
export function bodyTable(body: Body, garments: readonly Draft[], reader: Reader): string {
  const { units } = reader;
  const rows = measurementNames.map((name) => {
    const known = body.known[name];
    const figure = (value: number, parts: number): string =>
      name === 'shoulderSlope'
        ? `${fixed(degrees(value), 1)}°`
        : lengthCell(value, units, sizeDecimals[units], parts);
    const size = figure(body.size[name], known.from === 'estimated' ? EIGHTHS : SIXTEENTHS);
    const spread = known.from === 'estimated' ? `± ${figure(known.spread, EIGHTHS)}` : '';
    const actsOn = garmentsOf(name, garments).join(', ');
    return [name, size, spread, actsOn, fromWhat(known, units, (value) => figure(value, SIXTEENTHS))];
  });
  return `${body.name}, ${body.wearer}; ${lengthsLine(reader)}\n${table(columns, rows, reader.columns)}${unusedLine(garments)}\n${cupLines(body, units)}${fittingLines(body, units)}`;
}

/** The garments that a measurement acts on, by name. */
const garmentsOf = (name: MeasurementName, garments: readonly Draft[]): readonly string[] =>
  garments.filter((garment) => garment.shapedBy.includes(name)).map((garment) => garment.name);

/** What need not be taken, because no garment is drawn from it. */
function unusedLine(garments: readonly Draft[]): string {
  const unused = measurementNames.filter((name) => garmentsOf(name, garments).length === 0);
  return unused.length === 0
    ? ''
    : `\nNo garment is drawn from these, and they need not be taken: ${unused.map(measurementWords).join(', ')}.\n`;
}

function cupLines(body: Body, units: Unit): string {
  const { letter, difference, band, upperChestDifference } = cupOf(body);
  const less = (other: string, by: number): string =>
    `bust girth less ${other} girth: ${length(by, units)}\n`;
  return `cup ${letter}, band ${band}; ${less('under-bust', difference)}${less('upper chest', upperChestDifference)}`;
}

/** What a fitting found since; the measurements above are as they were taken before it. */
const fittingLines = ({ fitting }: Body, units: Unit): string =>
  fitting.length === 0
    ? ''
    : `\nsince then, at the fitting:\n${fitting.map((change) => `${changeWords(change)} by ${length(change.mm, units)}\n`).join('')}`;

/** The same as data; lengths in mm, angles in degrees. */
export function bodyResult(
  body: Body,
  garments: readonly Draft[],
  issues: readonly Issue[],
): CompletedResult {
  const measurements = Object.fromEntries(
    measurementNames.map((name) => [name, measurementResult(name, body, garments)]),
  ) as CompletedResult['measurements'];
  return {
    ok: true,
    body: body.name,
    wearer: body.wearer,
    measurements,
    cup: cupOf(body),
    fitting: body.fitting,
    issues: issuesResult(issues),
  };
}

function measurementResult(
  name: MeasurementName,
  { size, known }: Body,
  garments: readonly Draft[],
): MeasurementResult {
  const of = name === 'shoulderSlope' ? degrees : (mm: number): number => mm;
  const from = known[name];
  const rest = { value: of(size[name]), actsOn: garmentsOf(name, garments) };
  switch (from.from) {
    case 'estimated':
      return { ...rest, ...from, spread: of(from.spread) };
    case 'reconciled':
      return { ...rest, ...from, written: of(from.written), usualError: of(from.usualError) };
    case 'measured':
    case 'derived':
      return { ...rest, ...from };
  }
}

const degrees = (radians: number): number => (radians * 180) / Math.PI;

const length = (mm: number, units: Unit): string => `${lengthCell(mm, units, sizeDecimals[units])} ${units}`;

function fromWhat(known: Provenance, units: Unit, figure: (size: number) => string): string {
  switch (known.from) {
    case 'measured':
      return 'measured';
    case 'reconciled':
      return `reconciled: written ${figure(known.written)}`;
    case 'derived':
    case 'estimated':
      return `${known.from}: ${withLengthsIn(known.basis, units)}`;
  }
}

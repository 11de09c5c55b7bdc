import { type Body, type MeasurementName, measurementNames, type Provenance } from '../engine/body/body.ts';
import { cupOf } from '../engine/body/cup.ts';
import { changeWords } from '../engine/body/fitting.ts';
import { measurementWords } from '../engine/body/words.ts';
import type { Issue } from '../engine/issue.ts';
import type { Draft } from '../engine/pattern/draft.ts';
import type { CompletedResult, MeasurementResult } from './results/body.ts';
import { type Column, fixed, table } from './table.ts';
import { issuesResult } from './walk-result.ts';

const columns: readonly Column[] = [
  { title: 'measurement' },
  { title: 'value', right: true },
  { title: 'unit' },
  { title: 'likely error', right: true },
  { title: 'acts on' },
  { title: 'from' },
];

/**
 * Every measurement with where it came from and the garments it acts on, and the cup; lengths in cm, angles in
 * degrees.
 */
export function bodyTable(body: Body, garments: readonly Draft[]): string {
  const rows = measurementNames.map((name) => {
    const { unit, of } = scaleOf(name);
    const known = body.known[name];
    const spread = known.from === 'estimated' ? `± ${fixed(of(known.spread), 1)}` : '';
    const actsOn = garmentsOf(name, garments).join(', ');
    return [name, fixed(of(body.size[name]), 1), unit, spread, actsOn, fromWhat(known, of)];
  });
  return `${body.name}, ${body.wearer}\n\n${table(columns, rows)}${unusedLine(garments)}\n${cupLines(body)}${fittingLines(body)}`;
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

function cupLines(body: Body): string {
  const { letter, difference, band, upperChestDifference } = cupOf(body);
  const less = (other: string, by: number): string =>
    `bust girth less ${other} girth: ${fixed(by / 10, 1)} cm\n`;
  return `cup ${letter}, band ${band}; ${less('under-bust', difference)}${less('upper chest', upperChestDifference)}`;
}

/** What a fitting found since; the measurements above are as they were taken before it. */
const fittingLines = ({ fitting }: Body): string =>
  fitting.length === 0
    ? ''
    : `\nsince then, at the fitting:\n${fitting.map((change) => `${changeWords(change)} by ${fixed(change.mm / 10, 1)} cm\n`).join('')}`;

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
  const { of } = name === 'shoulderSlope' ? inDegrees : inMm;
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

const inDegrees = { unit: '°', of: (radians: number) => (radians * 180) / Math.PI };
const inMm = { unit: 'mm', of: (mm: number) => mm };
const inCm = { unit: 'cm', of: (mm: number) => mm / 10 };

const scaleOf = (name: MeasurementName) => (name === 'shoulderSlope' ? inDegrees : inCm);

function fromWhat(known: Provenance, of: (size: number) => number): string {
  switch (known.from) {
    case 'measured':
      return 'measured';
    case 'reconciled':
      return `reconciled: written ${fixed(of(known.written), 1)}`;
    case 'derived':
    case 'estimated':
      return `${known.from}: ${known.basis}`;
  }
}

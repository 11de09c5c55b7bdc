import { type MeasurementName, measurementNames } from '../body/body.ts';
import type { Issue } from '../issue.ts';
import type { Choice } from '../pattern/styling.ts';
import { nearestWord } from '../text/nearest-word.ts';
import { chartIssue, isSaid, shown } from './chart-issues.ts';

/** One row of a chart as it is written: measurements and styling by name, nothing read yet. */
export interface ChartRow {
  readonly size: string;
  readonly cup: string;
  readonly units: unknown;
  readonly age: unknown;
  /** The measurements that are right, however unlikely they look: what a body file says so too. */
  readonly sure: readonly unknown[];
  readonly measurements: Readonly<Partial<Record<MeasurementName, unknown>>>;
  readonly styling: Readonly<Record<string, unknown>>;
}

/** The fields of a row that are neither measurements nor styling. */
export const rowFields = ['size', 'cup', 'units', 'age', 'sure'] as const;

/** Names as a list, or in one cell of a table, with blanks or commas between. */
export const namesIn = (said: unknown): readonly unknown[] =>
  Array.isArray(said)
    ? said
    : isSaid(said)
      ? String(said)
          .trim()
          .split(/[\s,;]+/)
      : [];

/**
 * Sorts the fields of one row into measurements and styling choices by their names; empty cells are left out. What is
 * neither is refused with the nearest name.
 */
export function readRow(
  fields: Readonly<Record<string, unknown>>,
  choices: readonly Choice[],
  issues: Issue[],
): ChartRow {
  const measurements: Partial<Record<MeasurementName, unknown>> = {};
  const styling: Record<string, unknown> = {};
  const size = isSaid(fields.size) ? shown(fields.size) : '';
  for (const [field, value] of Object.entries(fields)) {
    if (rowFields.some((known) => known === field) || !isSaid(value)) continue;
    const measurement = measurementNames.find((name) => name === field);
    if (measurement) measurements[measurement] = value;
    else if (choices.some(({ name }) => name === field)) styling[field] = value;
    else issues.push(unknownField(field, choices));
  }
  return {
    size,
    cup: isSaid(fields.cup) ? shown(fields.cup) : '',
    units: isSaid(fields.units) ? fields.units : undefined,
    age: isSaid(fields.age) ? fields.age : undefined,
    sure: namesIn(fields.sure),
    measurements,
    styling,
  };
}

function unknownField(field: string, choices: readonly Choice[]): Issue {
  const known = [...rowFields, ...measurementNames, ...choices.map(({ name }) => name)];
  const near = nearestWord(field, known);
  const hint = near
    ? `Do you mean ${near}?`
    : 'A column is named after a measurement, as body files write it, or after a styling choice.';
  return chartIssue(
    'unknown-column',
    shown(field),
    `“${shown(field)}” is neither a measurement nor a choice of this garment. ${hint}`,
  );
}

/** The measurements that a row says. */
export const givenIn = ({ measurements }: ChartRow): readonly MeasurementName[] =>
  measurementNames.filter((name) => measurements[name] !== undefined);

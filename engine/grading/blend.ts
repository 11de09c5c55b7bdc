import { type MeasurementName, measurementNames } from '../body/body.ts';
import type { Issue } from '../issue.ts';
import { numberIn } from '../text/units.ts';
import { chartIssue, fieldsOf, shown } from './chart-issues.ts';
import type { ChartRow } from './row.ts';

/**
 * A size made of others: each measurement from the size it names, or, where it names two in a list, half-way between
 * them. What is not named comes from the size of the first one that is.
 *
 * Issues: `blend-not-understood`, `blend-of-unknown-size`.
 */
export function blendedRow(
  own: ChartRow,
  from: unknown,
  rows: readonly ChartRow[],
  issues: Issue[],
): ChartRow | undefined {
  const path = `size ${own.size}`;
  const fields = Object.entries(fieldsOf(from) ?? {});
  const understood = fields.every(([name]) => measurementNames.some((known) => known === name));
  if (fields.length === 0 || !understood) {
    issues.push(
      chartIssue(
        'blend-not-understood',
        path,
        'Write a blend as measurements with the size each comes from, such as “from: {bustGirth: "40", hipGirth: "44"}”.',
      ),
    );
    return undefined;
  }
  const taken = fields.map(([name, sizes]) => ({
    name: name as MeasurementName,
    of: (Array.isArray(sizes) ? sizes : [sizes]).map((size: unknown) => sizeCalled(size, rows)),
    said: sizes,
  }));
  for (const { of, said } of taken)
    if (of.length === 0 || of.some((row) => !row))
      issues.push(
        chartIssue(
          'blend-of-unknown-size',
          path,
          `“${shown(Array.isArray(said) ? said.join(', ') : said)}” is no size of the run${rows.length > 0 ? ` ${rows.map(({ size }) => size).join(', ')}` : ', which has none of its own'}.`,
        ),
      );
  const first = taken[0]?.of[0];
  if (!first || taken.some(({ of }) => of.length === 0 || of.some((row) => !row))) return undefined;
  const blended = taken.map(({ name, of }) => [name, meanOf(name, of as readonly ChartRow[])] as const);
  return {
    ...first,
    size: own.size,
    cup: own.cup || first.cup,
    measurements: { ...first.measurements, ...Object.fromEntries(blended), ...own.measurements },
    styling: { ...first.styling, ...own.styling },
    sure: Object.keys({ ...first.measurements, ...own.measurements }),
  };
}

const sizeCalled = (name: unknown, rows: readonly ChartRow[]): ChartRow | undefined =>
  rows.find(({ size }) => size === shown(name));

function meanOf(name: MeasurementName, rows: readonly ChartRow[]): unknown {
  if (rows.length === 1) return rows[0]?.measurements[name];
  const numbers = rows.map(({ measurements }) => {
    const value = measurements[name];
    return typeof value === 'string' ? numberIn(value) : value;
  });
  if (!numbers.every((value): value is number => typeof value === 'number')) return undefined;
  return numbers.reduce((sum, value) => sum + value, 0) / numbers.length;
}

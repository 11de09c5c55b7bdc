import { type MeasurementName, measurementNames } from '../body/body.ts';
import type { Issue } from '../issue.ts';
import type { Choice } from '../pattern/styling.ts';
import { rounded } from '../text/figure.ts';
import { numberIn } from '../text/units.ts';
import { chartIssue, fieldsOf, shown } from './chart-issues.ts';
import { type ChartRow, readRow } from './row.ts';

/** The steps from size to size over a stretch of the run, by measurement or styling choice, in the chart's unit. */
interface EvenStretch {
  readonly from: number;
  readonly to: number;
  readonly steps: Readonly<Record<string, number>>;
}

/**
 * The rows that a base size and steps between sizes make. `names` is the run in order; the base is one of it. Steps are
 * one group for the whole run, or a list of stretches, each `from` one size `to` another, so that they may change along
 * the run. What no stretch mentions stays as it is at the base.
 *
 * Issues: `base-not-a-size`, `step-not-a-number`, `step-without-base`, `steps-not-understood`, `steps-leave-out`,
 * `steps-overlap`, and those of a row.
 */
export function steppedRows(
  base: unknown,
  steps: unknown,
  names: readonly string[],
  choices: readonly Choice[],
  issues: Issue[],
): readonly ChartRow[] {
  const fields = fieldsOf(base);
  if (!fields) {
    issues.push(chartIssue('base-missing', 'base', 'Write the measurements of the base size under “base”.'));
    return [];
  }
  const row = readRow(fields, choices, issues);
  const at = names.indexOf(row.size);
  if (at < 0) {
    const run = names.length > 0 ? `: ${names.map(shown).join(', ')}` : ' under “sizes”';
    issues.push(
      chartIssue(
        'base-not-a-size',
        'base',
        `The base says “size: ${row.size || '?'}”, which is none of the sizes of the run${run}.`,
      ),
    );
    return [];
  }
  const stretches = readStretches(steps, names, row, issues);
  return names.map((size, i) => steppedRow(row, size, between(stretches, at, i), issues));
}

/** How often, and which way, each step is taken from one place of the run to another: the sum by name. */
function between(
  stretches: readonly EvenStretch[],
  base: number,
  at: number,
): Readonly<Record<string, number>> {
  const [low, high, sign] = at < base ? [at, base, -1] : [base, at, 1];
  const sum: Record<string, number> = {};
  for (const { from, to, steps } of stretches) {
    const times = Math.min(to, high) - Math.max(from, low);
    if (times <= 0) continue;
    for (const [name, step] of Object.entries(steps)) sum[name] = (sum[name] ?? 0) + sign * times * step;
  }
  return sum;
}

function steppedRow(
  base: ChartRow,
  size: string,
  by: Readonly<Record<string, number>>,
  issues: Issue[],
): ChartRow {
  const measurements: Partial<Record<MeasurementName, unknown>> = { ...base.measurements };
  const styling: Record<string, unknown> = { ...base.styling };
  for (const [name, step] of Object.entries(by)) {
    const measurement = measurementNames.find((known) => known === name);
    const was = numberOf(measurement ? measurements[measurement] : styling[name]);
    if (was === undefined)
      issues.push(
        chartIssue(
          'step-without-base',
          `base/${shown(name)}`,
          `There are steps for “${shown(name)}”, but the base says no number for it.`,
        ),
      );
    else if (measurement) measurements[measurement] = sum(was, step);
    else styling[name] = sum(was, step);
  }
  // Sums of what stands in the chart are no slips of a pen.
  return { ...base, size, measurements, styling, sure: Object.keys(measurements) };
}

/** Sums of written decimals without what doubles leave behind. */
const sum = (was: number, step: number): number => rounded(was + step, 9);

const numberOf = (value: unknown): number | undefined =>
  typeof value === 'string' ? numberIn(value) : typeof value === 'number' ? value : undefined;

function readStretches(
  steps: unknown,
  names: readonly string[],
  base: ChartRow,
  issues: Issue[],
): readonly EvenStretch[] {
  const last = names.length - 1;
  const list: readonly unknown[] = Array.isArray(steps) ? steps : [steps];
  const read = list.flatMap((item, i): readonly EvenStretch[] => {
    const path = Array.isArray(steps) ? `steps/${i + 1}` : 'steps';
    const fields = fieldsOf(item);
    if (!fields) {
      issues.push(
        chartIssue(
          'steps-not-understood',
          path,
          'Write steps as measurements with the difference from size to size, such as “bustGirth: 4”.',
        ),
      );
      return [];
    }
    const { from, to, ...rest } = fields;
    const ends = [from === undefined ? 0 : place(from, names), to === undefined ? last : place(to, names)];
    const [first = -1, end = -1] = ends;
    if (first < 0 || end <= first) {
      issues.push(
        chartIssue(
          'steps-not-understood',
          path,
          `“from ${shown(from ?? names[0])} to ${shown(to ?? names[last])}” is no stretch of the run ${names.map(shown).join(', ')}.`,
        ),
      );
      return [];
    }
    return [{ from: first, to: end, steps: numbersOf(rest, path, base, issues) }];
  });
  const all = read.toSorted((a, b) => a.from - b.from);
  issues.push(...coverage(all, names));
  return all;
}

const place = (name: unknown, names: readonly string[]): number => names.indexOf(shown(name));

function numbersOf(
  fields: Readonly<Record<string, unknown>>,
  path: string,
  base: ChartRow,
  issues: Issue[],
): Readonly<Record<string, number>> {
  const steps: Record<string, number> = {};
  for (const [name, value] of Object.entries(fields)) {
    const known = Object.hasOwn(base.measurements, name) || Object.hasOwn(base.styling, name);
    const minus = typeof value === 'string' && value.trim().startsWith('-');
    const size = minus ? numberOf(value.trim().slice(1)) : numberOf(value);
    if (!known)
      issues.push(
        chartIssue(
          'step-without-base',
          `${path}/${shown(name)}`,
          `There are steps for “${shown(name)}”, but the base says nothing of it.`,
        ),
      );
    else if (size === undefined || !Number.isFinite(size))
      issues.push(
        chartIssue(
          'step-not-a-number',
          `${path}/${name}`,
          `${shown(value)} is no step: write the difference from one size to the next, such as 4, 0.5 or 1 1/2.`,
        ),
      );
    else steps[name] = minus ? -size : size;
  }
  return steps;
}

/** Every step of the run is said once. */
function coverage(stretches: readonly EvenStretch[], names: readonly string[]): readonly Issue[] {
  const issues: Issue[] = [];
  for (let i = 0; i + 1 < names.length; i++) {
    const times = stretches.filter(({ from, to }) => from <= i && i + 1 <= to).length;
    if (times === 1) continue;
    issues.push(
      chartIssue(
        times === 0 ? 'steps-leave-out' : 'steps-overlap',
        'steps',
        `The step from size ${names[i]} to ${names[i + 1]} is said ${times === 0 ? 'nowhere' : 'more than once'}.`,
      ),
    );
  }
  return issues;
}

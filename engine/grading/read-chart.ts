import { measurementNames } from '../body/body.ts';
import { cupLetters } from '../body/cup-letters.ts';
import type { Issue, Result } from '../issue.ts';
import type { Choice } from '../pattern/styling.ts';
import { nearestWord } from '../text/nearest-word.ts';
import { unitNames } from '../text/units.ts';
import { withoutTurns } from '../text/without-turns.ts';
import { blendedRow } from './blend.ts';
import type { Chart, ChartSize } from './chart.ts';
import { chartIssue, fieldsOf, isSaid, shown } from './chart-issues.ts';
import { type CupsAt, cupsAtNames, inCup } from './in-cup.ts';
import { type ChartRow, givenIn, namesIn, readRow } from './row.ts';
import { steppedRows } from './stepped.ts';

/** What reading a chart needs to know beside it. */
export interface ChartContext {
  /** The garment's styling choices: columns may be named after them. */
  readonly choices: readonly Choice[];
  /** The unit, where the chart says none. */
  readonly units?: string | undefined;
  /** What the body files say that the chart names, by the name it uses. */
  readonly bodies: ReadonlyMap<string, unknown>;
}

const chartFields = ['name', 'source', 'units', 'sizes', 'base', 'steps', 'cups', 'cupsAt', 'sure'] as const;

/** No stock has more sizes, cups counted. */
const MOST_SIZES = 400;

/** The body files that the sizes of a chart name. */
export const bodyFilesIn = (data: unknown): readonly string[] => [
  ...new Set(
    listOf(fieldsOf(data)?.sizes).flatMap((item) => {
      const body = fieldsOf(item)?.body;
      return typeof body === 'string' ? [body] : [];
    }),
  ),
];

/**
 * Reads a size chart from data as a YAML, JSON or CSV file holds it: a row of measurements a size, or a base and steps;
 * with cups as a second axis; with bodies and blends as sizes beside the run. Every size is checked as a body file is when
 * it is drafted. Fails with everything that is wrong at once.
 */
export function readChart(data: unknown, context: ChartContext): Result<Chart> {
  const fields = fieldsOf(data);
  const items = listOf(fields?.sizes);
  if (!fields || items.length === 0) return { ok: false, issues: [noSizes] };
  const issues: Issue[] = Object.keys(fields)
    .filter((field) => !chartFields.some((known) => known === field))
    .map(unknownField);
  const units = unitsOf(fields.units, context.units, issues);
  const run = runOf(fields, items, context, issues);
  const beside = items.flatMap((item) => besideRun(item, run, context, issues));
  issues.push(...named(run, beside));
  const cups = cupsOf(fields.cups, issues);
  const at = cupsAtOf(fields.cupsAt, issues);
  const count = run.length * Math.max(1, cups.length) + beside.length;
  // Before any body is estimated for them.
  if (count > MOST_SIZES) issues.push(tooMany(count));
  if (issues.length > 0) return { ok: false, issues };

  const rows = run.map((row) => sizeOf(row, units, false));
  const middle = middleOf(cups, fieldsOf(fields.base)?.cup);
  const [inRun, others] = [
    cups.length === 0
      ? rows.map(asItIs)
      : rows.flatMap((row) => cups.map((letter) => inCup(row, letter, at))),
    beside.map(({ row, body }) => {
      const size = sizeOf(row, units, true);
      if (body) return asItIs(body);
      return cups.length === 0 ? asItIs(size) : blendInCup(size, row.cup || middle, at);
    }),
  ];
  const all = [...inRun, ...others];
  const faults = all.flatMap((one) => (one.ok ? [] : one.issues));
  if (faults.length > 0) return { ok: false, issues: faults };
  const valuesOf = (list: readonly Result<ChartSize>[]) => list.flatMap((one) => (one.ok ? [one.value] : []));
  return { ok: true, value: chartOf(fields, valuesOf(inRun), valuesOf(all)), issues: [] };
}

const asItIs = (value: ChartSize): Result<ChartSize> => ({ ok: true, value, issues: [] });

/** A blend in the cup it says, or in the middle one, like the sizes it is drawn with; it keeps its name. */
function blendInCup(size: ChartSize, letter: string, at: CupsAt): Result<ChartSize> {
  const made = inCup(size, letter, at);
  if (!made.ok) return made;
  const { name, cup } = size;
  return asItIs({ ...made.value, name, cup, body: { ...made.value.body, name } });
}

const listOf = (data: unknown): readonly unknown[] => (Array.isArray(data) ? data : []);

/** A row that stands beside the run, with its body where that is a file's own. */
interface Beside {
  readonly row: ChartRow;
  readonly body?: ChartSize;
}

/** The run of sizes: rows as they stand, or those that base and steps make. */
function runOf(
  fields: Readonly<Record<string, unknown>>,
  items: readonly unknown[],
  { choices }: ChartContext,
  issues: Issue[],
): readonly ChartRow[] {
  if (isSaid(fields.base) || isSaid(fields.steps)) {
    const names = items.filter((item) => !fieldsOf(item)).map(shown);
    return steppedRows(fields.base, fields.steps, names, choices, issues);
  }
  return items.flatMap((item, i) => {
    const row = fieldsOf(item);
    if (!row) {
      issues.push(
        chartIssue(
          'size-not-understood',
          `sizes/${i + 1}`,
          `Size ${shown(item)} has no measurements: write them beside it, or a base and steps for all sizes.`,
        ),
      );
      return [];
    }
    if (isBeside(row)) return [];
    const read = readRow(row, choices, issues);
    return [{ ...read, sure: [...new Set([...namesIn(fields.sure), ...read.sure])] }];
  });
}

const isBeside = (row: Readonly<Record<string, unknown>>): boolean => isSaid(row.body) || isSaid(row.from);

function besideRun(
  item: unknown,
  run: readonly ChartRow[],
  { choices, bodies }: ChartContext,
  issues: Issue[],
): readonly Beside[] {
  const fields = fieldsOf(item);
  if (!fields || !isBeside(fields)) return [];
  const { body, from, ...rest } = fields;
  const own = readRow(rest, choices, issues);
  if (isSaid(from)) {
    const row = blendedRow(own, from, run, issues);
    return row ? [{ row }] : [];
  }
  const data = fieldsOf(bodies.get(String(body)));
  if (!data) {
    issues.push(
      chartIssue('body-not-read', `size ${own.size}`, `${shown(body)} holds no measurements of a body.`),
    );
    return [];
  }
  const size = own.size || withoutTurns(shown(data.name ?? body));
  const given = measurementNames.filter((name) => isSaid(data[name]));
  const row = { ...own, size };
  return [
    {
      row,
      body: {
        name: size,
        size,
        cup: own.cup,
        body: { ...data, name: size },
        styling: own.styling,
        given,
        alone: true,
      },
    },
  ];
}

/** Every size has a name, and none has another's, nor the same cup twice. */
function named(run: readonly ChartRow[], beside: readonly Beside[]): readonly Issue[] {
  const issues: Issue[] = [];
  const seen = new Set<string>();
  for (const [i, { size, cup }] of [...run, ...beside.map(({ row }) => row)].entries()) {
    const name = nameOf(size, cup);
    if (size === '')
      issues.push(chartIssue('size-unnamed', `sizes/${i + 1}`, `The size in place ${i + 1} has no name.`));
    else if (seen.has(name))
      issues.push(chartIssue('size-twice', `size ${name}`, `There are two sizes called ${name}.`));
    seen.add(name);
  }
  return issues;
}

const nameOf = (size: string, cup: string): string => (cup === '' ? size : `${size} ${cup}`);

function sizeOf(row: ChartRow, units: string | undefined, alone: boolean): ChartSize {
  const name = alone ? row.size : nameOf(row.size, row.cup);
  return {
    name,
    size: row.size,
    cup: alone ? '' : row.cup,
    body: {
      name,
      units: row.units ?? units,
      ...(row.age !== undefined && { age: Number(row.age) }),
      ...(row.cup !== '' && { cup: row.cup }),
      ...row.measurements,
      ...(row.sure.length > 0 && { sure: row.sure }),
    },
    styling: row.styling,
    given: [...new Set([...givenIn(row), ...(row.cup === '' ? [] : (['underBustGirth'] as const))])],
    alone,
  };
}

function chartOf(
  fields: Readonly<Record<string, unknown>>,
  run: readonly ChartSize[],
  rows: readonly ChartSize[],
): Chart {
  const sizes = [...new Set(run.map(({ size }) => size))];
  const cups = [...new Set(run.map(({ cup }) => cup))];
  const base = fieldsOf(fields.base);
  return {
    name: withoutTurns(isSaid(fields.name) ? shown(fields.name) : 'size chart'),
    source: isSaid(fields.source) ? withoutTurns(String(fields.source).trim()) : '',
    sizes,
    cups,
    rows,
    middle: {
      size: middleOf(sizes, base?.size),
      cup: middleOf(cups, base?.cup),
    },
  };
}

/** The one of some names that is wanted, or the middle one. */
const middleOf = (names: readonly string[], wanted: unknown): string =>
  names.find((name) => isSaid(wanted) && name === shown(wanted)) ??
  names[Math.floor((names.length - 1) / 2)] ??
  '';

const noSizes = chartIssue(
  'chart-without-sizes',
  '',
  'There are no sizes here. A chart has a row of measurements for each size, or “sizes”, “base” and “steps”.',
);

function unknownField(field: string): Issue {
  const near = nearestWord(field, chartFields);
  const hint = near ? `Do you mean ${near}?` : `Known are ${chartFields.join(', ')}.`;
  return chartIssue('unknown-chart-field', shown(field), `A chart has no “${shown(field)}”. ${hint}`);
}

const tooMany = (count: number): Issue => ({
  ...chartIssue(
    'chart-too-large',
    'sizes',
    `The chart has ${count} sizes, cups counted; it may have ${MOST_SIZES}.`,
  ),
  value: count,
  limits: { max: MOST_SIZES, unit: 'sizes' },
});

/** The unit of the chart: as it says itself, or as it is told; not both and different. */
function unitsOf(said: unknown, told: string | undefined, issues: Issue[]): string | undefined {
  if (told !== undefined && !unitNames.some((unit) => unit === told))
    issues.push(
      chartIssue(
        'unknown-unit',
        '--units',
        `${shown(told)} is no unit for a chart: use ${unitNames.join(', ')}.`,
      ),
    );
  if (isSaid(said) && told !== undefined && said !== told)
    issues.push(
      chartIssue(
        'units-said-twice',
        '--units',
        `The chart says units: ${shown(said)}; --units says ${told}.`,
      ),
    );
  return isSaid(said) ? shown(said) : told;
}

function cupsOf(said: unknown, issues: Issue[]): readonly string[] {
  if (!isSaid(said)) return [];
  const letters = namesIn(said).map(shown);
  for (const letter of letters)
    if (!cupLetters.includes(letter))
      issues.push(
        chartIssue(
          'unknown-cup',
          'cups',
          `${shown(letter)} is no cup of EN 13402: use ${cupLetters.join(', ')}.`,
        ),
      );
  if (new Set(letters).size < letters.length)
    issues.push(chartIssue('cup-twice', 'cups', 'The chart names a cup twice.'));
  return letters.toSorted((a, b) => cupLetters.indexOf(a) - cupLetters.indexOf(b));
}

function cupsAtOf(said: unknown, issues: Issue[]): CupsAt {
  const found = cupsAtNames.find((name) => name === said);
  if (isSaid(said) && !found)
    issues.push(
      chartIssue(
        'unknown-cups-at',
        'cupsAt',
        `“${shown(said)}” can be bust or underBust: what stays while the cup changes.`,
      ),
    );
  return found ?? 'bust';
}

import type { Issue, Result } from '../issue.ts';
import type { Choice } from '../pattern/styling.ts';
import { withoutTurns } from '../text/without-turns.ts';
import type { Chart, ChartSize } from './chart.ts';
import { cupsAtOf, cupsOf, unitsOf, unknownFields } from './chart-head.ts';
import { chartIssue, fieldsOf, isSaid, shown } from './chart-issues.ts';
import { besideRun, nameFaults, nameOf, runOf } from './chart-rows.ts';
import { type CupsAt, inCup } from './in-cup.ts';
import { type ChartRow, givenIn } from './row.ts';

/** What reading a chart needs to know beside it. */
export interface ChartContext {
  /** The garment's styling choices: columns may be named after them. */
  readonly choices: readonly Choice[];
  /** The unit, where the chart says none. */
  readonly units?: string | undefined;
  /** What the body files say that the chart names, by the name it uses. */
  readonly bodies: ReadonlyMap<string, unknown>;
}

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
  const issues: Issue[] = [...unknownFields(fields)];
  const units = unitsOf(fields.units, context.units, issues);
  const run = runOf(fields, items, context.choices, issues);
  const beside = items.flatMap((item) => besideRun(item, run, context.choices, context.bodies, issues));
  issues.push(...nameFaults(run, beside));
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

const tooMany = (count: number): Issue => ({
  ...chartIssue(
    'chart-too-large',
    'sizes',
    `The chart has ${count} sizes, cups counted; it may have ${MOST_SIZES}.`,
  ),
  value: count,
  limits: { max: MOST_SIZES, unit: 'sizes' },
});

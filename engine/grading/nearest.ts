import type { Body, MeasurementName } from '../body/body.ts';
import { readBody } from '../body/read.ts';
import type { Issue, Result } from '../issue.ts';
import { perMm } from '../sensitivity/sensitivity.ts';
import type { Chart, ChartSize } from './chart.ts';

/** A size of a chart beside a body. */
export interface NearSize {
  readonly of: ChartSize;
  readonly body: Body;
  /** How far off it is, in sizes of the chart: the root of the mean square over the girths that both say. */
  readonly apart: number;
  readonly off: readonly Off[];
}

/** How far one measurement of a size is off a body's. */
export interface Off {
  readonly measurement: MeasurementName;
  /** mm or radians. */
  readonly hers: number;
  readonly size: number;
  /** The size less hers, mm; the shoulder slope by how far it lowers the shoulder point. */
  readonly by: number;
  /** Whether the chart says the size's number, or it was estimated. */
  readonly given: boolean;
}

/** A girth that hardly changes along a chart counts as if it changed by so much from size to size, mm; judgement. */
const LEAST_STEP = 5;

/** A size is chosen by girths; lengths and widths are told, and altered afterwards. Common practice, no source. */
const isGirth = (name: MeasurementName): boolean => name.endsWith('Girth');

/**
 * The sizes of a chart, the nearest to a body first. What was measured of her and shapes the garment is compared. How near
 * a size is, is told by the girths that the chart gives, each in steps of the chart's, so that being one size off counts as
 * one whatever is measured; cups are told apart by the under-bust girth, measured or not.
 */
export function nearestSizes(
  chart: Chart,
  her: Body,
  shapedBy: readonly MeasurementName[],
): Result<readonly NearSize[]> {
  const issues: Issue[] = [];
  const read = chart.rows.flatMap((of) => {
    const body = readBody(of.body);
    if (body.ok) return [{ of, body: body.value }];
    issues.push(...body.issues.map((issue) => ({ ...issue, path: `size ${of.name}: ${issue.path}` })));
    return [];
  });
  if (issues.length > 0) return { ok: false, issues };
  const inCups = chart.cups.length > 1;
  const measured = shapedBy.filter(
    (name) => her.known[name].from !== 'estimated' || (inCups && name === 'underBustGirth'),
  );
  const run = read.filter(({ of }) => !of.alone && of.cup === chart.middle.cup).map(({ body }) => body);
  const steps = new Map(measured.filter(isGirth).map((name) => [name, stepOf(name, run)] as const));
  const value = read
    .map(({ of, body }): NearSize => {
      const off = measured.map((name) => offBy(name, her, body, of));
      const squares = off
        .filter(({ measurement, given }) => given && isGirth(measurement))
        .map(({ measurement, by }) => (by / (steps.get(measurement) ?? LEAST_STEP)) ** 2);
      const mean = squares.reduce((sum, square) => sum + square, 0) / Math.max(1, squares.length);
      return { of, body, off, apart: Math.sqrt(mean) };
    })
    .toSorted((a, b) => a.apart - b.apart);
  return { ok: true, value, issues: [] };
}

const offBy = (measurement: MeasurementName, her: Body, body: Body, of: ChartSize): Off => ({
  measurement,
  hers: her.size[measurement],
  size: body.size[measurement],
  by: (body.size[measurement] - her.size[measurement]) / perMm(her, measurement),
  given: of.given.includes(measurement),
});

/** The mean step of a girth from size to size, mm. */
function stepOf(name: MeasurementName, run: readonly Body[]): number {
  const [first, last] = [run[0], run.at(-1)];
  if (!first || !last || run.length < 2) return LEAST_STEP;
  const step = Math.abs(last.size[name] - first.size[name]) / (run.length - 1);
  return Math.max(LEAST_STEP, step);
}

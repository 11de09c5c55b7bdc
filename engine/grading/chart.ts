import type { MeasurementName } from '../body/body.ts';

/** One size of a chart, ready to be drafted: her measurements as a body file says them, and her styling. */
export interface ChartSize {
  /** What is printed on the pieces: the size, and its cup where the chart has several. */
  readonly name: string;
  readonly size: string;
  /** The cup's letter where the chart says one. */
  readonly cup: string;
  readonly body: Readonly<Record<string, unknown>>;
  readonly styling: Readonly<Record<string, unknown>>;
  /** What the chart itself says of this size; everything else is estimated. */
  readonly given: readonly MeasurementName[];
  /** Stands beside the run of sizes, and has no step to a neighbour: a body's own file, or a blend of two sizes. */
  readonly alone: boolean;
}

/** A size chart: a run of sizes from small to large, each in as many cups as there are, and sizes beside it. */
export interface Chart {
  readonly name: string;
  /** Where it was published, in the chart's own words; empty where it does not say. */
  readonly source: string;
  /** The names of the run, in order. */
  readonly sizes: readonly string[];
  /** The cups of each size, from the smallest; one without a name where the chart has no second axis. */
  readonly cups: readonly string[];
  /** Size by size, each cup by cup; those that stand alone come last. */
  readonly rows: readonly ChartSize[];
  /** The size and the cup by which the other axis is shown: the chart's base, or the middle of each. */
  readonly middle: { readonly size: string; readonly cup: string };
}

/** The rows of a chart along one axis, the other one held: what a nest shows and a grade rule table tells. */
export interface Axis {
  readonly along: 'sizes' | 'cups';
  /** What is held: the cup along the sizes, the size along the cups. */
  readonly at: string;
  readonly rows: readonly ChartSize[];
}

/** Every axis of a chart that has more than one size on it: sizes cup by cup, then cups size by size. */
export function axesOf({ sizes, cups, rows }: Chart): readonly Axis[] {
  const run = rows.filter(({ alone }) => !alone);
  return [
    ...cups.map((at): Axis => ({ along: 'sizes', at, rows: run.filter(({ cup }) => cup === at) })),
    ...sizes.map((at): Axis => ({ along: 'cups', at, rows: run.filter(({ size }) => size === at) })),
  ].filter((axis) => axis.rows.length > 1);
}

import { DraftMistake } from '../draft-mistake.ts';
import type { ShapeClaim, ShapeMeasure, ShapeUnit } from './shape.ts';

/** Limits between which a cutter expects a figure, and on whose word. */
export interface SourcedBand {
  /** What the figure is called. */
  readonly name: string;
  readonly low: number | undefined;
  readonly high: number | undefined;
  readonly unit: ShapeUnit;
  readonly source: string;
  /** Outside it the draft fails. */
  readonly bound: boolean;
}

type BandRow = readonly [
  name: string,
  low: number | undefined,
  high: number | undefined,
  unit: ShapeUnit,
  source: string,
  bound?: 'bound',
];

/**
 * The bands of a draft. Throws a `DraftMistake` for one that has no limit or no source.
 */
export function bandTable<Key extends string>(
  rows: Readonly<Record<Key, BandRow>>,
): Readonly<Record<Key, SourcedBand>> {
  const entries = Object.entries<BandRow>(rows).map(([key, [name, low, high, unit, source, bound]]) => {
    if (low === undefined && high === undefined)
      throw new DraftMistake(`The band “${key}” has no limit.`, [key]);
    if (source.trim() === '')
      throw new DraftMistake(`The band “${key}” has no source: name who says so, or write commonPractice.`, [
        key,
      ]);
    return [key, { name, low, high, unit, source, bound: bound === 'bound' }] as const;
  });
  return Object.fromEntries(entries) as Record<Key, SourcedBand>;
}

/** A claim's kind and name stand first in a written file. */
const called = ({ kind }: ShapeMeasure, name: string): Pick<ShapeClaim, 'kind' | 'name'> => ({ kind, name });

/** How a figure is called, where that is not as its band, and what its limits are shares of (mm). */
interface ClaimedAs {
  readonly name?: string;
  readonly per?: number;
}

/** The claim that a measure lies within a band, and what usually is the reason where it does not. */
export const claim = (
  band: SourcedBand,
  measure: ShapeMeasure,
  outside: string,
  { name = band.name, per = 1 }: ClaimedAs = {},
): ShapeClaim => ({
  ...called(measure, name),
  ...measure,
  ...(band.low === undefined ? {} : { low: band.low * per }),
  ...(band.high === undefined ? {} : { high: band.high * per }),
  ...(band.bound ? { bound: true } : {}),
  outside,
});

/** The claim that a measure lies as far about a figure of this body (in the unit of the measure) as a band says. */
export const claimAbout = (
  band: SourcedBand,
  value: number,
  measure: ShapeMeasure,
  outside: string,
  name: string,
): ShapeClaim => {
  const { low, high } = band;
  const about = {
    ...band,
    low: low === undefined ? undefined : value + low,
    high: high === undefined ? undefined : value + high,
  };
  return claim(about, measure, outside, { name });
};

import { DraftMistake } from '../draft-mistake.ts';
import type { Band, ShapeClaim, ShapeMeasure, ShapeUnit } from './shape.ts';

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

/** How a figure is called, where that is not as its band, and what its limits are shares of (mm). */
interface ClaimedAs {
  readonly name?: string;
  readonly per?: number;
}

/**
 * The claim that a measure lies within a band, and what usually is the reason where it does not. Kind and name stand first in a
 * written file. Put together one by one: spread from several it takes V8 thirty times as long.
 */
export const claim = (
  { name: usual, low, high, bound }: SourcedBand,
  measure: ShapeMeasure,
  outside: string,
  { name = usual, per = 1 }: ClaimedAs = {},
): ShapeClaim => {
  const claimed: Claimed = Object.assign({ kind: measure.kind, name }, measure);
  if (low !== undefined) claimed.low = low * per;
  if (high !== undefined) claimed.high = high * per;
  if (bound) claimed.bound = true;
  claimed.outside = outside;
  return claimed as ShapeClaim;
};

/** A claim being written. */
type Claimed = ShapeMeasure & { -readonly [Key in keyof Band]?: Band[Key] };

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

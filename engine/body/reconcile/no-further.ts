import { Matrix } from 'ml-matrix';
import { logNormalBelow } from '../../numeric/normal.ts';
import type { MeasurementName } from '../body.ts';
import { factorIn, type HeldLimit } from './held-limits.ts';
import type { LeftOpen } from './left-open.ts';

/** What she may be by one account of the readings, and how likely that is. */
export interface Chance {
  readonly chance: number;
  readonly open: LeftOpen;
}

/** The sizes of what may move, in one order: as they were read, and the usual error of each. */
export interface AsRead {
  readonly names: readonly MeasurementName[];
  readonly values: readonly number[];
  readonly errors: readonly number[];
}

/**
 * No further from her than what was written: so likely at least a set of moves must leave her; judgement. With 0.95 one set in six
 * of women unlike most was left further off, with this one in twenty, nearly all by less than a tenth of a usual error; the mean is a
 * twentieth less near.
 */
const surely = 0.985;

/** Halvings by which the way between two sets of moves is parted. */
const HALVINGS = 12;

/**
 * How much of the way from the least moves that keep the limits to the likeliest ones may be gone, 0 to 1. The least ones, each
 * weighed by its error, lead no further from anybody who keeps the limits, whoever she is (S. Agmon, The relaxation method for
 * linear inequalities, 1954; from memory); the likeliest lead nearer on the average, and further from the few who are unlike
 * most. They are followed as far as it is all but sure that she is no further from them than from what was written.
 */
export function wayToLikeliest(
  least: readonly number[],
  likeliest: readonly number[],
  read: AsRead,
  chances: readonly Chance[],
  limits: readonly HeldLimit[],
): number {
  const isSure = (way: number): boolean => {
    const moves = least.map((move, i) => move + way * ((likeliest[i] ?? 0) - move));
    return chanceOfFurther(moves, read, chances, limits) < 1 - surely;
  };
  if (isSure(1)) return 1;
  let [sure, unsure] = [0, 1];
  for (let i = 0; i < HALVINGS; i++) {
    const way = (sure + unsure) / 2;
    if (isSure(way)) sure = way;
    else unsure = way;
  }
  return sure;
}

/** How likely moves are to leave her further off than what was written does, by all accounts of the readings. */
export const chanceOfFurther = (
  moves: readonly number[],
  read: AsRead,
  chances: readonly Chance[],
  limits: readonly HeldLimit[],
): number =>
  chances.reduce((sum, { chance, open }) => sum + chance * furtherBy(moves, read, open, limits), 0);

/**
 * How likely she is further from what was moved than from what was written, where she keeps the limits: of several the one
 * kept least likely counts.
 */
function furtherBy(
  moves: readonly number[],
  { names, values, errors }: AsRead,
  { names: all, mean, covariance }: LeftOpen,
  limits: readonly HeldLimit[],
): number {
  const weights = moves.map((move, i) => move / (errors[i] ?? 1) ** 2);
  const half = moves.reduce((sum, move, i) => sum + (move * (weights[i] ?? 0)) / 2, 0);
  const along = Matrix.rowVector(all.map((name) => weights[names.indexOf(name)] ?? 0));
  const read = values.reduce((sum, value, i) => sum + value * (weights[i] ?? 0), 0);
  const reached = along.mmul(mean).get(0, 0) - read - half;
  const spread = along.mmul(covariance).mmul(along.transpose()).get(0, 0);
  const slacks = limits.map((limit) => {
    const row = Matrix.rowVector(all.map((name) => factorIn(limit, name)));
    const across = covariance.mmul(row.transpose());
    const deviation = Math.sqrt(row.mmul(across).get(0, 0));
    const from = (limit.least - row.mmul(mean).get(0, 0)) / deviation;
    return { from, shared: along.mmul(across).get(0, 0) / deviation };
  });
  const nearest = slacks.toSorted((a, b) => b.from - a.from)[0] ?? { from: -BEYOND, shared: 0 };
  const rest = Math.sqrt(Math.max(spread - nearest.shared ** 2, Number.MIN_VALUE));
  return meanAbove(nearest.from, (score) => below(-(reached + nearest.shared * score) / rest));
}

const below = (x: number): number => Math.exp(logNormalBelow(x));

/** Beyond so many standard deviations there is nobody. */
const BEYOND = 6;

/** Places at which a mean is taken. */
const PLACES = 64;

/** The mean of a function of a standard normal number, of those above `from`. */
function meanAbove(from: number, of: (score: number) => number): number {
  const start = Math.max(from, -BEYOND);
  // Far out the numbers thin out within 1 / start.
  const end = start + (start > 1 ? BEYOND / start : BEYOND - Math.min(start, 0));
  let [sum, weight] = [0, 0];
  for (let i = 0; i < PLACES; i++) {
    const score = start + ((i + 0.5) * (end - start)) / PLACES;
    const density = Math.exp((start * start - score * score) / 2);
    sum += density * of(score);
    weight += density;
  }
  return sum / weight;
}

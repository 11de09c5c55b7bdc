import { Matrix } from 'ml-matrix';
import { logNormalBelow } from '../../numeric/normal.ts';
import type { MeasurementName } from '../body.ts';
import type { Reading, Readings } from '../population/joint.ts';
import { factorIn } from './held-limits.ts';
import { leftOpen } from './left-open.ts';
import type { Question } from './most-likely.ts';

/** One reading in so many is a blunder, and then its error is so many times the usual; judgement. */
const blunders = { share: 0.05, errors: 5 };

/** More than so many blunders in one set are no longer told apart. */
const mostBlunders = 2;

/** So sure it must be that a reading is a blunder until it is named as misread: more likely than not. */
const misreadFrom = 0.5;

/** So likely one reading must be the blunder, if there is one, to be measured first; and two of them to be named together. */
const firstFrom = 0.6;
const twoFrom = 0.75;

/** A second reading so likely, measured by the first, is worth naming beside it. */
const besides = 1 / 4;

/** Where more than so many others might be to blame as well, none is. */
const mostRivals = 1;

/** Which readings are taken for blunders, and which might be. */
export interface Blunders {
  readonly misread: readonly MeasurementName[];
  /** The likeliest blunder where none is named, and the one of two between which nothing decides. */
  readonly first: readonly MeasurementName[];
  /** What might be the blunder in the stead of the first that is named, nearly as likely. */
  readonly orElse: readonly MeasurementName[];
  /** What may have happened: each with the readings that are blunders then. The chances sum up to 1. */
  readonly accounts: readonly Account[];
}

/** What may have happened to a set of readings, and how likely it is. */
export interface Account {
  readonly chance: number;
  readonly blunders: readonly MeasurementName[];
}

/**
 * Which readings of those that may move are blunders: each reading's error is one of two normal ones, the usual and a wide
 * one (J. W. Tukey, A survey of sampling from contaminated distributions, 1960; from memory), and Bayes' rule weighs, over
 * all that she may be, how likely they make everything that was read. One after the other, each besides those named before.
 */
export function blundersAmong(question: Question, moving: readonly MeasurementName[]): Blunders {
  let misread: readonly MeasurementName[] = [];
  let ranked = chancesOf(question, moving, misread);
  let orElse: readonly MeasurementName[] | undefined;
  let accounts = accountsOf(ranked, misread);
  let [best] = ranked;
  while (best && best.chance > misreadFrom && misread.length < mostBlunders) {
    orElse ??= rivalsOf(ranked);
    misread = [...misread, best.name];
    ranked = chancesOf(
      question,
      moving.filter((name) => !misread.includes(name)),
      misread,
    );
    const here = accounts.at(0);
    accounts = [...accounts.slice(1), ...accountsOf(ranked, misread, here?.chance)];
    [best] = ranked;
  }
  if (orElse) return { misread, first: [], orElse, accounts };

  const any = ranked.reduce((sum, { chance }) => sum + chance, 0);
  const [one, other] = ranked;
  const rivals = rivalsOf(ranked);
  if (one && one.chance > firstFrom * any && rivals.length <= mostRivals)
    return { misread, first: [one.name], orElse: rivals, accounts };
  if (one && other && one.chance + other.chance > twoFrom * any)
    return { misread, first: [one.name, other.name], orElse: [], accounts };
  return { misread, first: [], orElse: [], accounts };
}

/** A reading, and how likely it is that it and no other is a blunder. */
interface Chance {
  readonly name: MeasurementName;
  readonly chance: number;
}

const rivalsOf = ([best, ...others]: readonly Chance[]): readonly MeasurementName[] =>
  others.filter(({ chance }) => chance > besides * (best?.chance ?? 0)).map(({ name }) => name);

/** What may have happened where the `known` readings are blunders, parts of `chance`: another reading is one too, the likeliest first, or none. */
function accountsOf(
  ranked: readonly Chance[],
  known: readonly MeasurementName[],
  chance = 1,
): readonly Account[] {
  const none = 1 - ranked.reduce((sum, each) => sum + each.chance, 0);
  return [
    ...ranked.map((each) => ({ chance: chance * each.chance, blunders: [...known, each.name] })),
    { chance: chance * none, blunders: known },
  ];
}

/** How likely each reading is to be the only blunder besides those known, the likeliest first. */
function chancesOf(
  question: Question,
  names: readonly MeasurementName[],
  known: readonly MeasurementName[],
): readonly Chance[] {
  const odds = blunders.share / (1 - blunders.share);
  const none = evidence(question, known);
  const ratios = names.map((name) => odds * Math.exp(evidence(question, [...known, name]) - none));
  const all = ratios.reduce((sum, ratio) => sum + ratio, 1);
  return names
    .map((name, i) => ({ name, chance: (ratios[i] ?? 0) / all }))
    .toSorted((a, b) => b.chance - a.chance);
}

/**
 * The logarithm of how likely the readings are where those of `wide` are blunders, but for a constant: the density of the
 * readings, times the chance that what they leave of her keeps the limits. Of several limits the one kept least likely
 * counts, for those broken together mean about the same.
 */
function evidence(question: Question, wide: readonly MeasurementName[]): number {
  const { density, names, mean, covariance } = leftOpen({
    ...question,
    readings: withWide(question.readings, wide),
  });
  const kept = question.limits.map((limit) => {
    const row = Matrix.rowVector(names.map((name) => factorIn(limit, name)));
    const beyond = row.mmul(mean).get(0, 0) - limit.least;
    const spread = Math.sqrt(row.mmul(covariance).mmul(row.transpose()).get(0, 0));
    return logNormalBelow(beyond / spread);
  });
  return density + Math.min(0, ...kept);
}

/** The readings with the wide error of blunders where they are such. */
export const withWide = (readings: Readings, wide: readonly MeasurementName[]): Readings =>
  new Map(
    [...readings].map(([name, { value, error }]): readonly [MeasurementName, Reading] => [
      name,
      { value, error: wide.includes(name) ? blunders.errors * error : error },
    ]),
  );

import { CholeskyDecomposition, Matrix } from 'ml-matrix';
import { logNormalBelow } from '../../numeric/normal.ts';
import type { MeasurementName } from '../body.ts';
import type { Reading, Readings } from '../population/joint.ts';
import type { HeldLimit } from './held-limits.ts';
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
  let [best] = ranked;
  while (best && best.chance > misreadFrom && misread.length < mostBlunders) {
    orElse ??= rivalsOf(ranked);
    misread = [...misread, best.name];
    ranked = chancesOf(
      question,
      moving.filter((name) => !misread.includes(name)),
      misread,
    );
    [best] = ranked;
  }
  if (orElse) return { misread, first: [], orElse };

  const any = ranked.reduce((sum, { chance }) => sum + chance, 0);
  const [one, other] = ranked;
  const rivals = rivalsOf(ranked);
  if (one && one.chance > firstFrom * any && rivals.length <= mostRivals)
    return { misread, first: [one.name], orElse: rivals };
  if (one && other && one.chance + other.chance > twoFrom * any)
    return { misread, first: [one.name, other.name], orElse: [] };
  return { misread, first: [], orElse: [] };
}

/** A reading, and how likely it is that it and no other is a blunder. */
interface Chance {
  readonly name: MeasurementName;
  readonly chance: number;
}

const rivalsOf = ([best, ...others]: readonly Chance[]): readonly MeasurementName[] =>
  others.filter(({ chance }) => chance > besides * (best?.chance ?? 0)).map(({ name }) => name);

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
  const { density, names, mean, covariance } = leftOpen(question, wide);
  const kept = question.limits.map((limit) => {
    const row = Matrix.rowVector(names.map((name) => factorOf(limit, name)));
    const beyond = row.mmul(mean).get(0, 0) - limit.least;
    const spread = Math.sqrt(row.mmul(covariance).mmul(row.transpose()).get(0, 0));
    return logNormalBelow(beyond / spread);
  });
  return density + Math.min(0, ...kept);
}

const factorOf = ({ terms }: HeldLimit, name: MeasurementName): number =>
  terms.reduce((sum, [each, factor]) => sum + (each === name ? factor : 0), 0);

interface LeftOpen {
  readonly density: number;
  readonly names: readonly MeasurementName[];
  readonly mean: Matrix;
  readonly covariance: Matrix;
}

/**
 * What the readings leave open about her, and the logarithm of their density (T. W. Anderson, An Introduction to
 * Multivariate Statistical Analysis, 1958, theorem 2.5.1). Where the survey met nobody like her, any size is as likely.
 */
function leftOpen(question: Question, wide: readonly MeasurementName[]): LeftOpen {
  const { women } = question;
  const readings = withWide(question.readings, wide);
  const valuesOf = (names: readonly MeasurementName[]): Matrix =>
    Matrix.columnVector(names.map((name) => readings.get(name)?.value ?? 0));
  const errorsOf = (names: readonly MeasurementName[]): Matrix =>
    Matrix.diag(names.map((name) => (readings.get(name)?.error ?? 0) ** 2));
  if (!women) {
    const names = [...readings.keys()];
    return { density: 0, names, mean: valuesOf(names), covariance: errorsOf(names) };
  }
  const names = women.names.filter((name) => readings.has(name));
  const places = names.map((name) => women.names.indexOf(name));
  const usual = Matrix.columnVector(places.map((place) => women.mean[place] ?? 0));
  const variety = new Matrix(places.map((a) => places.map((b) => women.covariance[a]?.[b] ?? 0)));
  const read = Matrix.add(variety, errorsOf(names));
  const off = valuesOf(names).sub(usual);
  const triangle = new CholeskyDecomposition(read);
  const weighed = triangle.solve(off);
  const logDeterminant =
    2 * triangle.lowerTriangularMatrix.diagonal().reduce((sum, d) => sum + Math.log(d), 0);
  return {
    density: -(logDeterminant + off.transpose().mmul(weighed).get(0, 0)) / 2,
    names,
    mean: Matrix.add(usual, variety.mmul(weighed)),
    covariance: Matrix.sub(variety, variety.mmul(triangle.solve(variety))),
  };
}

/** The readings with the wide error of blunders where they are such. */
export const withWide = (readings: Readings, wide: readonly MeasurementName[]): Readings =>
  new Map(
    [...readings].map(([name, { value, error }]): readonly [MeasurementName, Reading] => [
      name,
      { value, error: wide.includes(name) ? blunders.errors * error : error },
    ]),
  );

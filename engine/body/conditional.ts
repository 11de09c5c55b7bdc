import { factor, solveLower, solveUpper, triangle } from '../numeric/cholesky.ts';
import { correlationOf, type SurveyDimension, statisticsOf } from './survey.ts';

/** A survey dimension whose value is known for one woman, mm. */
export interface KnownDimension {
  readonly value: number;
  /** One standard deviation of what the value says wrong about the dimension, whose error is its own. */
  readonly noise?: number;
  /** One standard deviation of an earlier estimate that is used here as if it were known. */
  readonly spread?: number;
}

export type KnownDimensions = ReadonlyMap<SurveyDimension, KnownDimension>;

/** A sum of survey dimensions, each times its factor: `[['backNeckPointHeight', 1], ['axillaHeight', -1]]`. */
export type Combination = readonly (readonly [SurveyDimension, number])[];

export interface Expected {
  readonly mean: number;
  /** One standard deviation of the women who share the known values. */
  readonly spread: number;
}

/**
 * What the survey expects of a woman of whom some dimensions are known: the conditional mean and standard
 * deviation of the multivariate normal distribution, mu + S12 S22^-1 (x - mu) and S11 - S12 S22^-1 S21 (T. W.
 * Anderson, An Introduction to Multivariate Statistical Analysis, 1958, theorem 2.5.1). Continuous in the values.
 * Outside the survey the mean is held back, and by how much is added to the spread.
 */
export function expectation(known: KnownDimensions): (combination: Combination) => Expected {
  const dimensions = [...known.keys()];
  const count = dimensions.length;
  const spreads = new Float64Array(count);
  const scores = new Float64Array(count);
  const limited = new Float64Array(count);
  const lower = triangle(count);
  for (let i = 0; i < count; i++) {
    const dimension = dimensions[i] as SurveyDimension;
    const { value, noise = 0, spread = 0 } = known.get(dimension) as KnownDimension;
    const { sd } = statisticsOf(dimension);
    spreads[i] = spread / sd;
    scores[i] = scoreOf(dimension, value);
    limited[i] = limitedScore(scores[i] as number);
    for (let j = 0; j < i; j++)
      lower.entries[i * count + j] = correlationOf(dimension, dimensions[j] as SurveyDimension);
    lower.entries[i * count + i] = 1 + (noise / sd) ** 2;
  }
  factor(lower);

  return (combination) => {
    let [average, variance] = [0, 0];
    for (const [dimension, share] of combination) {
      const { mean, sd } = statisticsOf(dimension);
      average += share * mean;
      variance += share * sd * covariance(combination, dimension);
    }
    const withKnown = Float64Array.from(dimensions, (dimension) => covariance(combination, dimension));
    const weights = withKnown.slice();
    solveLower(lower, weights);
    solveUpper(lower, weights);
    const sd = Math.sqrt(variance);
    const shift = sd * limitedScore(product(weights, limited) / sd);
    const heldBack = product(weights, scores) - shift;
    let borrowed = 0;
    for (let i = 0; i < count; i++) borrowed += ((weights[i] as number) * (spreads[i] as number)) ** 2;
    const unexplained = Math.max(0, variance - product(weights, withKnown));
    return { mean: average + shift, spread: Math.sqrt(unexplained + borrowed + heldBack ** 2) };
  };
}

/** How many standard deviations a value lies above the survey's mean. */
function scoreOf(dimension: SurveyDimension, value: number): number {
  const { mean, sd } = statisticsOf(dimension);
  return (value - mean) / sd;
}

/** Covariance of a combination with another dimension's score, mm. */
function covariance(combination: Combination, other: SurveyDimension): number {
  let sum = 0;
  for (const [dimension, factor] of combination)
    sum += factor * statisticsOf(dimension).sd * correlationOf(dimension, other);
  return sum;
}

/** Beyond this many standard deviations the survey met nobody, and a straight line is taken on trust. */
const trusted = 3;

/**
 * A score as it is, up to what the survey covers; further out it counts for less and less, and never for more
 * than twice that. Smooth, so that an estimate never jumps.
 */
function limitedScore(score: number): number {
  const beyond = Math.abs(score) - trusted;
  if (beyond <= 0) return score;
  return Math.sign(score) * (trusted + beyond / (1 + beyond / trusted));
}

function product(a: Float64Array, b: Float64Array): number {
  let sum = 0;
  for (let i = 0; i < a.length; i++) sum += (a[i] as number) * (b[i] as number);
  return sum;
}

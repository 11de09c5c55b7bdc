import { CholeskyDecomposition, Matrix } from 'ml-matrix';
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
 */
export function expectation(known: KnownDimensions): (combination: Combination) => Expected {
  const dimensions = [...known].map(([dimension, { value, noise = 0, spread = 0 }]) => {
    const { mean, sd } = statisticsOf(dimension);
    return { dimension, score: limitedScore((value - mean) / sd), noise: noise / sd, spread: spread / sd };
  });
  const between = dimensions.map((a) =>
    dimensions.map((b) => correlationOf(a.dimension, b.dimension) + (a === b ? a.noise ** 2 : 0)),
  );
  const knownPart = dimensions.length > 0 ? new CholeskyDecomposition(new Matrix(between)) : undefined;

  return (combination) => {
    const parts = combination.map(([dimension, factor]) => {
      const { mean, sd } = statisticsOf(dimension);
      return { dimension, mean: factor * mean, sd: factor * sd };
    });
    const covariance = (other: SurveyDimension): number =>
      sum(parts.map((part) => part.sd * correlationOf(part.dimension, other)));
    const variance = sum(parts.map((part) => part.sd * covariance(part.dimension)));
    const withKnown = dimensions.map(({ dimension }) => covariance(dimension));
    const weights = knownPart ? knownPart.solve(Matrix.columnVector(withKnown)).to1DArray() : [];
    const weighted = dimensions.map((d, i) => ({ ...d, weight: weights[i] ?? 0, with: withKnown[i] ?? 0 }));
    const explained = sum(weighted.map((d) => d.weight * d.with));
    const borrowed = sum(weighted.map((d) => (d.weight * d.spread) ** 2));
    const sd = Math.sqrt(variance);
    return {
      mean:
        sum(parts.map((part) => part.mean)) +
        sd * limitedScore(sum(weighted.map((d) => d.weight * d.score)) / sd),
      spread: Math.sqrt(Math.max(0, variance - explained) + borrowed),
    };
  };
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

const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0);

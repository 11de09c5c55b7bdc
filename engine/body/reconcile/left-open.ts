import { CholeskyDecomposition, Matrix } from 'ml-matrix';
import type { MeasurementName } from '../body.ts';
import type { Question } from './most-likely.ts';

/** What is known of her: sizes as one normal distribution, mm. */
export interface LeftOpen {
  /** The logarithm of the density of the readings. */
  readonly density: number;
  readonly names: readonly MeasurementName[];
  readonly mean: Matrix;
  readonly covariance: Matrix;
}

/**
 * What the readings leave open about her, and the logarithm of their density (T. W. Anderson, An Introduction to
 * Multivariate Statistical Analysis, 1958, theorem 2.5.1). Where the survey met nobody like her, any size is as likely.
 */
export function leftOpen({ women, readings }: Pick<Question, 'women' | 'readings'>): LeftOpen {
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

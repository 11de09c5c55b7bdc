import { CholeskyDecomposition, Matrix } from 'ml-matrix';
import type { MeasurementName } from '../body.ts';

/** What is known of several measurements together: a multivariate normal distribution, mm. */
export interface JointDistribution {
  readonly names: readonly MeasurementName[];
  readonly mean: readonly number[];
  /** Variances and covariances, mm squared, in the order of the names. */
  readonly covariance: readonly (readonly number[])[];
}

/** A measurement as it was read off a tape: one standard deviation of the reading's error, mm. */
export interface Reading {
  readonly value: number;
  readonly error: number;
}

export type Readings = ReadonlyMap<MeasurementName, Reading>;

/**
 * What the readings of some measurements leave open about others: the conditional normal distribution, with the errors
 * of the readings added to their variances (T. W. Anderson, An Introduction to Multivariate Statistical Analysis, 1958,
 * theorem 2.5.1).
 */
export function conditioned(
  joint: JointDistribution,
  readings: Readings,
  names: readonly MeasurementName[],
): JointDistribution {
  const place = (name: MeasurementName): number => joint.names.indexOf(name);
  const between = (a: MeasurementName, b: MeasurementName): number =>
    joint.covariance[place(a)]?.[place(b)] ?? 0;
  const known = [...readings].filter(([name]) => place(name) >= 0 && !names.includes(name));
  const prior = new Matrix(names.map((a) => names.map((b) => between(a, b))));
  const mean = names.map((name) => joint.mean[place(name)] ?? 0);
  if (known.length === 0) return { names, mean, covariance: prior.to2DArray() };
  const across = new Matrix(names.map((a) => known.map(([b]) => between(a, b))));
  const within = new Matrix(
    known.map(([a, { error }], i) => known.map(([b], j) => between(a, b) + (i === j ? error * error : 0))),
  );
  const off = Matrix.columnVector(known.map(([name, { value }]) => value - (joint.mean[place(name)] ?? 0)));
  const triangle = new CholeskyDecomposition(within);
  const shift = across.mmul(triangle.solve(off)).getColumn(0);
  const explained = across.mmul(triangle.solve(across.transpose()));
  return {
    names,
    mean: mean.map((value, i) => value + (shift[i] ?? 0)),
    covariance: prior.sub(explained).to2DArray(),
  };
}

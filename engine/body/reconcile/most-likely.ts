import { inverse, Matrix } from 'ml-matrix';
import { COINCIDENCE } from '../../geometry/tolerance.ts';
import { factor, triangle } from '../../numeric/cholesky.ts';
import { type LinearRows, QuadraticProgram } from '../../numeric/quadratic-program.ts';
import type { MeasurementName } from '../body.ts';
import { conditioned, type JointDistribution, type Readings } from '../population/joint.ts';
import type { HeldLimit } from './held-limits.ts';

/** What was read off the tape, what is known of such women, and what must hold; lengths in mm. */
export interface Question {
  readonly readings: Readings;
  /** Nothing where the survey met nobody like her: then the readings alone are weighed. */
  readonly women: JointDistribution | undefined;
  readonly limits: readonly HeldLimit[];
  /** A moved measurement is rounded to this; the limits are kept so much further off, mm. */
  readonly step: number;
}

/** The most likely sizes of what may move, and how unlikely they are: minus twice the logarithm, but for a constant. */
export interface MostLikely {
  readonly sizes: ReadonlyMap<MeasurementName, number>;
  readonly cost: number;
}

/**
 * The most likely sizes behind the readings, where only `moving` may be other than it was read: the mode of what such
 * women measure, as the other readings leave it, times what the tape's errors leave of it, within the limits. Both are
 * normal, so this is one quadratic program; its unknowns are the moves, each in its own error. Nothing where the limits
 * cannot hold.
 */
export function mostLikely(question: Question, moving: readonly MeasurementName[]): MostLikely | undefined {
  const { readings, limits, step } = question;
  const n = moving.length;
  const read = moving.map((name) => readings.get(name)?.value ?? 0);
  const errors = moving.map((name) => readings.get(name)?.error ?? 1);
  const { weight, off } = priorOf(question, moving, read);
  const at = (i: number, j: number): number => (weight[i]?.[j] ?? 0) * (errors[i] ?? 1) * (errors[j] ?? 1);

  const hessian = new Float64Array(n * n);
  const gradient = new Float64Array(n);
  for (let i = 0; i < n; i++)
    for (let j = 0; j < n; j++) {
      hessian[i * n + j] = at(i, j) + (i === j ? 1 : 0);
      gradient[i] = (gradient[i] ?? 0) + (errors[i] ?? 1) * (weight[i]?.[j] ?? 0) * (off[j] ?? 0);
    }
  const lower = triangle(n, hessian);
  const program = new QuadraticProgram(n);
  if (!factor(lower) || !program.solve(lower, gradient, noRows, rowsOf(limits, readings, moving, step)))
    return undefined;

  const moves = Array.from(program.step, (move, i) => move * (errors[i] ?? 1));
  const fromMean = moves.map((move, i) => move + (off[i] ?? 0));
  const misread = moves.reduce((sum, move, i) => sum + (move / (errors[i] ?? 1)) ** 2, 0);
  const unlike = fromMean.reduce(
    (sum, a, i) => sum + a * fromMean.reduce((row, b, j) => row + (weight[i]?.[j] ?? 0) * b, 0),
    0,
  );
  return {
    sizes: new Map(moving.map((name, i) => [name, (read[i] ?? 0) + (moves[i] ?? 0)])),
    cost: misread + unlike,
  };
}

const noRows: LinearRows = {
  count: 0,
  rows: new Float64Array(0),
  columns: [],
  values: new Float64Array(0),
};

/** The inverse covariance of what may move, as the other readings leave it, and how far it was read from its mean. */
function priorOf(
  { readings, women }: Question,
  moving: readonly MeasurementName[],
  read: readonly number[],
): { readonly weight: readonly (readonly number[])[]; readonly off: readonly number[] } {
  if (!women) return { weight: [], off: [] };
  const { mean, covariance } = conditioned(women, readings, moving);
  return {
    weight: inverse(new Matrix(covariance.map((row) => [...row]))).to2DArray(),
    off: read.map((value, i) => value - (mean[i] ?? 0)),
  };
}

/**
 * The limits on the moves in errors; what stays is taken as it was read. A limit that nothing movable has a part in can
 * only be found to hold or not.
 */
function rowsOf(
  limits: readonly HeldLimit[],
  readings: Readings,
  moving: readonly MeasurementName[],
  step: number,
): LinearRows {
  const n = moving.length;
  const rows = new Float64Array(limits.length * n);
  const values = new Float64Array(limits.length);
  for (const [i, { terms, least, beyond }] of limits.entries()) {
    const own = terms.filter(([name]) => moving.includes(name));
    for (const [name, share] of own) {
      const k = i * n + moving.indexOf(name);
      rows[k] = (rows[k] ?? 0) + share * (readings.get(name)?.error ?? 1);
    }
    const read = terms.reduce((sum, [name, share]) => sum + share * (readings.get(name)?.value ?? 0), 0);
    const rounding = own.reduce((sum, [, share]) => sum + Math.abs(share) * (step / 2), 0);
    values[i] = least - read + (own.length > 0 ? beyond + rounding : -COINCIDENCE);
  }
  const columns = limits.map((_, i) => moving.map((__, k) => k).filter((k) => rows[i * n + k] !== 0));
  return { count: limits.length, rows, columns, values };
}

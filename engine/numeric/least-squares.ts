import { factor, solveLower, solveUpper, triangle } from './cholesky.ts';

/** A sum of squares to be made small. */
export interface LeastSquares {
  readonly start: Float64Array;
  /** The step by which each unknown is moved to see what it does, and the unit it is measured in. */
  readonly scale: Float64Array;
  readonly least: Float64Array;
  readonly most: Float64Array;
  readonly residuals: number;
  /** Writes the residuals at `unknowns` into `into`. */
  readonly evaluate: (unknowns: Float64Array, into: Float64Array) => void;
}

export interface LeastSquaresAnswer {
  readonly unknowns: Float64Array;
  /** Sum of the squares left. */
  readonly sum: number;
  readonly steps: number;
  /** Whether the last step gained less than one part in ten thousand. */
  readonly settled: boolean;
}

/** An unknown is moved by this part of its scale to find its derivatives. */
const TRIAL = 1e-4;
const GAIN = 1e-4;

/** The first damping, and the least: none at all would let a step go where nothing holds it. */
const FIRST_DAMPING = 1e-3;
const LEAST_DAMPING = 1e-9;

/** A sum that shrinks by less gains nothing, however small it is. */
const NOTHING = 1e-9;

/**
 * Least squares between limits by the Gauss-Newton method with Levenberg's and Marquardt's damping (D. W. Marquardt, 1963).
 * Derivatives are found by differences forward, and carried on from step to step by Broyden's update (C. G. Broyden, 1965)
 * as long as that serves. An unknown that meets a limit and is pushed against it stays there for that step.
 */
export function leastSquares(problem: LeastSquares, mostSteps: number): LeastSquaresAnswer {
  const { start, scale, least, most, residuals, evaluate } = problem;
  const n = start.length;
  let unknowns: Float64Array = start.slice();
  let now: Float64Array = new Float64Array(residuals);
  let tried: Float64Array = new Float64Array(residuals);
  const jacobian = new Float64Array(n * residuals);
  evaluate(unknowns, now);
  let sum = squares(now);
  let damping = FIRST_DAMPING;
  let steps = 0;
  let settled = false;
  let fresh = false;
  let stale = true;
  while (steps < mostSteps && !settled) {
    steps++;
    if (stale) differences(unknowns, now);
    fresh = stale;
    const gradient = new Float64Array(n);
    const normal = new Float64Array(n * n);
    for (let i = 0; i < n; i++) {
      gradient[i] = dot(i, now);
      for (let j = 0; j <= i; j++) normal[i * n + j] = product(i, j);
    }
    let better = false;
    stale = false;
    while (!better && damping < 1e8 && !stale) {
      const next = stepped(gradient, normal);
      evaluate(next, tried);
      const then = squares(tried);
      if (then < sum) {
        // A step that gains little may be the fault of derivatives that are not of here.
        const little = sum - then < GAIN * sum + NOTHING;
        settled = little && fresh;
        stale = then > 0.25 * sum;
        if (!stale) carryOn(next);
        [now, tried] = [tried, now];
        unknowns = next;
        sum = then;
        damping = Math.max(damping / 10, LEAST_DAMPING);
        better = true;
      } else if (!fresh) stale = true;
      else damping *= 8;
    }
    if (!better && !stale) settled = true;
  }
  return { unknowns, sum, steps, settled };

  /** Broyden's update: the derivatives that explain the step just taken and differ least from those before. */
  function carryOn(next: Float64Array): void {
    const step = next.map((value, i) => (value - (unknowns[i] as number)) / (scale[i] as number));
    const length = step.reduce((total, value) => total + value * value, 0);
    if (length === 0) return;
    for (let r = 0; r < residuals; r++) {
      let foretold = 0;
      for (let i = 0; i < n; i++) foretold += (jacobian[i * residuals + r] as number) * (step[i] as number);
      const missed = ((tried[r] as number) - (now[r] as number) - foretold) / length;
      for (let i = 0; i < n; i++)
        jacobian[i * residuals + r] = (jacobian[i * residuals + r] as number) + missed * (step[i] as number);
    }
  }

  function differences(from: Float64Array, base: Float64Array): void {
    const moved = from.slice();
    for (let i = 0; i < n; i++) {
      const by = TRIAL * (scale[i] as number);
      const up = (from[i] as number) + by <= (most[i] as number) ? by : -by;
      moved[i] = (from[i] as number) + up;
      evaluate(moved, tried);
      moved[i] = from[i] as number;
      const per = (scale[i] as number) / up;
      for (let r = 0; r < residuals; r++)
        jacobian[i * residuals + r] = ((tried[r] as number) - (base[r] as number)) * per;
    }
  }

  /** The unknowns after a damped step in units of their scales; those held at a limit are left out. */
  function stepped(gradient: Float64Array, normal: Float64Array): Float64Array {
    const held = gradient.map((slope, i) => {
      const value = unknowns[i] as number;
      return (slope > 0 && value <= (least[i] as number)) || (slope < 0 && value >= (most[i] as number))
        ? 1
        : 0;
    });
    const matrix = triangle(n);
    const step = new Float64Array(n);
    for (let i = 0; i < n; i++) {
      for (let j = 0; j < i; j++)
        matrix.entries[i * n + j] = held[i] || held[j] ? 0 : (normal[i * n + j] as number);
      const diagonal = normal[i * n + i] as number;
      matrix.entries[i * n + i] = held[i] ? 1 : diagonal * (1 + damping) + 1e-12;
      step[i] = held[i] ? 0 : -(gradient[i] as number);
    }
    if (factor(matrix)) {
      solveLower(matrix, step);
      solveUpper(matrix, step);
    } else step.fill(0);
    return unknowns.map((value, i) =>
      Math.min(
        Math.max(value + (step[i] as number) * (scale[i] as number), least[i] as number),
        most[i] as number,
      ),
    );
  }

  function dot(i: number, with_: Float64Array): number {
    let total = 0;
    for (let r = 0; r < residuals; r++)
      total += (jacobian[i * residuals + r] as number) * (with_[r] as number);
    return total;
  }

  function product(i: number, j: number): number {
    let total = 0;
    for (let r = 0; r < residuals; r++)
      total += (jacobian[i * residuals + r] as number) * (jacobian[j * residuals + r] as number);
    return total;
  }
}

function squares(values: Float64Array): number {
  let total = 0;
  for (const value of values) total += value * value;
  return total;
}

import { withoutReasons } from './only-whether.ts';
import type { Sketch } from './sketch.ts';
import type { Solution } from './solution.ts';
import { type Solver, solve } from './solve.ts';

/** A sketch and what came of it. */
export interface Attempt {
  readonly sketch: Sketch;
  readonly solution: Solution;
}

/**
 * A solver that tells only whether a sketch can be solved, as `onlyWhether` does, and keeps every sketch with its whole
 * answer: so that the reasons can be looked for afterwards without drawing anything again. It solves by the one it is given.
 */
export function noted(solverOf: Solver = solve): {
  readonly solver: Solver;
  readonly attempts: readonly Attempt[];
} {
  const attempts: Attempt[] = [];
  const solver: Solver = (sketch) => {
    const solution = solverOf(sketch);
    attempts.push({ sketch, solution });
    return withoutReasons(solution);
  };
  return { solver, attempts };
}

/** The steps that attempts took, all together. */
export const stepsOf = (attempts: readonly Attempt[]): number =>
  attempts.reduce((sum, { solution }) => sum + solution.iterations, 0);

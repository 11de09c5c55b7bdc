import type { Solution } from './solution.ts';
import { type Solver, solve } from './solve.ts';

/**
 * Solves a sketch to learn only whether that can be done. Where it cannot, the answer has no residuals, and so there is
 * nothing from which to look for reasons, which takes much longer than the attempt.
 */
export const onlyWhether: Solver = (sketch) => withoutReasons(solve(sketch));

/** A solution that still says whether its sketch was solved, and nothing from which reasons could be found. */
export const withoutReasons = (solution: Solution): Solution =>
  solution.status === 'solved' ? solution : { ...solution, residuals: [] };

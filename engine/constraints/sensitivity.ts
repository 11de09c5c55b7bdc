import { compiled } from './compile/program.ts';
import { boundMisses, missesOf } from './compile/residuals.ts';
import { solutionAt, valuesOf } from './compile/values.ts';
import { Model } from './method/model.ts';
import { takeNewtonStep } from './method/newton-step.ts';
import type { Sketch } from './sketch.ts';
import type { Solution } from './solution.ts';
import { solve } from './solve.ts';

/**
 * The solution of a sketch that differs a little from one already solved, to first order in the difference: the
 * solution that is given moves as the implicit function theorem says, by one linear system with the matrix of the
 * conditions that hold at it (A. V. Fiacco, Introduction to Sensitivity and Stability Analysis in Nonlinear
 * Programming, 1983, theorem 3.2.2; from memory). Where a bound or an inequality is just about to hold or to let go,
 * it is followed to its own side.
 *
 * Everything that may differ is taken from the new sketch: values, bounds, first guesses, fixed points. The error is
 * of second order; relations are missed by as much, and `residuals` tells it. So differences of two such answers, by
 * a change small enough, are the derivatives of the solution.
 *
 * Answers as `solve` does where the solution cannot be followed. Throws as `solve` does.
 */
export function follow(sketch: Sketch, from: Solution): Solution {
  const ready = compiled(sketch);
  const { slots } = ready;
  const x = valuesOf(slots, from);
  for (let slot = 0; slot < x.length; slot++)
    if (slots.free[slot] !== 1) x[slot] = slots.guess[slot] as number;
  for (const part of ready.parts) if (!takeNewtonStep(new Model(part, slots.guess), x)) return solve(sketch);
  const residuals = [...missesOf(ready.relations, x), ...boundMisses(slots, x)];
  return solutionAt(slots, x, { status: from.status, residuals, iterations: ready.parts.length });
}

import { RELATION } from '../geometry/tolerance.ts';
import type { Bound } from './compile/parts.ts';
import { type Compiled, compiled } from './compile/program.ts';
import { boundMisses, holds, missesOf } from './compile/residuals.ts';
import { solutionAt } from './compile/values.ts';
import { makeMissesLeast } from './method/least-misses.ts';
import { Model } from './method/model.ts';
import { AIM, solveBySequentialPrograms } from './method/sequential-programs.ts';
import type { Sketch } from './sketch.ts';
import type { Solution } from './solution.ts';

/** What finds the places in a sketch. */
export type Solver = (sketch: Sketch) => Solution;

/**
 * Solves a sketch: finds the points and scalars for which every relation holds to 1e-6 mm and 1e-8 rad, and among
 * those the ones that fulfil the wishes best, near the first guesses. What the relations and wishes leave open
 * stays where it was guessed. The same sketch gives the same answer to the last bit.
 *
 * Where the relations contradict each other the answer is the compromise that misses them least (sum of squares),
 * and `diagnose` tells which they are.
 *
 * Throws an Error for a mistake in the sketch itself: a name that nothing bears, a number that is not finite.
 */
export const solve = (sketch: Sketch): Solution => solved(compiled(sketch));

/** The answer that is found from the first guesses. */
function solved(ready: Compiled): Solution {
  const x = ready.slots.guess.slice();
  let iterations = 0;
  let stalled = false;
  for (const part of ready.parts) {
    const outcome = solvePart(new Model(part, ready.slots.guess), x);
    for (const bound of part.bounds) keepWithin(bound, x);
    iterations += outcome.steps;
    stalled ||= outcome.stalled;
  }
  const residuals = [...missesOf(ready.relations, x), ...boundMisses(ready.slots, x)];
  const status = residuals.every(holds) ? 'solved' : stalled ? 'stalled' : 'conflict';
  return solutionAt(ready.slots, x, { status, residuals, iterations });
}

/** Solves one part. Where the first attempt sticks, the relations alone are brought to hold before another. */
function solvePart(model: Model, x: Float64Array): { readonly steps: number; readonly stalled: boolean } {
  const first = solveBySequentialPrograms(model, x);
  if (first.held) return { steps: first.steps, stalled: false };
  const relaxed = makeMissesLeast(model, x);
  if (model.worst > RELATION) return { steps: first.steps + relaxed.steps, stalled: !relaxed.settled };
  const held = Float64Array.from(x);
  const again = solveBySequentialPrograms(model, x);
  if (!again.held) x.set(held);
  return { steps: first.steps + relaxed.steps + again.steps, stalled: false };
}

/** Takes the rounding off a scalar that came to rest on its bound. */
function keepWithin({ slot, limit, side }: Bound, x: Float64Array): void {
  const excess = side * (limit - (x[slot] as number));
  if (excess > 0 && excess < AIM) x[slot] = limit;
}

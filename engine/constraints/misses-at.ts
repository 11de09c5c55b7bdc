import { compiled } from './compile/program.ts';
import { boundMisses, missesOf } from './compile/residuals.ts';
import { valuesOf } from './compile/values.ts';
import type { Sketch } from './sketch.ts';
import type { Residual, Solution } from './solution.ts';

/**
 * How far the relations and bounds of a sketch are from holding where the solution of a similar one lies. Nothing is
 * solved: what is fixed takes its place from the sketch, all else from the solution. At a compromise that misses least,
 * the change of the least sum of squares by anything the sketch depends on is the change of this sum (envelope theorem).
 */
export function missesAt(sketch: Sketch, solution: Solution): readonly Residual[] {
  const { slots, relations } = compiled(sketch);
  const x = valuesOf(slots, solution);
  for (let slot = 0; slot < x.length; slot++)
    if (slots.free[slot] !== 1) x[slot] = slots.guess[slot] as number;
  return [...missesOf(relations, x), ...boundMisses(slots, x)];
}

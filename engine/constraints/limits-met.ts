import { RELATION } from '../geometry/tolerance.ts';
import { SCALE } from './compile/equations.ts';
import { compiled } from './compile/program.ts';
import { boundsName, leastResidual } from './compile/residuals.ts';
import { valuesOf } from './compile/values.ts';
import type { Sketch } from './sketch.ts';
import type { Solution } from './solution.ts';

/** What is nearer to its limit than this rests on it, mm at arm's length. */
const RESTS = 100 * RELATION;

/**
 * The inequalities and bounds of a sketch on which its solution rests, by the names that residuals give them: what would
 * go on if it were let. What is fixed rests on nothing.
 */
export function limitsMet(sketch: Sketch, solution: Solution): readonly string[] {
  const { slots, relations } = compiled(sketch);
  const x = valuesOf(slots, solution);
  const met = relations
    .filter(
      (equations) =>
        equations.goal === 'not negative' && leastResidual(equations, x) * SCALE[equations.unit] <= RESTS,
    )
    .map(({ name }) => name);
  const bounds = Array.from(slots.scalars).flatMap(([name, slot]) => {
    const scale = SCALE[slots.angle[slot] === 1 ? 'rad' : 'mm'];
    const value = x[slot] as number;
    const room = Math.min(value - (slots.min[slot] as number), (slots.max[slot] as number) - value);
    return slots.free[slot] === 1 && room * scale <= RESTS ? [boundsName(name)] : [];
  });
  return [...met, ...bounds];
}

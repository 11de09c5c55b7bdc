import { RELATION } from '../geometry/tolerance.ts';
import { SCALE } from './compile/equations.ts';
import { partsOf } from './compile/parts.ts';
import { type Compiled, compiled, settledRelations } from './compile/program.ts';
import { boundMisses, boundsName, holds, missesOf } from './compile/residuals.ts';
import { valuesOf } from './compile/values.ts';
import { HARDLY_WHETHER, makeMissesLeast } from './method/least-misses.ts';
import { Model } from './method/model.ts';
import type { Sketch } from './sketch.ts';
import type { Residual, Solution } from './solution.ts';

/**
 * Steps that a refusal may take to look for what excludes each other: about as long as a trial bodice takes. The set is then
 * often not the smallest: 51 of them, found in 350 steps, held 534 relations, and 438 where nothing ended the search.
 */
export const REFUSAL_STEPS = 300;

/**
 * A smallest set of relations and bounds that cannot all hold: without any one of them the others can. Found by the
 * deletion filter (Chinneck & Dravnieks, 1991): each is left out in turn, and stays out where the rest still cannot
 * hold. What then does not miss where the misses are least exerts no force there, so it is left out with it, as in their
 * sensitivity filter, if what is left cannot hold by itself either. Whether a set can hold is judged by a search from the solution
 * and from the first guesses, so the answer is about these neighbourhoods. No set is begun on after `mostSteps` of these
 * searches: then what is left cannot hold, but may not be the smallest such set.
 */
export function smallestConflict(
  sketch: Sketch,
  solution: Solution,
  mostSteps = Infinity,
): readonly string[] {
  const whole = compiled({ ...sketch, wishes: [] });
  const { guess } = whole.slots;
  const found = valuesOf(whole.slots, solution);
  let steps = 0;
  const missed = (some: Compiled, from: Float64Array): ReadonlySet<string> | undefined => {
    const least = leastMisses(some, from.slice());
    steps += least.steps;
    return least.names;
  };
  const missing = (names: ReadonlySet<string>): ReadonlySet<string> | undefined => {
    if (steps >= mostSteps) return undefined;
    const some = onlyWith(whole, names);
    return missed(some, found) && missed(some, guess);
  };
  const needed: string[] = [];
  const smaller = (names: ReadonlySet<string>, left: ReadonlySet<string>): ReadonlySet<string> =>
    left.size < names.size && needed.every((name) => left.has(name)) && missing(left) ? left : names;
  const conflicting = (): ReadonlySet<string> | undefined => {
    // What misses most is likeliest to be of it, and sets that can hold are quickly found to.
    const worst = solution.residuals.filter((residual) => !holds(residual)).toSorted(byMiss);
    for (let size = FEWEST; size < 2 * worst.length; size *= 2) {
      const some = namesOf(worst.slice(0, size));
      const left = missing(some);
      if (left) return smaller(some, left);
    }
    const all = namesOf(solution.residuals);
    const left = missing(all);
    return left && smaller(all, left);
  };
  let members = conflicting();
  if (!members) return [];
  for (const name of [...members].reverse()) {
    if (!members.has(name)) continue;
    const without = new Set(members);
    without.delete(name);
    const left = missing(without);
    if (left) members = smaller(without, left);
    else needed.push(name);
  }
  const smallest = members;
  return [...namesOf(solution.residuals)].filter((name) => smallest.has(name));
}

/** Two are the fewest that exclude each other, but for one that cannot be had at all. */
const FEWEST = 2;

/** The greatest miss first, each by what is still taken for holding. */
const byMiss = (one: Residual, other: Residual): number =>
  Math.abs(other.error) * SCALE[other.unit] - Math.abs(one.error) * SCALE[one.unit];

const namesOf = (residuals: readonly Residual[]): ReadonlySet<string> =>
  new Set(residuals.map(({ relation }) => relation));

/** What a sketch asks, with only the named relations and bounds of it. */
function onlyWith({ slots, relations }: Compiled, names: ReadonlySet<string>): Compiled {
  const [min, max] = [slots.min.slice(), slots.max.slice()];
  for (const [name, slot] of slots.scalars) {
    if (names.has(boundsName(name))) continue;
    min[slot] = -Infinity;
    max[slot] = Infinity;
  }
  const some = { ...slots, min, max };
  const kept = relations.filter(({ name }) => names.has(name));
  return { slots: some, relations: kept, parts: partsOf(some, kept, []) };
}

/**
 * What misses where the misses are least, looked for from the values `x` in so many steps; nothing where all can be brought
 * to hold.
 */
function leastMisses(
  ready: Compiled,
  x: Float64Array,
): { readonly names?: ReadonlySet<string>; readonly steps: number } {
  const settled = missesOf(settledRelations(ready), x).filter((miss) => !holds(miss));
  if (settled.length > 0) return { names: namesOf(settled), steps: 0 };
  let partsHold = true;
  let steps = 0;
  for (const part of ready.parts) {
    if (part.relations.length + part.bounds.length === 0) continue;
    const model = new Model(part, ready.slots.guess);
    steps += makeMissesLeast(model, x, HARDLY_WHETHER).steps;
    partsHold &&= model.worst <= RELATION;
  }
  const bounds = boundMisses(ready.slots, x).filter((miss) => !holds(miss));
  if (partsHold && bounds.length === 0) return { steps };
  return {
    names: namesOf([...missesOf(ready.relations, x).filter((miss) => !holds(miss)), ...bounds]),
    steps,
  };
}

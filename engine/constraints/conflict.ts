import { RELATION } from '../geometry/tolerance.ts';
import { SCALE } from './compile/equations.ts';
import { compiled, settledRelations } from './compile/program.ts';
import { boundMisses, boundsName, holds, missesOf } from './compile/residuals.ts';
import { makeMissesLeast } from './method/least-misses.ts';
import { Model } from './method/model.ts';
import type { Sketch } from './sketch.ts';
import type { Residual, Solution } from './solution.ts';

/**
 * A smallest set of relations and bounds that cannot all hold: without any one of them the others can. Found by the
 * deletion filter (Chinneck & Dravnieks, 1991): each is left out in turn, and stays out where the rest still cannot
 * hold. What then does not miss where the misses are least exerts no force there, so it is left out with it, as in their
 * sensitivity filter, if what is left cannot hold by itself either. Whether a set can hold is judged by a search from the solution
 * and from the first guesses, so the answer is about these neighbourhoods.
 */
export function smallestConflict(sketch: Sketch, solution: Solution): readonly string[] {
  const missing = (names: ReadonlySet<string>): ReadonlySet<string> | undefined => {
    const some = onlyWith(sketch, names);
    return missed(some) && missed(guessedAt(some, solution));
  };
  const needed: string[] = [];
  const smaller = (names: ReadonlySet<string>, missed: ReadonlySet<string>): ReadonlySet<string> =>
    missed.size < names.size && needed.every((name) => missed.has(name)) && missing(missed) ? missed : names;
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

/** The sketch with only the named relations and bounds, and no wishes. */
function onlyWith(sketch: Sketch, names: ReadonlySet<string>): Sketch {
  const scalars = mapped(sketch.scalars, (scalar, name) => {
    const { at, unit, free } = scalar;
    return names.has(boundsName(name)) ? scalar : { at, unit, free };
  });
  const relations = sketch.relations.filter(({ name }) => names.has(name));
  return { ...sketch, scalars, relations, wishes: [] };
}

/** The sketch with a solution as its first guesses. */
const guessedAt = (sketch: Sketch, { points, scalars }: Solution): Sketch => ({
  ...sketch,
  points: mapped(sketch.points, (point, name) => ({ ...point, at: points[name] ?? point.at })),
  scalars: mapped(sketch.scalars, (scalar, name) => ({ ...scalar, at: scalars[name] ?? scalar.at })),
});

/** A map with the same names for other things. */
const mapped = <From, To>(map: ReadonlyMap<string, From>, make: (one: From, name: string) => To) =>
  new Map([...map].map(([name, one]) => [name, make(one, name)]));

/** What misses where the misses are least, looked for from the first guesses; nothing where all can be brought to hold. */
function missed(sketch: Sketch): ReadonlySet<string> | undefined {
  const ready = compiled(sketch);
  const x = Float64Array.from(ready.slots.guess);
  const settled = missesOf(settledRelations(ready), x).filter((miss) => !holds(miss));
  if (settled.length > 0) return namesOf(settled);
  let partsHold = true;
  for (const part of ready.parts) {
    const model = new Model(part, ready.slots.guess);
    makeMissesLeast(model, x);
    partsHold &&= model.worst <= RELATION;
  }
  const bounds = boundMisses(ready.slots, x).filter((miss) => !holds(miss));
  if (partsHold && bounds.length === 0) return undefined;
  return namesOf([...missesOf(ready.relations, x).filter((miss) => !holds(miss)), ...bounds]);
}

import { RELATION } from '../geometry/tolerance.ts';
import { compiled, settledRelations } from './compile/program.ts';
import { boundMisses, boundsName, holds, missesOf } from './compile/residuals.ts';
import { makeMissesLeast } from './method/least-misses.ts';
import { Model } from './method/model.ts';
import type { Sketch } from './sketch.ts';
import type { Solution } from './solution.ts';

/**
 * A smallest set of relations and bounds that cannot all hold: without any one of them the others can. Found by the
 * deletion filter (Chinneck & Dravnieks, 1991): each is left out in turn, and stays out where the rest still cannot
 * hold. Whether a set can hold is judged by a search from the solution and from the first guesses, so the answer is
 * about these neighbourhoods.
 */
export function smallestConflict(sketch: Sketch, solution: Solution): readonly string[] {
  const canHold = (names: ReadonlySet<string>): boolean => {
    const some = onlyWith(sketch, names);
    return feasible(some) || feasible(guessedAt(some, solution));
  };
  // Where the misses are least, what does not miss exerts no force: the missed ones contradict each other already.
  const missed = new Set(
    solution.residuals.filter((residual) => !holds(residual)).map(({ relation }) => relation),
  );
  const all = new Set(solution.residuals.map(({ relation }) => relation));
  const members = canHold(missed) ? all : missed;
  if (canHold(members)) return [];
  for (const name of [...members]) {
    const without = new Set(members);
    without.delete(name);
    if (!canHold(without)) members.delete(name);
  }
  return [...members];
}

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

/** Whether all relations and bounds can be brought to hold from the first guesses. */
function feasible(sketch: Sketch): boolean {
  const ready = compiled(sketch);
  const x = Float64Array.from(ready.slots.guess);
  if (!missesOf(settledRelations(ready), x).every(holds)) return false;
  const partsHold = ready.parts.every((part) => {
    const model = new Model(part, ready.slots.guess);
    makeMissesLeast(model, x);
    return model.worst <= RELATION;
  });
  return partsHold && boundMisses(ready.slots, x).every(holds);
}

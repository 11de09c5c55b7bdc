import { RELATION } from '../geometry/tolerance.ts';
import { SCALE } from './compile/equations.ts';
import { boundsName } from './compile/residuals.ts';
import { missesAt } from './misses-at.ts';
import type { Sketch } from './sketch.ts';
import type { Residual, Solution } from './solution.ts';

/** A relation or bound of a sketch whose demand is another in a sketch beside it, and by how much (mm at arm's length). */
export type ChangedDemands = ReadonlyMap<string, number>;

/** What counts where a demand has changed without missing more or less: that it has. */
const HARDLY = RELATION / 1e3;

/**
 * What two sketches of one draft do not ask alike: by how far each relation and bound misses where the solution of the
 * first lies, as each sketch has it, and by what is written in it. `misses` are those of the second there.
 */
export function changedDemands(
  { sketch, solution }: { readonly sketch: Sketch; readonly solution: Solution },
  other: Sketch,
  misses: readonly Residual[] = missesAt(other, solution),
): ChangedDemands {
  const changed = new Map<string, number>();
  const there = new Map(misses.map((residual) => [residual.relation, residual]));
  for (const { relation, error, unit } of solution.residuals) {
    const by = Math.abs((there.get(relation)?.error ?? Infinity) - error) * SCALE[unit];
    if (by > RELATION) changed.set(relation, by);
  }
  const hardly = (name: string): void => {
    if (!changed.has(name)) changed.set(name, HARDLY);
  };
  const written = new Map(other.relations.map((relation) => [relation.name, relation]));
  for (const relation of sketch.relations)
    if (!alike(relation, written.get(relation.name))) hardly(relation.name);
  for (const [name, { min, max }] of sketch.scalars) {
    const beside = other.scalars.get(name);
    if (min !== beside?.min || max !== beside?.max) hardly(boundsName(name));
  }
  return changed;
}

const alike = (a: unknown, b: unknown): boolean => JSON.stringify(a) === JSON.stringify(b);

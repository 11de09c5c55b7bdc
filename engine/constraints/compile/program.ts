import { equationsOf } from '../relations/table.ts';
import type { Sketch } from '../sketch.ts';
import { wishEquations } from '../wishes/table.ts';
import type { Equations } from './equations.ts';
import { isSettled, type Part, partsOf } from './parts.ts';
import { numbered, type Slots } from './slots.ts';

/** A sketch made ready for computing. */
export interface Compiled {
  readonly slots: Slots;
  readonly relations: readonly Equations[];
  readonly parts: readonly Part[];
}

/**
 * Numbers a sketch, makes its relations and wishes ready, and splits it into parts. Throws as those do, and where two
 * relations share a name, since no report could tell them apart.
 */
export function compiled(sketch: Sketch): Compiled {
  const names = new Set<string>();
  for (const { name } of sketch.relations) {
    if (names.has(name)) throw new Error(`The sketch has two relations called "${name}".`);
    names.add(name);
  }
  const slots = numbered(sketch);
  const relations = sketch.relations.map((relation) => equationsOf(relation, slots));
  const wishes = sketch.wishes.map((wish) => wishEquations(wish, slots));
  return { slots, relations, parts: partsOf(slots, relations, wishes) };
}

/** Relations between fixed things only: they belong to no part, and hold or do not. */
export const settledRelations = ({ slots, relations }: Compiled): readonly Equations[] =>
  relations.filter((equations) => isSettled(equations, slots));

import { DraftMistake, isDraftMistake } from '../../draft-mistake.ts';
import { equationsOf } from '../relations/table.ts';
import type { Sketch } from '../sketch.ts';
import { wishEquations } from '../wishes/table.ts';
import type { Equations } from './equations.ts';
import { isSettled, partsOf, type SketchPart } from './parts.ts';
import { numbered, type Slots } from './slots.ts';

/** A sketch made ready for computing. */
export interface Compiled {
  readonly slots: Slots;
  readonly relations: readonly Equations[];
  readonly parts: readonly SketchPart[];
}

/**
 * Numbers a sketch, makes its relations and wishes ready, and splits it into parts. Throws a `DraftMistake` as those do, and where two
 * relations share a name, since no report could tell them apart.
 */
export function compiled(sketch: Sketch): Compiled {
  const names = new Set<string>();
  for (const { name } of sketch.relations) {
    if (names.has(name)) throw new DraftMistake(`The sketch has two relations called “${name}”.`, [name]);
    names.add(name);
  }
  const slots = numbered(sketch);
  const relations = sketch.relations.map((relation) => read(relation, () => equationsOf(relation, slots)));
  const wishes = sketch.wishes.map((wish) => read(wish, () => wishEquations(wish, slots)));
  return { slots, relations, parts: partsOf(slots, relations, wishes) };
}

/** Reads a relation or wish. What is not written as a compiler would have it fails somewhere inside: then its name is told. */
function read({ name }: { readonly name: string }, equations: () => Equations): Equations {
  try {
    return equations();
  } catch (error) {
    if (isDraftMistake(error) || !(error instanceof Error)) throw error;
    throw new DraftMistake(`“${name}” is not written as its kind should be: ${error.message}.`, [name]);
  }
}

/** Relations between fixed things only: they belong to no part, and hold or do not. */
export const settledRelations = ({ slots, relations }: Compiled): readonly Equations[] =>
  relations.filter((equations) => isSettled(equations, slots));

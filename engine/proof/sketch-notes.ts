import { readBody } from '../body/read.ts';
import { noted } from '../constraints/attempts.ts';
import { diagnose } from '../constraints/diagnose.ts';
import type { Draft } from '../pattern/draft.ts';
import { resolveStyling } from '../pattern/styling-values.ts';
import type { TrialCase } from './trial-case.ts';

/** What the writer of a draft may like to know of its sketches, and a dressmaker need not. */
export interface SketchNotes {
  /** Relations that say nothing which the ones before them have not said. */
  readonly redundant: readonly string[];
  /** Points that the relations leave open and the wishes place. */
  readonly wished: readonly string[];
  /** Points, lengths and angles that neither relation nor wish holds: they stay where they were first guessed. */
  readonly adrift: readonly string[];
}

/** Looks at the sketches of a draft as they were solved for one case; nothing to say where it cannot be drawn. */
export function sketchNotes(draft: Draft, { body, styling }: TrialCase): SketchNotes {
  const [read, chosen] = [readBody(body), resolveStyling(draft.choices, styling)];
  const { solver, attempts } = noted();
  if (read.ok && chosen.ok) draft.draw(read.value, chosen.value, solver);
  const notes = attempts
    .filter(({ solution }) => solution.status === 'solved')
    .map(({ sketch, solution }) => {
      const { redundant, free, adrift } = diagnose(sketch, solution);
      const wished = free.filter((name) => sketch.points.has(name) && !adrift.includes(name));
      return { redundant, wished, adrift };
    });
  return {
    redundant: notes.flatMap(({ redundant }) => redundant),
    wished: notes.flatMap(({ wished }) => wished),
    adrift: notes.flatMap(({ adrift }) => adrift),
  };
}

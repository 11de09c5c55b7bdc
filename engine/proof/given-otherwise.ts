import { measurementWords } from '../body/measurement-words.ts';
import type { Evaluation } from '../evaluate.ts';
import type { Issue } from '../issue.ts';
import type { Draft } from '../pattern/draft.ts';
import type { Ground } from '../pattern/quantity.ts';

/** Numbers that differ by less, mm or radians, are the same. */
const SAME = 1e-9;

/**
 * The choices, and where no fitting changed them the measurements, that the construction says are other than the draft was handed: it
 * draws for others than it was asked to, and the sheet says what was asked.
 */
export function givenOtherwise(draft: Draft, { garment, body, styling }: Evaluation): readonly Issue[] {
  const named = new Map<string, Issue>();
  for (const { name, origin, value } of garment.steps.flatMap(({ from }) => from)) {
    const asked =
      origin.kind === 'choice'
        ? styling[name]
        : origin.kind === 'measurement' && body.fitting.length === 0
          ? body.size[origin.measurement]
          : undefined;
    if (typeof asked !== 'number' || value === undefined || Math.abs(asked - value) <= SAME) continue;
    named.set(name, otherwise(draft, { name, origin, value }, asked));
  }
  return [...named.values()];
}

function otherwise(draft: Draft, { name, origin, value }: Ground, asked: number): Issue {
  const own = origin.kind === 'measurement' ? measurementWords(origin.measurement) : `choice ${name}`;
  const source = draft.placeOf?.([origin.kind === 'measurement' ? origin.measurement : name]);
  return {
    code: 'draft-given-otherwise',
    severity: 'error',
    path: name,
    message: `The draft is handed ${asked} as the ${own} and draws with ${value}: hand drawGarment the body and the styling that draw is given.`,
    ...(source && { source }),
  };
}

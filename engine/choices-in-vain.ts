import type { Evaluation } from './evaluate.ts';
import type { Issue } from './issue.ts';
import type { Draft } from './pattern/draft.ts';
import { wholeShape } from './proof/garment-shape.ts';
import { makesAnother } from './proof/makes-another.ts';

/**
 * A note for each choice that was made and changes nothing of the garment, such as how full a sleeve is where there is none: she
 * may have meant another. The garment is drafted again with each choice as usual.
 */
export function choicesInVain(draft: Draft, { body, styling, garment }: Evaluation): readonly Issue[] {
  const shape = wholeShape(garment);
  return draft.choices.flatMap(({ name, default: usual }) => {
    const made = garment.choices?.[name];
    if (made === undefined) return [];
    return makesAnother(draft, body, shape, styling, { ...styling, [name]: usual })
      ? []
      : [inVain(name, made)];
  });
}

const inVain = (name: string, value: number | string): Issue => ({
  code: 'choice-in-vain',
  severity: 'note',
  path: name,
  message: `“${name}” changes nothing on this garment as the rest is chosen.`,
  value,
});

import { measurementNames } from '../engine/body/body.ts';
import type { Draft } from '../engine/pattern/draft.ts';
import type { Choice, StylingOf } from '../engine/pattern/styling.ts';

/** A draft as it is written down: its choices give the type of the styling it is handed. */
interface DraftOf<Choices extends readonly Choice[]> extends Draft<StylingOf<Choices>> {
  readonly choices: Choices;
}

/**
 * A garment of one's own, for `evaluate` and for `bodkin --draft FILE`. The choices are declared first, and `draw` gets a
 * value in range for each of them. Throws an Error at once, with the garment's name, for a name that cannot be typed on a
 * command line, a choice declared twice, a default out of its range, and an unknown measurement.
 */
export function defineDraft<const Choices extends readonly Choice[]>(
  draft: DraftOf<Choices>,
): Draft<StylingOf<Choices>> {
  const wrong = (what: string): Error => new Error(`The draft “${draft.name}” ${what}.`);
  if (!/^[a-z][a-z0-9-]*$/.test(draft.name)) throw wrong('needs a name of small letters, digits and hyphens');
  const names = new Set<string>();
  for (const choice of draft.choices) {
    if (names.has(choice.name)) throw wrong(`declares the choice “${choice.name}” twice`);
    names.add(choice.name);
    if (!isOwnDefault(choice)) throw wrong(`gives “${choice.name}” a default that it does not allow`);
  }
  const unknown = draft.shapedBy.find((name) => !measurementNames.includes(name));
  if (unknown !== undefined) throw wrong(`is shaped by “${unknown}”, which is no measurement`);
  return draft;
}

/** Whether a choice allows what it takes by itself. */
function isOwnDefault(choice: Choice): boolean {
  if (choice.kind === 'word') return choice.words.includes(choice.default);
  if (choice.default === 'auto') return choice.kind === 'number or auto';
  return Number(choice.default) >= choice.min && Number(choice.default) <= choice.max;
}

import { measurementNames } from '../engine/body/body.ts';
import { DraftMistake, perhapsMeant } from '../engine/draft-mistake.ts';
import type { Draft } from '../engine/pattern/draft.ts';
import { isWrittenUnit } from '../engine/pattern/quantity.ts';
import type { Choice, StylingOf } from '../engine/pattern/styling.ts';
import { unfitField } from './draft-fields.ts';

/** A draft as it is written down: its choices give the type of the styling it is handed. */
interface DraftOf<Choices extends readonly Choice[]> extends Draft<StylingOf<Choices>> {
  readonly choices: Choices;
}

/**
 * A garment of one's own, for `evaluate` and for `bodkin --draft FILE`. The choices are declared first, and `draw` gets a
 * value in range for each of them. Throws a `DraftMistake` at once, with the garment's name, for what it lacks or has of
 * another kind, a name that cannot be typed on a command line, a choice declared twice or by halves, a default out of its range, and an unknown measurement.
 */
export function defineDraft<const Choices extends readonly Choice[]>(
  draft: DraftOf<Choices>,
): Draft<StylingOf<Choices>> {
  const called = typeof draft.name === 'string' ? `The draft “${draft.name}”` : 'The draft';
  const wrong = (what: string, ...words: readonly string[]): DraftMistake =>
    new DraftMistake(`${called} ${what.replace(/[.?]?$/, (end) => end || '.')}`, words);
  const unfit = unfitField(draft);
  if (unfit) throw wrong(unfit.says, ...(unfit.field ? [unfit.field] : []));
  if (!/^[a-z][a-z0-9-]*$/.test(draft.name))
    throw wrong('needs a name of small letters, digits and hyphens', draft.name);
  const names = new Set<string>();
  for (const choice of draft.choices) {
    const { name } = choice;
    if (names.has(name)) throw wrong(`declares the choice “${name}” twice`, name);
    names.add(name);
    const lacks = lackOf(choice);
    if (lacks) throw wrong(`declares the choice “${name}” ${lacks}`, name);
    if (!isOwnDefault(choice)) throw wrong(`gives “${name}” a default that it does not allow`, name);
  }
  const unknown = draft.shapedBy.find((name) => !measurementNames.includes(name));
  if (unknown !== undefined) {
    const hint = perhapsMeant(unknown, measurementNames);
    throw wrong(`is shaped by “${unknown}”, which is no measurement.${hint}`, unknown);
  }
  return draft;
}

/** What a choice lacks, as plain JavaScript may have it. */
function lackOf(choice: Choice): string | undefined {
  if (typeof choice.help !== 'string' || choice.help === '') return 'without help';
  if (choice.kind === 'word')
    return Array.isArray(choice.words) && choice.words.length > 0 ? undefined : 'without words';
  if (choice.kind !== 'number' && choice.kind !== 'number or auto')
    return `of the kind “${String(Reflect.get(choice, 'kind'))}”, which there is not`;
  if (!isWrittenUnit(choice.unit)) return `in the unit “${String(choice.unit)}”, which there is not`;
  return choice.min <= choice.max ? undefined : 'without a range that begins before it ends';
}

/** Whether a choice allows what it takes by itself. */
function isOwnDefault(choice: Choice): boolean {
  if (choice.kind === 'word') return choice.words.includes(choice.default);
  if (choice.default === 'auto') return choice.kind === 'number or auto';
  return Number(choice.default) >= choice.min && Number(choice.default) <= choice.max;
}

import type { Completion, CompletionContext, CompletionResult } from '@codemirror/autocomplete';
import { syntaxTree } from '@codemirror/language';
import type { EditorView } from '@codemirror/view';
import { type KnownNames, type NameMeanings, partsOf, takenFrom } from './known-names.ts';
import type { NameMeaning } from './name-meaning.ts';
import { readCode } from './read-code.ts';

/** Shows what a name means beside the list. */
type Show = (meaning: NameMeaning) => ReturnType<Exclude<NonNullable<Completion['info']>, string>>;

/** No import goes back further. */
const reach = 4000;

/** What can be written at a place: names of an import, parts of what stands before a dot, or anything that has a name. */
export function completionsAt(
  context: CompletionContext,
  known: KnownNames,
  show: Show,
): CompletionResult | null {
  const { state, pos, explicit } = context;
  const before = state.sliceDoc(Math.max(0, pos - reach), pos);
  const [word = ''] = /[\w$]*$/.exec(before) ?? [];
  const from = pos - word.length;
  const of = (options: readonly Completion[]): CompletionResult => ({ from, options, validFor: /^[\w$]*$/ });
  if (/(?:^|\n)(?:import|export)\s[^;]*\{[^}'";]*$/.test(before)) {
    const [, source] = /^[^}]*\}\s*from\s*'([^']+)'/.exec(state.sliceDoc(pos, pos + reach)) ?? [];
    const there = source === undefined ? new Map<string, NameMeaning>() : takenFrom(source, known);
    return there ? of(optionsOf(there, show)) : null;
  }
  const within = syntaxTree(state).resolveInner(pos, -1).name;
  if (/^(String|TemplateString|LineComment|BlockComment)$/.test(within)) return null;
  const [, dotted] = /([\w$]+(?:\s*\.\s*[\w$]+)*)\s*\.\s*[\w$]*$/.exec(before) ?? [];
  if (dotted !== undefined) {
    const parts = dotted.split(/\s*\.\s*/);
    const name = parts.at(-1) ?? '';
    const found = partsOf({ of: name, parted: true }, known);
    return found ? of(optionsOf(found.parts, show)) : null;
  }
  if (word === '' && !explicit) return null;
  return of(allNames(known, show));
}

const optionsOf = (meanings: NameMeanings, show: Show): readonly Completion[] =>
  [...meanings].map(([name, meaning]) => optionOf(name, meaning, show));

const optionOf = (
  name: string,
  meaning: NameMeaning,
  show: Show,
  apply?: Completion['apply'],
): Completion => ({
  label: name,
  detail: meaning.signature
    .replace(name, '')
    .replace(/^[:\s]+/, '')
    .slice(0, 60),
  info: () => show(meaning),
  ...(apply ? { apply } : {}),
});

/** What has a name in the file, and what can be imported from the program, which then is. */
function allNames(known: KnownNames, show: Show): readonly Completion[] {
  const { names, declared, imports } = readCode(known.files[known.file] ?? '');
  const here = [...names].map((name) => {
    const taken = imports.find(({ local }) => local === name);
    const meaning = declared.get(name) ?? (taken && takenFrom(taken.source, known)?.get(taken.name));
    return { ...optionOf(name, meaning ?? { signature: name, says: '' }, show), boost: 10 };
  });
  const others = Object.entries(known.program)
    .filter(([name]) => !names.has(name))
    .map(([name, meaning]) =>
      optionOf(name, meaning, show, (view, _, from, to) =>
        writeImported(view, name, meaning.isType, from, to),
      ),
    );
  return [...here, ...others];
}

/** Writes a name, and its import from the program at the top of the file. */
function writeImported(
  view: EditorView,
  name: string,
  isType: boolean | undefined,
  from: number,
  to: number,
): void {
  const text = view.state.doc.toString();
  const taken = isType ? `type ${name}` : name;
  const found = /import \{(?=[^}]*\} from 'bodkin';)/.exec(text);
  const at = found ? found.index + found[0].length : 0;
  const insert = found ? ` ${taken},` : `import { ${taken} } from 'bodkin';\n`;
  view.dispatch({
    changes: [
      { from: at, insert },
      { from, to, insert: name },
    ],
    selection: { anchor: from + insert.length + name.length },
    userEvent: 'input.complete',
  });
}

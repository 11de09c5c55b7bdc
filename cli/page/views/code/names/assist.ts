import {
  autocompletion,
  type CompletionContext,
  type CompletionResult,
  completionKeymap,
} from '@codemirror/autocomplete';
import type { EditorState, Extension } from '@codemirror/state';
import { type EditorView, hoverTooltip, keymap } from '@codemirror/view';
import type { TypedName, TypedPart } from '../types/messages.ts';
import { completionsAt } from './completions.ts';
import type { KnownNames } from './known-names.ts';
import { meaningElement } from './meaning-element.ts';
import { nameAt } from './name-at.ts';

/** What types say, where somebody asked for them. */
interface AskedTypes {
  readonly typed: (text: string, at: number) => Promise<TypedName | undefined>;
  readonly parted: (text: string, at: number) => Promise<readonly TypedPart[]>;
}

/** What helps where names are written: those that there are as one types, and what one means that is pointed at. */
export const nameAssist = (
  known: (state: EditorState) => KnownNames | undefined,
  types: AskedTypes,
): Extension => [
  autocompletion({
    override: [
      (context) => {
        const names = known(context.state);
        return (names && completionsAt(context, names, meaningElement)) ?? partsByType(context, types);
      },
    ],
    icons: false,
    maxRenderedOptions: 60,
  }),
  keymap.of(completionKeymap),
  hoverTooltip(async (view: EditorView, pos) => {
    const { state } = view;
    const found = (await types.typed(state.doc.toString(), pos)) ?? nameAt(state, pos, known(state));
    return found
      ? { pos: found.from, end: found.to, create: () => ({ dom: meaningElement(found.meaning) }) }
      : null;
  }),
];

/** What may stand behind a dot by the type of what stands before it, where names alone do not say. */
async function partsByType(
  context: CompletionContext,
  { parted }: AskedTypes,
): Promise<CompletionResult | null> {
  const dotted = context.matchBefore(/\.\s*[\w$]*/);
  if (!dotted) return null;
  const parts = await parted(context.state.doc.toString(), context.pos);
  const from = context.pos - (/[\w$]*$/.exec(dotted.text)?.[0].length ?? 0);
  const options = parts.map(({ name, kind }) => ({ label: name, detail: kind }));
  return options.length === 0 ? null : { from, options, validFor: /^[\w$]*$/ };
}

import { autocompletion, completionKeymap } from '@codemirror/autocomplete';
import type { EditorState, Extension } from '@codemirror/state';
import { type EditorView, hoverTooltip, keymap } from '@codemirror/view';
import type { TypedName } from '../types/messages.ts';
import { completionsAt } from './completions.ts';
import type { KnownNames } from './known-names.ts';
import { meaningElement } from './meaning-element.ts';
import { nameAt } from './name-at.ts';

/** What helps where names are written: those that there are as one types, and what one means that is pointed at. */
export const nameAssist = (
  known: (state: EditorState) => KnownNames | undefined,
  typed: (text: string, at: number) => Promise<TypedName | undefined>,
): Extension => [
  autocompletion({
    override: [
      (context) => {
        const names = known(context.state);
        return names ? completionsAt(context, names, meaningElement) : null;
      },
    ],
    icons: false,
    maxRenderedOptions: 60,
  }),
  keymap.of(completionKeymap),
  hoverTooltip(async (view: EditorView, pos) => {
    const { state } = view;
    const found = (await typed(state.doc.toString(), pos)) ?? nameAt(state, pos, known(state));
    return found
      ? { pos: found.from, end: found.to, create: () => ({ dom: meaningElement(found.meaning) }) }
      : null;
  }),
];

import { autocompletion, completionKeymap } from '@codemirror/autocomplete';
import type { EditorState, Extension } from '@codemirror/state';
import { type EditorView, hoverTooltip, keymap } from '@codemirror/view';
import { completionsAt } from './completions.ts';
import { type Known, type Meaning, meaningIn, partsOf } from './known.ts';
import { meaningElement } from './meaning-element.ts';

/** What helps where names are written: those that there are as one types, and what one means that is pointed at. */
export const nameAssist = (known: (state: EditorState) => Known | undefined): Extension => [
  autocompletion({
    override: [
      (context) => {
        const names = known(context.state);
        return names ? completionsAt(context, names) : null;
      },
    ],
    icons: false,
    maxRenderedOptions: 60,
  }),
  keymap.of(completionKeymap),
  hoverTooltip((view: EditorView, pos) => {
    const found = nameAt(view.state, pos, known(view.state));
    return found
      ? { pos: found.from, end: found.to, create: () => ({ dom: meaningElement(found.meaning) }) }
      : null;
  }),
];

/** What stands before a dot is looked for no further back. */
const reach = 200;

/** The name at a place with what it means, where that is known. */
export function nameAt(
  state: EditorState,
  pos: number,
  known: Known | undefined,
): { readonly meaning: Meaning; readonly from: number; readonly to: number } | undefined {
  const word = state.wordAt(pos);
  if (!known || !word) return undefined;
  const { from, to } = word;
  const name = state.sliceDoc(from, to);
  const [, of] = /([\w$]+)\s*\.\s*$/.exec(state.sliceDoc(Math.max(0, from - reach), from)) ?? [];
  const meaning =
    of === undefined ? meaningIn(name, known) : partsOf({ of, parted: true }, known)?.parts.get(name);
  return meaning && { meaning, from, to };
}

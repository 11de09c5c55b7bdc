import type { EditorState } from '@codemirror/state';
import { type KnownNames, meaningIn, partsOf } from './known-names.ts';
import type { NameMeaning } from './name-meaning.ts';

/** What stands before a dot is looked for no further back. */
const reach = 200;

/** The name at a place with what it means, where that is known. */
export function nameAt(
  state: EditorState,
  pos: number,
  known: KnownNames | undefined,
): { readonly meaning: NameMeaning; readonly from: number; readonly to: number } | undefined {
  const word = state.wordAt(pos);
  if (!known || !word) return undefined;
  const { from, to } = word;
  const name = state.sliceDoc(from, to);
  const [, of] = /([\w$]+)\s*\.\s*$/.exec(state.sliceDoc(Math.max(0, from - reach), from)) ?? [];
  const meaning =
    of === undefined ? meaningIn(name, known) : partsOf({ of, parted: true }, known)?.parts.get(name);
  return meaning && { meaning, from, to };
}

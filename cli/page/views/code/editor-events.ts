import type { KnownNames } from './names/known-names.ts';
import type { NameMeaning } from './names/name-meaning.ts';
import type { TypedName, TypedPart } from './types/messages.ts';

/** What an editor tells. */
export interface EditorEvents {
  readonly write: (text: string) => void;
  /** The line that the cursor has come to, from 1. */
  readonly at: (line: number) => void;
  /** The key that runs the code was pressed. */
  readonly run: () => void;
  /** What names may mean in the file, once that is known. */
  readonly known: () => KnownNames | undefined;
  /** What types say of the name at a place of the text as it is now; nothing where nobody asked for types. */
  readonly typed: (text: string, at: number) => Promise<TypedName | undefined>;
  /** What types let stand behind the dot before a place; nothing where nobody asked for types. */
  readonly parted: (text: string, at: number) => Promise<readonly TypedPart[]>;
  /** What the name means that the cursor is in. */
  readonly means: (meaning: NameMeaning | undefined) => void;
}

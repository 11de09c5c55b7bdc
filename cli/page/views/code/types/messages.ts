import type { DraftFiles } from '../../../../own-draft/draft-files.ts';
import type { NameMeaning } from '../names/name-meaning.ts';
import type { Stretch } from '../names/read-code.ts';

/** What the page asks of the worker that knows types. Plain data. */
export type TypeQuestion =
  /** The files that are otherwise than they were when they were told last, and the names of those that are no more. */
  | { readonly kind: 'files'; readonly changed: DraftFiles; readonly gone: readonly string[] }
  /** All that is wrong, in this file first. */
  | { readonly kind: 'check'; readonly number: number; readonly file: string }
  /** What the name at a place means, or what may stand behind the dot before it. */
  | {
      readonly kind: 'mean' | 'part';
      readonly number: number;
      readonly file: string;
      readonly at: number;
    };

export type TypeAnswer =
  /** The compiler could not be loaded. */
  | { readonly kind: 'failed' }
  /** What is wrong so far; `whole` once every file was looked at. */
  | {
      readonly kind: 'checked';
      readonly number: number;
      readonly problems: readonly TypeProblem[];
      readonly whole: boolean;
    }
  | { readonly kind: 'meant'; readonly number: number; readonly meant: TypedName | undefined }
  | { readonly kind: 'parted'; readonly number: number; readonly parts: readonly TypedPart[] };

/** Something that the types of a file do not allow, and where. */
export interface TypeProblem extends Stretch {
  readonly file: string;
  /** From 1. */
  readonly line: number;
  readonly message: string;
}

/** What a name means that stands somewhere. */
export interface TypedName extends Stretch {
  readonly meaning: NameMeaning;
}

/** Something that could be written behind a dot, and what it is in a word. */
export interface TypedPart {
  readonly name: string;
  readonly kind: string;
}

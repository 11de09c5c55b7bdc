import type { DraftFiles } from '../../../../draft-files.ts';
import type { NameMeaning } from '../names/name-meaning.ts';
import type { Stretch } from '../names/read-code.ts';

/** What the page asks of the worker that knows types. Plain data. */
export type TypeQuestion =
  /** The files that are otherwise than they were when they were told last, and the names of those that are no more. */
  | { readonly kind: 'files'; readonly changed: DraftFiles; readonly gone: readonly string[] }
  /** All that is wrong, in this file first. */
  | { readonly kind: 'check'; readonly number: number; readonly file: string }
  | { readonly kind: 'mean'; readonly number: number; readonly file: string; readonly at: number };

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
  | { readonly kind: 'meant'; readonly number: number; readonly meant: TypedName | undefined };

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

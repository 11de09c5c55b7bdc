import type { ExcludedRelation } from './excluded-relation.ts';
import type { IssueCode } from './issue-codes/issue-codes.ts';

/**
 * Something a dressmaker should know, as data: which rule spoke, about what, and between which limits the
 * value should have been. The message is a full sentence in her words.
 */
export interface Issue {
  /** A stable short name; what each means stands in `issue-codes/` and in cli/issues.md. */
  readonly code: IssueCode;
  /** `error`: cannot go on. `warning`: unlikely, look again. `note`: good to know. */
  readonly severity: 'error' | 'warning' | 'note';
  /** What it is about: a measurement, a styling name, or `piece/edge`. */
  readonly path: string;
  /** Its lengths are mm, but the file's unit where it speaks of measurements as they are written. */
  readonly message: string;
  readonly value?: number | string;
  readonly limits?: { readonly min?: number; readonly max?: number; readonly unit: string };
  /** What excludes each other, where lines cannot all hold: a smallest such set, what misses most first. */
  readonly relations?: readonly ExcludedRelation[];
  /** Where it stands in the source of a draft, where the draft was read from a file of one's own. */
  readonly source?: SourcePlace;
}

/** A line of a file; lines are counted from 1. */
export interface SourcePlace {
  readonly file: string;
  readonly line: number;
}

/** An answer that may fail: either a value with remarks, or the issues that stand in its way. */
export type Result<T> =
  | { readonly ok: true; readonly value: T; readonly issues: readonly Issue[] }
  | { readonly ok: false; readonly issues: readonly Issue[] };

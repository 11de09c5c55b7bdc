import type { TakenFile } from './taken-file.ts';

/** What can be asked of a draft beyond its figures, by name. Each has its maker in `requests/parts.ts`. */
export interface DraftParts {
  /** Each piece as a file of its own. */
  readonly files: readonly TakenFile[];
}

export type DraftPart = keyof DraftParts;

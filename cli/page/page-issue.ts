import type { Issue } from '../../drafts/index.ts';

/** Something that is said of a draft, with lengths in the reader's unit. */
export type PageIssue = Pick<Issue, 'code' | 'severity' | 'path' | 'message'>;

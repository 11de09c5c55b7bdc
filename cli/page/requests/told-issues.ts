import { type Issue, type Unit, withLengthsIn } from '../../../drafts/index.ts';
import type { PageIssue } from '../page-issue.ts';
import { inPageWords } from './in-page-words.ts';

/** Issues with their lengths in the reader's unit, in the words of the page, gravest first. */
export const toldIssues = (issues: readonly Issue[], units: Unit): readonly PageIssue[] =>
  (['error', 'warning', 'note'] as const).flatMap((severity) =>
    issues
      .filter((issue) => issue.severity === severity)
      .map(({ code, path, message }) => ({
        code,
        severity,
        path,
        message: inPageWords(code, withLengthsIn(message, units)),
      })),
  );

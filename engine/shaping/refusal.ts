import type { Issue, Result } from '../issue.ts';
import type { IssueCode } from '../issue-codes/issue-codes.ts';

/** What an alteration answers when it cannot be done: one sentence, and the value that is in the way. */
export const refused = (
  code: IssueCode,
  path: string,
  message: string,
  rest: Pick<Issue, 'value' | 'limits'> = {},
): Extract<Result<never>, { ok: false }> => ({
  ok: false,
  issues: [{ code, severity: 'error', path, message, ...rest }],
});

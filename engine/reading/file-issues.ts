import type { Issue, Result } from '../issue.ts';
import type { IssueCode } from '../issue-codes/issue-codes.ts';

/** A remark on a drawing as a whole. */
export const fileNote = (code: IssueCode, message: string): Issue => ({
  code,
  severity: 'note',
  path: 'file',
  message,
});

/** A drawing that cannot be used. */
export function refusedFile(code: IssueCode, message: string): Extract<Result<never>, { ok: false }> {
  return { ok: false, issues: [{ code, severity: 'error', path: 'file', message }] };
}

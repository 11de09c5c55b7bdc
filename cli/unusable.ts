import type { Issue } from '../engine/issue.ts';
import type { IssueCode } from '../engine/issue-codes/issue-codes.ts';

/** Input that cannot be used: the command ends with exit code 2 and says why, without a stack trace. */
export class Unusable extends Error {
  readonly issues: readonly Issue[];

  constructor(issues: readonly Issue[]) {
    super(issues.map((issue) => issue.message).join('\n'));
    this.issues = issues;
  }
}

/** One thing that is wrong with a file or an option. */
export const unusable = (code: IssueCode, path: string, message: string): Unusable =>
  new Unusable([{ code, severity: 'error', path, message }]);

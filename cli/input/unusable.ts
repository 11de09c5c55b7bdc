import type { Issue } from '../../engine/issue.ts';
import type { IssueCode } from '../../engine/issue-codes/issue-codes.ts';
import type { Unit } from '../../engine/text/units.ts';

/** Input that cannot be used: the command ends with exit code 2 and says why, without a stack trace. */
export class Unusable extends Error {
  readonly issues: readonly Issue[];
  /** The unit its reader has lengths in. */
  readonly units: Unit;

  constructor(issues: readonly Issue[], units: Unit = 'mm') {
    super(issues.map((issue) => issue.message).join('\n'));
    this.issues = issues;
    this.units = units;
  }
}

/** One thing that is wrong with a file or an option. */
export const unusable = (code: IssueCode, path: string, message: string): Unusable =>
  new Unusable([{ code, severity: 'error', path, message }]);

import type { Report } from '../../engine/checks/report.ts';
import type { Issue } from '../../engine/issue.ts';
import type { ExitCode, Session } from '../session.ts';
import { heading } from './heading.ts';
import type { Reader } from './reader.ts';
import { tell } from './say.ts';
import { sayIssues } from './say-issues.ts';
import { json } from './walk-result.ts';

/** What a command has to say of a garment. */
interface Answer {
  readonly report: Report;
  readonly reader: Reader;
  /** As data, for whoever asked for JSON. */
  readonly result: () => unknown;
  /** Under the heading, for everybody else. */
  readonly words: () => Promise<void>;
  /** What to tell everybody once that is done. */
  readonly remarks?: readonly string[] | undefined;
  /** What was found beside the checks. */
  readonly issues?: readonly Issue[] | undefined;
}

/** Gives the answer as data or in words, then what was found; the exit code says whether all is true. */
export async function answer(
  session: Session,
  asJson: true | undefined,
  { report, reader, result, words, remarks = [], issues = [] }: Answer,
): Promise<ExitCode> {
  if (asJson) await session.write(json(result()));
  else {
    await session.write(heading(session, report));
    await words();
  }
  for (const remark of remarks) tell(session, remark, 2);
  sayIssues(session, [...report.issues, ...issues], reader.units);
  return report.ok ? 0 : 1;
}

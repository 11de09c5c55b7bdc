import type { Chart } from '../../engine/grading/chart.ts';
import type { Issue } from '../../engine/issue.ts';
import type { Draft } from '../../engine/pattern/draft.ts';
import { readBodyFile } from '../input/read-body.ts';
import { readerOf } from '../output/reader.ts';
import { say } from '../output/say.ts';
import { sayIssues } from '../output/say-issues.ts';
import { json } from '../output/walk-result.ts';
import type { ExitCode, Session } from '../session.ts';
import { nearestResult, nearestTable } from './nearest-table.ts';
import { nearnessOf } from './nearness.ts';

/** Says which size of a chart is nearest to a body, and which alterations bring it to her. */
export async function sayNearest(
  session: Session,
  draft: Draft,
  { chart, issues: read }: { readonly chart: Chart; readonly issues: readonly Issue[] },
  file: string,
  { styling, asJson }: { readonly styling: object; readonly asJson: boolean },
): Promise<ExitCode> {
  const data = await readBodyFile(file);
  const reader = readerOf(session, undefined, data);
  const { found, issues: said } = nearnessOf(draft, chart, data, styling, reader.units);
  const issues = [...read, ...said];
  if (asJson) await session.write(json(nearestResult(found, issues)));
  else await say(session, nearestTable(found, reader));
  sayIssues(session, issues, reader.units);
  return 0;
}

import { readBody } from '../engine/body/read.ts';
import { bringHome } from '../engine/grading/bring-home.ts';
import type { Chart } from '../engine/grading/chart.ts';
import { nearestSizes } from '../engine/grading/nearest.ts';
import type { Issue } from '../engine/issue.ts';
import type { Draft } from '../engine/pattern/draft.ts';
import { nearestResult, nearestTable } from './nearest-table.ts';
import { readBodyFile } from './read-body.ts';
import { say } from './say.ts';
import { sayIssues } from './say-issues.ts';
import type { ExitCode, Session } from './session.ts';
import { unusable } from './unusable.ts';
import { used } from './used.ts';
import { json } from './walk-result.ts';

/** So many sizes are named beside the nearest. */
const NEXT = 3;

/** Says which size of a chart is nearest to a body, and which alterations bring it to her. */
export async function sayNearest(
  session: Session,
  draft: Draft,
  { chart, issues: read }: { readonly chart: Chart; readonly issues: readonly Issue[] },
  file: string,
  { styling, asJson }: { readonly styling: object; readonly asJson: boolean },
): Promise<ExitCode> {
  const data = await readBodyFile(file);
  const body = readBody(data);
  const her = used(body);
  const sizes = used(nearestSizes(chart, her, draft.shapedBy));
  const [near, ...others] = sizes;
  if (!near) throw unusable('chart-without-sizes', '--sizes', 'There are no sizes in this chart.');
  const brought = bringHome(draft, near, data, styling);
  const found = { her, chart, near, next: others.slice(0, NEXT), home: used(brought) };
  const issues = [...read, ...body.issues, ...brought.issues];
  if (asJson) await session.write(json(nearestResult(found, issues)));
  else await say(session, nearestTable(found, session.columns));
  sayIssues(session, issues, 'mm');
  return 0;
}

import type { Body } from '../../engine/body/body.ts';
import type { Issue } from '../../engine/issue.ts';
import { resolveStyling } from '../../engine/pattern/styling-values.ts';
import { sensitivities } from '../../engine/sensitivity/sensitivity.ts';
import { byImportance } from '../../engine/sensitivity/take-again.ts';
import { askedGarment } from '../garment/drafted-garment.ts';
import { Unusable } from '../input/unusable.ts';
import type { Reader } from '../output/reader.ts';
import { say } from '../output/say.ts';
import { sayIssues } from '../output/say-issues.ts';
import { issuesResult, json } from '../output/walk-result.ts';
import type { SensitivityResult } from '../results/body.ts';
import type { Session } from '../session.ts';
import { sensitivityResult, sensitivityTable } from './sensitivity-table.ts';

/** What `--sensitivity` needs to know besides the body. */
export interface SensitivityOptions {
  readonly garment: string;
  readonly styling?: string | undefined;
  readonly set?: readonly string[] | undefined;
  readonly json?: true | undefined;
}

/** Says which measurements of a body matter for a garment, and what was found out on the way. */
export async function saySensitivity(
  session: Session,
  body: Body,
  options: SensitivityOptions,
  read: readonly Issue[],
  reader: Reader,
): Promise<void> {
  const { draft, styling: chosen } = await askedGarment(session, options.garment, options);
  const styling = resolveStyling(draft.choices, chosen);
  if (!styling.ok) throw new Unusable([...read, ...styling.issues], reader.units);
  const found = sensitivities(draft, body, styling.value);
  if (!found.ok) throw new Unusable([...read, ...styling.issues, ...found.issues], reader.units);
  const issues = [...read, ...styling.issues, ...found.issues];
  const ranked = byImportance(body, found.value);
  const result = (): SensitivityResult => ({
    ok: true,
    garment: draft.name,
    body: body.name,
    styling: styling.value,
    ...sensitivityResult(ranked),
    issues: issuesResult(issues),
  });
  if (options.json) await session.write(json(result()));
  else await say(session, sensitivityTable(draft.name, body.name, ranked, reader));
  sayIssues(session, issues, reader.units);
}

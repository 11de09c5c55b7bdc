import type { Report } from '../../engine/checks/report.ts';
import { issuesResult } from '../output/walk-result.ts';
import type { WrittenResult } from '../results/made.ts';

/** What was written of a garment, as data: its steps by number, and the files. */
export const writtenResult = (
  { ok, garment, body, issues }: Report,
  steps: readonly { readonly title: string }[],
  files: ReadonlyMap<string, unknown>,
): WrittenResult => ({
  ok,
  garment,
  body,
  steps: steps.map(({ title }, i) => ({ number: i + 1, title })),
  files: [...files.keys()],
  issues: issuesResult(issues),
});

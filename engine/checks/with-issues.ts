import type { Issue } from '../issue.ts';
import type { Report } from './report.ts';

/** A report with what was found in a file that was written of its garment: all of it must hold for the file too. */
export const withIssues = (report: Report, issues: readonly Issue[]): Report => ({
  ...report,
  ok: report.ok && issues.length === 0,
  issues: [...report.issues, ...issues],
});

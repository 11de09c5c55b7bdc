import type { Report } from '../../engine/checks/report.ts';
import { takenFrom } from '../../engine/comparison/taken.ts';
import type { Evaluation } from '../../engine/evaluate.ts';
import type { Issue } from '../../engine/issue.ts';
import { type IssueCode, knownCodes } from '../../engine/issue-codes/issue-codes.ts';
import type { EdgeRef } from '../../engine/pattern/seam.ts';
import { rounded } from '../../engine/text/figure.ts';
import type { IssueResult } from '../results/issue.ts';
import type { ReportResult } from '../results/report.ts';

/**
 * What `walk --json` prints and `report.json` holds: lengths in mm, angles in degrees; of a shape, null where it has no
 * limit on a side. Measurements and fitting are null, and the styling is empty, where a sheet was read that does not say
 * them.
 */
export function walkResult(report: Report, made?: Pick<Evaluation, 'styling' | 'body'>): ReportResult {
  const taken = made && takenFrom(made.body);
  return {
    ok: report.ok,
    garment: report.garment,
    body: report.body,
    styling: made?.styling ?? {},
    measurements: taken?.measurements ?? null,
    fitting: taken?.fitting ?? null,
    seams: report.seams.map(({ name, a, b, lengthA, lengthB, ease, gatherRatio, mismatch }) => ({
      name,
      a: a.map(plainRef),
      b: b.map(plainRef),
      lengthA: told(lengthA),
      lengthB: told(lengthB),
      ease: told(ease),
      gatherRatio: told(gatherRatio),
      mismatch: told(mismatch),
    })),
    joins: report.joins.map(({ name, pieces, angle }) => ({ name, pieces, angle: told(angle) })),
    girths: report.girths.map(({ level, body, ease, target, finished, error }) => ({
      level,
      body: told(body),
      ease: told(ease),
      target: told(target),
      finished: told(finished),
      error: told(error),
    })),
    shapes: report.shapes.map(({ name, piece, value, low, high, unit, ok, bound }) => ({
      name,
      piece,
      value: Number.isFinite(value) ? told(value) : null,
      low: low === undefined ? null : told(low),
      high: high === undefined ? null : told(high),
      unit,
      ok,
      bound,
    })),
    notches: report.notches,
    issues: issuesResult(report.issues),
  };
}

/** A figure without the digits that sines and roots of one JavaScript have otherwise than those of another, as a browser's. */
const told = (value: number): number => rounded(value, 9);

/** The same shape when nothing could be drafted: no seams, and the issues that say why. */
export const nothingWalked = (garment: string, issues: readonly Issue[]): ReportResult =>
  walkResult({
    ok: false,
    garment,
    body: '',
    seams: [],
    joins: [],
    girths: [],
    shapes: [],
    notches: 0,
    issues,
  });

/** Issues as data for other programs; `limits` is null where there are none, and what is seldom known is left out. */
export const issuesResult = (issues: readonly Issue[]): readonly IssueResult[] => issues.map(issueResult);

export const issueResult = (issue: Issue): IssueResult => {
  const { code, severity, path, message, value, limits, relations, source } = issue;
  return {
    code: marked(code),
    severity,
    path,
    message,
    limits: limits ? limitsResult(limits) : null,
    ...(relations && value !== undefined ? { value } : {}),
    ...(relations ? { relations } : {}),
    ...(source ? { source } : {}),
  };
};

/** A draft written elsewhere may never have met a compiler: what it forgot to mark as its own code is marked. */
const marked = (code: string): IssueCode =>
  knownCodes.find((known) => known === code) ?? (isOwn(code) ? code : `own-${code}`);

const isOwn = (code: string): code is `own-${string}` => code.startsWith('own-');

/** JSON knows no number without end: where there is none on a side, nothing is said of it. */
const limitsResult = ({ min, max, unit }: NonNullable<Issue['limits']>): IssueResult['limits'] => ({
  ...(Number.isFinite(min) ? { min } : {}),
  ...(Number.isFinite(max) ? { max } : {}),
  unit,
});

/** JSON for a reader: two spaces in, a line end at the end. */
export const json = (value: unknown): string => `${JSON.stringify(value, null, 2)}\n`;

const plainRef = ({ piece, edge, reversed }: EdgeRef): EdgeRef =>
  reversed ? { piece, edge, reversed } : { piece, edge };

import type { Report } from '../checks/report.ts';
import { type Evaluation, evaluate } from '../evaluate.ts';
import { notchesOf } from '../finishing/notches.ts';
import type { Issue } from '../issue.ts';
import type { Draft } from '../pattern/draft.ts';
import { provenSheet } from '../proven-sheet.ts';
import { messageOf } from '../text/message-of.ts';
import type { TrialCase } from './trial-case.ts';

/** What came of one case: a garment that passes every check, none and why, one that fails, or no answer at all. */
export type TrialOutcome = 'true' | 'refused' | 'not true' | 'thrown';

/** The outcome of a case, with what was wrong. Plain data. */
export interface Verdict {
  readonly outcome: TrialOutcome;
  readonly issues: readonly Issue[];
}

/** What a draft of one's own says where it would have thrown. */
const mistakes = ['draft-mistake', 'draft-garment-unfit', 'program-fault'];

/** Refusals that are the draft's own fault, whatever the body and the choices. */
const faults = ['draft-cannot-agree'];

/** Whether something should be mended in a draft of which that came. */
export const isFailure = (outcome: TrialOutcome, code: string): boolean =>
  outcome === 'not true' || outcome === 'thrown' || faults.includes(code);

/** Drafts one case and checks it, its written sheet too where the case asks for that. Never throws. */
export function verdictOf(draft: Draft, { body, styling, readBack }: TrialCase): Verdict {
  try {
    const evaluated = evaluate(draft, body, styling);
    const all = evaluated.ok ? reportOf(evaluated.value, readBack).issues : evaluated.issues;
    const issues = all.filter(({ severity }) => severity === 'error');
    if (evaluated.ok) return { outcome: issues.length === 0 ? 'true' : 'not true', issues };
    return { outcome: issues.some(({ code }) => mistakes.includes(code)) ? 'thrown' : 'refused', issues };
  } catch (error) {
    return thrownVerdict(error);
  }
}

/** What was found of a garment, and on its written sheet where that is read back. */
const reportOf = (made: Evaluation, readBack: true | undefined): Report =>
  readBack ? provenSheet(made, { notches: notchesOf(made.styling) }).report : made.report;

/** The verdict where the program itself came to an end over a case. */
export const thrownVerdict = (error: unknown): Verdict => ({
  outcome: 'thrown',
  issues: [
    {
      code: 'program-fault',
      severity: 'error',
      path: '',
      message: messageOf(error),
    },
  ],
});

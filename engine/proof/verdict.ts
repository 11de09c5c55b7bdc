import { evaluate } from '../evaluate.ts';
import type { Issue } from '../issue.ts';
import type { Draft } from '../pattern/draft.ts';
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

/** Drafts one case and checks it. Never throws. */
export function verdictOf(draft: Draft, { body, styling }: TrialCase): Verdict {
  try {
    const evaluated = evaluate(draft, body, styling);
    const all = evaluated.ok ? evaluated.value.report.issues : evaluated.issues;
    const issues = all.filter(({ severity }) => severity === 'error');
    if (evaluated.ok) return { outcome: issues.length === 0 ? 'true' : 'not true', issues };
    return { outcome: issues.some(({ code }) => mistakes.includes(code)) ? 'thrown' : 'refused', issues };
  } catch (error) {
    return thrownVerdict(error);
  }
}

/** The verdict where the program itself came to an end over a case. */
export const thrownVerdict = (error: unknown): Verdict => ({
  outcome: 'thrown',
  issues: [
    {
      code: 'program-fault',
      severity: 'error',
      path: '',
      message: error instanceof Error ? error.message : String(error),
    },
  ],
});

import { type Evaluation, evaluate } from '../evaluate.ts';
import { notchesOf } from '../finishing/notches.ts';
import type { Issue } from '../issue.ts';
import type { Draft } from '../pattern/draft.ts';
import { provenSheet } from '../proven-sheet.ts';
import { messageOf } from '../text/message-of.ts';
import { calledAlike } from './called-alike.ts';
import { givenOtherwise } from './given-otherwise.ts';
import type { TrialCase } from './trial-case.ts';
import { undeclared } from './undeclared.ts';

/** What came of one case: a garment that passes every check, none and why, one that fails, or no answer at all. */
export type TrialOutcome = 'true' | 'refused' | 'not true' | 'thrown';

/** The outcome of a case, with what was wrong. Plain data. */
export interface Verdict {
  readonly outcome: TrialOutcome;
  readonly issues: readonly Issue[];
}

/** What a draft of one's own says where it would have thrown. */
const mistakes = ['draft-mistake', 'draft-garment-unfit', 'draft-endless', 'program-fault'];

/** Refusals that are the draft's own fault, whatever the body and the choices. */
const faults = ['draft-cannot-agree'];

/** Whether something should be mended in a draft of which that came. */
export const isFailure = (outcome: TrialOutcome, code: string): boolean =>
  outcome === 'not true' || outcome === 'thrown' || faults.includes(code);

/** Drafts one case and checks it, and where the case asks for that its written sheet and what the draft says shapes it. Never throws. */
export function verdictOf(draft: Draft, { body, styling, readBack }: TrialCase): Verdict {
  try {
    const evaluated = evaluate(draft, body, styling);
    const all = evaluated.ok ? found(draft, evaluated.value, readBack) : evaluated.issues;
    const issues = all.filter(({ severity }) => severity === 'error');
    if (evaluated.ok) return { outcome: issues.length === 0 ? 'true' : 'not true', issues };
    return { outcome: issues.some(({ code }) => mistakes.includes(code)) ? 'thrown' : 'refused', issues };
  } catch (error) {
    return thrownVerdict(error);
  }
}

/** What was found of a garment; where its sheet is read back, also on that, and of what the draft says of itself. */
function found(draft: Draft, made: Evaluation, readBack: true | undefined): readonly Issue[] {
  if (!readBack) return made.report.issues;
  const { report } = provenSheet(made, { notches: notchesOf(made.styling) });
  return [
    ...report.issues,
    ...calledAlike(draft, made.garment),
    ...givenOtherwise(draft, made),
    ...undeclared(draft, made.body, made.styling, made.garment),
  ];
}

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

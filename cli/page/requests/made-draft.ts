import { type Evaluation, evaluate, onlyTrue } from '../../../drafts/index.ts';
import { Unusable } from '../../input/unusable.ts';
import { used } from '../../input/used.ts';
import type { AskedDraft } from '../asked-draft.ts';
import type { Drafting } from '../own-draft/drafting.ts';
import { draftingOf } from '../own-draft/drafting-of.ts';
import type { PageIssue } from '../page-issue.ts';
import { type ReaderUnits, readerUnits } from './reader-units.ts';
import { toldIssues } from './told-issues.ts';

/** A garment drafted as it was asked for, and in which unit whoever asked has lengths. */
export interface MadeDraft {
  readonly drafting: Drafting;
  readonly made: Evaluation;
  readonly units: ReaderUnits;
}

/** Drafts what is asked for. Throws `Unusable` where it cannot be drawn, or is not true. */
export async function madeDraft(asked: AskedDraft): Promise<MadeDraft> {
  const { body, choices } = asked;
  const units = readerUnits(body);
  const drafting = await draftingOf(asked);
  const { draft } = drafting;
  const made = await drafting.done(() =>
    used(onlyTrue(draft, used(evaluate(draft, body, choices), units)), units),
  );
  return { drafting, made, units };
}

/** Why something comes to nothing, gravest first; a fault of the program is thrown on. */
export function refusal(error: unknown): readonly PageIssue[] {
  if (error instanceof Unusable) return toldIssues(error.issues, error.units);
  throw error;
}

import {
  type Draft,
  type Evaluation,
  evaluate,
  garments,
  onlyTrue,
  unitNames,
} from '../../../drafts/index.ts';
import { Unusable } from '../../unusable.ts';
import { used } from '../../used.ts';
import type { AskedDraft } from '../asked-draft.ts';
import type { BodyFields } from '../body-form.ts';
import type { PageIssue } from '../page-issue.ts';
import { toldIssues } from './told-issues.ts';

/** A garment drafted as it was asked for, and in which unit whoever asked has lengths. */
export interface MadeDraft {
  readonly draft: Draft;
  readonly made: Evaluation;
  readonly units: ReaderUnits;
}

/** Lengths are shown in inches to whoever measures in inches, else in mm, as the command line has it. */
export type ReaderUnits = 'mm' | 'in';

export const readerUnits = ({ units }: BodyFields): ReaderUnits =>
  unitNames.find((unit) => unit === units) === 'in' ? 'in' : 'mm';

/** The garment of that name; the dress where there is none. */
export const garmentCalled = (name: string): Draft =>
  Object.values(garments).find((draft) => draft.name === name) ?? garments.dress;

/** Drafts what is asked for. Throws `Unusable` where it cannot be drawn, or is not true. */
export function madeDraft({ body, garment, choices }: AskedDraft): MadeDraft {
  const units = readerUnits(body);
  const draft = garmentCalled(garment);
  const made = used(evaluate(draft, body, choices), units);
  return { draft, made: used(onlyTrue(draft, made), units), units };
}

/** Why something comes to nothing, gravest first; a fault of the program is thrown on. */
export function refusal(error: unknown): readonly PageIssue[] {
  if (error instanceof Unusable) return toldIssues(error.issues, error.units);
  throw error;
}

import { evaluate, type TurnedRules } from '../../../drafts/index.ts';
import { Unusable } from '../../input/unusable.ts';
import type { AskedDraft } from '../asked-draft.ts';
import { draftingOf } from '../own-draft/drafting-of.ts';
import type { PageIssue } from '../page-issue.ts';
import { type Lesson, lessonOf } from '../views/learn/lesson.ts';
import { toldIssues } from './told-issues.ts';

export interface LessonRequest extends AskedDraft {
  readonly kind: 'lesson';
  /** What the answer is known by. */
  readonly key: string;
  readonly turned: TurnedRules;
}

export interface LessonAnswer {
  readonly kind: 'lesson';
  readonly key: string;
  /** None where nothing can be drawn with the rules turned so. */
  readonly lesson?: Lesson;
  readonly issues: readonly PageIssue[];
}

/** The construction with rules turned. Never fails: a rule can be turned to what no drawing survives. */
export async function turnedLesson(asked: LessonRequest): Promise<LessonAnswer> {
  const { key, body, choices, turned } = asked;
  const units = body.units === 'in' ? 'in' : 'mm';
  try {
    const { draft, done } = await draftingOf(asked, turned);
    const made = await done(() => evaluate(draft, body, choices));
    if (!made.ok) return { kind: 'lesson', key, issues: toldIssues(made.issues, units) };
    const lesson = lessonOf(made.value, draft.choices, units);
    return { kind: 'lesson', key, lesson, issues: toldIssues(made.value.report.issues, units) };
  } catch (error) {
    if (error instanceof Unusable) return { kind: 'lesson', key, issues: toldIssues(error.issues, units) };
    const message = 'Nothing can be drawn with the rules turned so.';
    return { kind: 'lesson', key, issues: [{ code: 'program-fault', severity: 'error', path: '', message }] };
  }
}

import { evaluate, garments, type TurnedRules, withRulesTurned } from '../../../drafts/index.ts';
import type { BodyFields } from '../body-form.ts';
import type { PageIssue } from '../page-issue.ts';
import { type Lesson, lessonOf } from '../views/learn/lesson.ts';
import { toldIssues } from './told-issues.ts';

export interface LessonRequest {
  readonly kind: 'lesson';
  /** What the answer is known by. */
  readonly key: string;
  readonly body: BodyFields;
  readonly garment: string;
  readonly choices: Readonly<Record<string, string>>;
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
export function turnedLesson({ key, body, garment, choices, turned }: LessonRequest): LessonAnswer {
  const draft = Object.values(garments).find(({ name }) => name === garment) ?? garments.dress;
  const units = body.units === 'in' ? 'in' : 'mm';
  try {
    const made = withRulesTurned(turned, () => evaluate(draft, body, choices));
    if (!made.ok) return { kind: 'lesson', key, issues: toldIssues(made.issues, units) };
    const lesson = lessonOf(made.value, draft.choices, units);
    return { kind: 'lesson', key, lesson, issues: toldIssues(made.value.report.issues, units) };
  } catch {
    const message = 'Nothing can be drawn with the rules turned so.';
    return { kind: 'lesson', key, issues: [{ code: 'program-fault', severity: 'error', path: '', message }] };
  }
}

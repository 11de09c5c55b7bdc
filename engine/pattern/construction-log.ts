import { type IssueBook, issueBook } from './issue-book.ts';
import type { Rule } from './rule.ts';
import { type StepLog, stepLog } from './step-log.ts';
import { outcome } from './step-text.ts';

/** What a step leans on: a numbered rule, a publication, or the measurement itself. */
type Source = Rule | string;

/**
 * Writes down a draft as it is made: each step with its title, how it is found with the numbers of this body
 * put in, and its source. The value passes straight through, so a step reads as the assignment it is.
 */
export interface ConstructionLog extends IssueBook {
  /** A length, returned as given (mm). */
  readonly mm: (title: string, how: string, value: number, source: Source) => number;
  /** An angle, returned as given (radians; written in degrees). */
  readonly angle: (title: string, how: string, value: number, source: Source) => number;
  /** A plain ratio or share, returned as given. */
  readonly ratio: (title: string, how: string, value: number, source: Source) => number;
  /** A step that gives no number. */
  readonly say: (title: string, text: string, source: Source) => void;
}

export { degrees, figure } from './written.ts';

/** Writes into a log of steps and a book of issues, new ones unless they are given. */
export function constructionLog(
  { take }: Pick<StepLog, 'take'> = stepLog(),
  issues: IssueBook = issueBook(),
): ConstructionLog {
  const named = (source: Source): string =>
    typeof source === 'string' ? source : `${source.id}, ${source.source}`;
  const valued =
    (unit: 'mm' | 'rad' | 'ratio') =>
    (title: string, how: string, value: number, source: Source): number => {
      const text = `${how} = ${outcome(value, unit)}`;
      take({ title, text, from: [], source: named(source), value, unit });
      return value;
    };
  return {
    ...issues,
    mm: valued('mm'),
    angle: valued('rad'),
    ratio: valued('ratio'),
    say: (title, text, source) => {
      take({ title, text, from: [], source: named(source) });
    },
  };
}

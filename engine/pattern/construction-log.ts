import type { Issue } from '../issue.ts';
import type { Step } from './garment.ts';
import type { Rule } from './rule.ts';

/** What a step leans on: a numbered rule, a publication, or the measurement itself. */
type Source = Rule | string;

/**
 * Writes down a draft as it is made: each step with its title, how it is found with the numbers of this body
 * put in, and its source. The value passes straight through, so a step reads as the assignment it is.
 */
export interface ConstructionLog {
  /** A length, returned as given (mm). */
  readonly mm: (title: string, how: string, value: number, source: Source) => number;
  /** An angle, returned as given (radians; written in degrees). */
  readonly angle: (title: string, how: string, value: number, source: Source) => number;
  /** A plain ratio or share, returned as given. */
  readonly ratio: (title: string, how: string, value: number, source: Source) => number;
  /** A step that gives no number. */
  readonly say: (title: string, text: string, source: Source) => void;
  /** A step that cannot be drawn for this body: nothing is cut once one is refused. */
  readonly refuse: (issue: Issue) => void;
  readonly refusals: () => readonly Issue[];
  /** Something to be said of the garment that does not stand in its way. */
  readonly remark: (issue: Issue) => void;
  readonly remarks: () => readonly Issue[];
  /** All steps so far, numbered from 1. */
  readonly steps: () => readonly Step[];
}

/** A number as a step writes it: at most one decimal. */
export const figure = (value: number): string => String(Math.round(value * 10) / 10);

/** An angle in degrees as a step writes it, from radians. */
export const degrees = (angle: number): string => `${figure((angle * 180) / Math.PI)}°`;

/** Starts an empty log. */
export function constructionLog(): ConstructionLog {
  const steps: Step[] = [];
  const refused: Issue[] = [];
  const remarked: Issue[] = [];
  const say = (title: string, text: string, source: Source): void => {
    const named = typeof source === 'string' ? source : `${source.id}, ${source.source}`;
    steps.push({ number: steps.length + 1, title, text, source: named });
  };
  const valued =
    (write: (value: number) => string) =>
    (title: string, how: string, value: number, source: Source): number => {
      say(title, `${how} = ${write(value)}`, source);
      return value;
    };
  return {
    mm: valued((value) => `${figure(value)} mm`),
    angle: valued(degrees),
    ratio: valued((value) => String(Math.round(value * 100) / 100)),
    say,
    refuse: (issue) => {
      refused.push(issue);
    },
    refusals: () => [...refused],
    remark: (issue) => {
      remarked.push(issue);
    },
    remarks: () => [...remarked],
    steps: () => [...steps],
  };
}

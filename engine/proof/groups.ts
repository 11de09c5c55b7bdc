import type { Issue } from '../issue.ts';
import type { TrialCase } from './trial-case.ts';
import { isFailure, type TrialOutcome, type Verdict } from './verdict.ts';

/** What came of several cases alike: the outcome and the code that was said, how often, and the smallest case of it. */
export interface Group {
  readonly outcome: Exclude<TrialOutcome, 'true'>;
  readonly code: string;
  readonly failure: boolean;
  readonly count: number;
  readonly smallest: TrialCase;
  readonly issue: Issue;
}

/** A case and what came of it. */
export interface Tried {
  readonly trial: TrialCase;
  readonly verdict: Verdict;
}

const gravest: readonly TrialOutcome[] = ['thrown', 'not true', 'refused'];

/**
 * The cases that were not drawn true, by what is wrong: failures first, the gravest before, and of those alike the ones
 * whose smallest case has the fewest choices made otherwise.
 */
export function grouped(tried: readonly Tried[]): readonly Group[] {
  const groups = new Map<string, Group>();
  for (const { trial, verdict } of tried) {
    const { outcome, issues } = verdict;
    if (outcome === 'true') continue;
    for (const issue of new Map(issues.toReversed().map((each) => [each.code, each])).values()) {
      const key = `${outcome} ${issue.code}`;
      const before = groups.get(key);
      const smaller = !before || changed(trial) < changed(before.smallest);
      groups.set(key, {
        outcome,
        code: issue.code,
        failure: isFailure(outcome, issue.code),
        count: (before?.count ?? 0) + 1,
        smallest: smaller ? trial : before.smallest,
        issue: smaller ? issue : before.issue,
      });
    }
  }
  const rank = ({ failure, outcome }: Group): number =>
    gravest.indexOf(outcome) - (failure ? gravest.length : 0);
  return [...groups.values()].toSorted(
    (a, b) => rank(a) - rank(b) || changed(a.smallest) - changed(b.smallest) || b.count - a.count,
  );
}

const changed = ({ styling }: TrialCase): number => Object.keys(styling).length;

import { type Solver, solve } from '../constraints/solve.ts';
import { type Evaluation, evaluate } from '../evaluate.ts';
import type { Result } from '../issue.ts';
import { onlyTrue } from '../only-true.ts';
import type { Draft } from '../pattern/draft.ts';
import { atSize } from './at-size.ts';
import type { Chart, ChartSize } from './chart.ts';

/**
 * Drafts one size of a chart from its own measurements, over the styling of all sizes its own. Fails as `evaluate` does, each
 * issue at its size.
 */
export function draftSize(
  draft: Draft,
  size: ChartSize,
  styling: object,
  solver: Solver = solve,
): Result<Evaluation> {
  const made = evaluate(draft, size.body, { ...styling, ...size.styling }, solver);
  return made.ok ? made : { ok: false, issues: made.issues.map((issue) => atSize(size.name, issue)) };
}

/** A drafted size that is true, or why it is refused, each issue at its size. */
export function sizeToMake(draft: Draft, { name }: ChartSize, made: Evaluation): Result<Evaluation> {
  const kept = onlyTrue(draft, made);
  return kept.ok ? kept : { ok: false, issues: kept.issues.map((issue) => atSize(name, issue)) };
}

/** Drafts every row of a chart, one at a time, in its order, each as it would be alone. */
export function* draftSizes(draft: Draft, chart: Chart, styling: object): Generator<Result<Evaluation>> {
  for (const row of chart.rows) yield draftSize(draft, row, styling);
}

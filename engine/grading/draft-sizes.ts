import { foretold, type Weighed } from '../constraints/foretold.ts';
import type { Found, Solution } from '../constraints/solution.ts';
import { type Solver, solve, solveNear } from '../constraints/solve.ts';
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

/**
 * Drafts every row of a chart, one at a time, in its order. Each is solved as it would be alone, and to the same accuracy,
 * but looked for where its neighbours in the run foretell it, in fewer steps. What stands beside the run is looked for
 * from the start.
 */
export function* draftSizes(draft: Draft, chart: Chart, styling: object): Generator<Result<Evaluation>> {
  const solved = new Map<string, readonly Solution[]>();
  for (const row of chart.rows) {
    const near = row.alone ? [] : neighbours(chart, row, solved);
    const own: Solution[] = [];
    yield draftSize(draft, row, styling, (sketch) => {
      const answer = nearAnswer(near, own.length);
      const solution = answer ? solveNear(sketch, answer) : solve(sketch);
      own.push(solution);
      return solution;
    });
    if (!row.alone) solved.set(keyOf(row), own);
  }
}

/** What was found for the sketches of a size, in their order, and how often it counts. */
interface Neighbour {
  readonly solutions: readonly Solution[];
  readonly times: number;
}

const keyOf = ({ size, cup }: { readonly size: string; readonly cup: string }): string => `${size}\n${cup}`;

/**
 * The sizes that foretell another, by what has been drafted of the size before and the cup before: with both and the one
 * between them, the step of the one added to the other; else the last step of the run once more; else the one there is.
 */
function neighbours(
  { sizes, cups }: Chart,
  { size, cup }: ChartSize,
  solved: ReadonlyMap<string, readonly Solution[]>,
): readonly Neighbour[] {
  const [row, column] = [sizes.indexOf(size), cups.indexOf(cup)];
  const at = (up: number, left: number, times: number): readonly Neighbour[] => {
    const [other, letter] = [sizes[row - up], cups[column - left]];
    const solutions =
      other !== undefined && letter !== undefined && solved.get(keyOf({ size: other, cup: letter }));
    return solutions ? [{ solutions, times }] : [];
  };
  const ways = [
    [...at(1, 0, 1), ...at(0, 1, 1), ...at(1, 1, -1)],
    [...at(1, 0, 2), ...at(2, 0, -1)],
    [...at(0, 1, 2), ...at(0, 2, -1)],
  ];
  const full = ways.find((way, i) => way.length === (i === 0 ? 3 : 2));
  return full ?? [...at(0, 1, 1), ...at(1, 0, 1)].slice(0, 1);
}

/** Where the answer of the sketch in this place is foretold. */
function nearAnswer(near: readonly Neighbour[], place: number): Found | undefined {
  const weighed = near.flatMap(({ solutions, times }): readonly Weighed[] => {
    const found = solutions[place];
    return found ? [{ found, times }] : [];
  });
  return weighed.length > 0 && weighed.length === near.length ? foretold(weighed) : undefined;
}

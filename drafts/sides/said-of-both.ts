import type { Issue } from '../../engine/issue.ts';
import type { Notion, Step } from '../../engine/pattern/garment.ts';
import { sides } from '../../engine/pattern/side.ts';
import { alike, inPairs } from './alike.ts';
import { sided } from './as-worn.ts';

/** The notions of both sides: where they differ, half of them for each. */
export const notionsOfBoth = (right: readonly Notion[], left: readonly Notion[]): readonly Notion[] =>
  inPairs(right, left, ({ name }) => name).flatMap((pair) => {
    if (alike(pair.right, pair.left)) return [pair.right];
    const { name, count } = pair.right;
    if (count % 2 !== 0) throw new Error(`There are ${count} of the ${name}, but left and right differ.`);
    return sides.map((side) => ({ ...pair[side], name: sided(side, name), count: count / 2 }));
  });

/** The construction of both sides: that of the right, then what is otherwise on the left. */
export function stepsOfBoth(right: readonly Step[], left: readonly Step[]): readonly Step[] {
  const without = (steps: readonly Step[]): ReadonlySet<string> => new Set(steps.map(words));
  const [onRight, onLeft] = [without(right), without(left)];
  const own = (step: Step, side: string): Step => ({ ...step, title: `On the ${side}: ${step.title}` });
  return [
    ...right.map((step) => (onLeft.has(words(step)) ? step : own(step, 'right'))),
    ...left.filter((step) => !onRight.has(words(step))).map((step) => own(step, 'left')),
  ].map((step, i) => ({ ...step, number: i + 1 }));
}

const words = ({ title, text, source }: Step): string => [title, text, source].join('\n');

/** What there is to say of both sides, each thing once; of one alone, with its side. */
export function issuesOfBoth(right: readonly Issue[], left: readonly Issue[]): readonly Issue[] {
  const said = (issues: readonly Issue[], issue: Issue): boolean =>
    issues.some((other) => alike(issue, other));
  const own = (issue: Issue, side: string): Issue => ({
    ...issue,
    message: `On the ${side} side: ${issue.message}`,
  });
  return [
    ...right.map((issue) => (said(left, issue) ? issue : own(issue, 'right'))),
    ...left.filter((issue) => !said(right, issue)).map((issue) => own(issue, 'left')),
  ];
}

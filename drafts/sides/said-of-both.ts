import type { Issue } from '../../engine/issue.ts';
import type { Notion, Step } from '../../engine/pattern/garment.ts';
import type { Ground } from '../../engine/pattern/quantity.ts';
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
  const onLeft = new Set(left.map(words));
  const onRight = new Map(right.map((step) => [words(step), step.number]));
  const own = (step: Step, side: string): Step => ({ ...step, title: `On the ${side}: ${step.title}` });
  const onlyLeft = left.filter((step) => !onRight.has(words(step)));
  const newNumbers = new Map([
    ...left.flatMap((step): [number, number][] => {
      const number = onRight.get(words(step));
      return number === undefined ? [] : [[step.number, number]];
    }),
    ...onlyLeft.map((step, i): [number, number] => [step.number, right.length + i + 1]),
  ]);
  const renumbered = (ground: Ground): Ground =>
    ground.origin.kind === 'step'
      ? { ...ground, origin: { ...ground.origin, number: newNumbers.get(ground.origin.number) ?? 0 } }
      : ground;
  return [
    ...right.map((step) => (onLeft.has(words(step)) ? step : own(step, 'right'))),
    ...onlyLeft.map((step, i) => ({
      ...own(step, 'left'),
      number: right.length + i + 1,
      from: step.from.map(renumbered),
    })),
  ];
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

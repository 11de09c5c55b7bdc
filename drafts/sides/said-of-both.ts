import { sides } from '../../engine/body/side.ts';
import type { Issue } from '../../engine/issue.ts';
import type { Dimension } from '../../engine/pattern/dimension.ts';
import type { Notion, Step, StepDrawing } from '../../engine/pattern/garment.ts';
import type { Ground } from '../../engine/pattern/quantity.ts';
import { stepText } from '../../engine/pattern/step-text.ts';
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

/**
 * The construction of both sides: that of the right, then what is otherwise on the left, in words or on paper; that is
 * drawn on drawings of its own.
 */
export function stepsOfBoth(right: readonly Step[], left: readonly Step[]): readonly Step[] {
  const [onRight, onLeft] = [byWords(right), byWords(left)];
  const same = (step: Step, others: ReadonlyMap<string, Step>): Step | undefined => {
    const other = others.get(words(step));
    return other && alike(step.draws ?? {}, other.draws ?? {}) ? other : undefined;
  };
  const own = (step: Step, side: string): Step => ({ ...step, title: `On the ${side}: ${step.title}` });
  const onlyLeft = left.filter((step) => !same(step, onRight));
  const newNumbers = new Map(
    left.map((step) => [
      step.number,
      same(step, onRight)?.number ?? right.length + onlyLeft.indexOf(step) + 1,
    ]),
  );
  const renumbered = (ground: Ground): Ground =>
    ground.origin.kind === 'step'
      ? { ...ground, origin: { ...ground.origin, number: newNumbers.get(ground.origin.number) ?? 0 } }
      : ground;
  return [
    ...right.map((step) => (same(step, onLeft) ? step : own(step, 'right'))),
    ...onlyLeft.map((step, i) => ({
      ...own(step, 'left'),
      number: right.length + i + 1,
      from: step.from.map(renumbered),
      ...(step.draws ? { draws: onLeftDrawings(step.draws) } : {}),
      ...(step.dimensions
        ? {
            dimensions: step.dimensions.map((each) => ({
              ...onLeftDimension(each),
              of: renumbered(each.of),
            })),
          }
        : {}),
    })),
  ];
}

const byWords = (steps: readonly Step[]): ReadonlyMap<string, Step> =>
  new Map(steps.map((step) => [words(step), step]));

function onLeftDrawings({ points, lines }: StepDrawing): StepDrawing {
  return { points: points.map(onLeftSide), lines: lines.map(onLeftSide) };
}

const onLeftDimension = (dimension: Dimension): Dimension =>
  dimension.kind === 'parts'
    ? { ...dimension, parts: dimension.parts.map(onLeftSide) }
    : onLeftSide(dimension);

const onLeftSide = <T extends { readonly on: string }>(each: T): T => ({ ...each, on: `left ${each.on}` });

const words = (step: Step): string => [step.title, stepText(step, 'mm'), step.source].join('\n');

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

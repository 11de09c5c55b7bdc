import type { TaughtStep } from './lesson.ts';
import { type PointedNumber, restingOn, type ShownLesson } from './own.ts';

/**
 * The steps whose lines are lit for the number that is pointed at: what rests on it; what moved with it where it is a turned
 * rule; the step it was found in. Where it is shown as a length, what rests on a measurement or a choice is not lit too.
 */
export function litSteps(
  shown: ShownLesson,
  step: TaughtStep,
  pointed: PointedNumber | undefined,
  measured: boolean,
): ReadonlySet<number> {
  const { lesson, turned, moved } = shown;
  if (pointed === undefined) return new Set();
  if (pointed === 'outcome') return restingOn(step.number, lesson);
  const ground = step.grounds[pointed];
  if (!ground) return new Set();
  if (ground.rule && ground.rule.id in turned) return moved.drawn;
  if (ground.step !== undefined) return new Set([ground.step]);
  if (measured) return new Set();
  const straight = lesson.steps.filter(({ grounds }) =>
    grounds.some(({ name, from }) => name === ground.name && from === ground.from),
  );
  return new Set(straight.flatMap(({ number }) => [...restingOn(number, lesson)]));
}

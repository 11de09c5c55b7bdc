import { type Dimension, dimensionBy, dimensionOf } from './dimension.ts';
import type { Lesson, TaughtGround, TaughtStep } from './lesson.ts';
import type { PointedNumber } from './own.ts';

/** A number as it is marked on the drawing. */
interface SeenNumber {
  readonly dimension: Dimension;
  readonly amount: string | undefined;
  /** The step that is seen instead, which was found from it. */
  readonly by?: TaughtStep;
}

/** Where the number that is pointed at is to be seen: as a length, or in the length of what rests on it. */
export function numberSeen(
  lesson: Lesson,
  step: TaughtStep,
  pointed: PointedNumber | undefined,
): SeenNumber | undefined {
  const ground = typeof pointed === 'number' ? step.grounds[pointed] : undefined;
  if (pointed === undefined || (pointed !== 'outcome' && !ground)) return undefined;
  const { mm, amount } = ground ?? step;
  const dimension = mm === undefined ? undefined : dimensionOf(mm, step, lesson);
  if (dimension) return { dimension, amount };
  const found = dimensionBy(stepsFrom(lesson, step, ground), lesson);
  return found && { ...found, amount: `${found.by.title} ${found.by.amount ?? ''}` };
}

/** The steps that a number goes into: for a number that a step came to, that step. */
function stepsFrom(
  { steps }: Lesson,
  step: TaughtStep,
  ground: TaughtGround | undefined,
): readonly TaughtStep[] {
  if (!ground) return [step];
  if (ground.step !== undefined) return steps.filter(({ number }) => number === ground.step);
  return steps.filter(({ grounds }) =>
    grounds.some(({ name, from }) => name === ground.name && from === ground.from),
  );
}

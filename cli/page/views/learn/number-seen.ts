import { stepNumber, type TaughtDimension } from './dimension.ts';
import type { Lesson, TaughtGround, TaughtStep } from './lesson.ts';
import { drawingOf } from './lesson-drawings.ts';
import type { PointedNumber } from './own.ts';

/** How a number that is pointed at is seen on the drawing: as a length, in the length of what was found from it, or why not. */
export type SeenNumber =
  | { readonly as: 'length'; readonly dimension: TaughtDimension; readonly amount: string | undefined }
  | { readonly as: 'found from it'; readonly dimension: TaughtDimension; readonly by: TaughtStep }
  | { readonly as: 'nothing' | 'plain number' | 'angle' | 'no line' };

/** Where the number that is pointed at is to be seen. */
export function numberSeen(
  lesson: Lesson,
  step: TaughtStep,
  pointed: PointedNumber | undefined,
): SeenNumber | undefined {
  const ground = typeof pointed === 'number' ? step.grounds[pointed] : undefined;
  if (pointed === undefined || (pointed !== 'outcome' && !ground)) return undefined;
  const { mm, amount } = ground ?? step;
  const dimension = dimensionOf(ground?.number ?? stepNumber(step.number), step, lesson);
  if (dimension) return { as: 'length', dimension, amount };
  for (const by of foundFrom(lesson, step, ground)) {
    const there = dimensionOf(stepNumber(by.number), by, lesson);
    if (there) return { as: 'found from it', dimension: there, by };
  }
  if (mm !== undefined) return { as: Math.abs(mm) < NOTHING ? 'nothing' : 'no line' };
  return { as: amount?.endsWith('°') ? 'angle' : 'plain number' };
}

/** A length below this is written as 0 (mm). */
const NOTHING = 0.05;

/** Where a number lies that is known so: on the drawing of the step rather than on another. */
function dimensionOf(number: string, step: TaughtStep, lesson: Lesson): TaughtDimension | undefined {
  const found = lesson.dimensions.filter(({ of }) => of === number);
  const on = drawingOf(lesson, step.number);
  return found.find((dimension) => dimension.on === on) ?? found[0];
}

/** The step in which a number is pointed at, if it is one that goes into it; then the steps straight on that, or on the outcome. */
function foundFrom(
  { steps }: Lesson,
  step: TaughtStep,
  ground: TaughtGround | undefined,
): readonly TaughtStep[] {
  const next = steps.filter(({ grounds }) => grounds.some((each) => each.step === step.number));
  return ground ? [step, ...next] : next;
}

import { SHORTEST, stepNumber, type TaughtDimension } from './dimension.ts';
import type { Lesson, TaughtGround, TaughtStep } from './lesson.ts';
import { drawingOf } from './lesson-drawings.ts';
import type { PointedNumber } from './own.ts';

/** How a number that is pointed at is seen on the drawing: as a length, in the length of what was found from it, or why not. */
export type SeenNumber =
  | { readonly as: 'length'; readonly dimension: TaughtDimension; readonly amount: string | undefined }
  | {
      readonly as: 'found from it';
      readonly dimension: TaughtDimension;
      readonly by: TaughtStep;
      /** Whether other numbers lie between it and what was found. */
      readonly atLast: boolean;
    }
  /** Nothing that lies on the drawing rests on it, or it comes to nothing. */
  | { readonly as: 'nothing' | 'plain number' | 'angle' | 'no line' };

/** Where the number that is pointed at is to be seen: on the drawing that was chosen rather than on another, where it lies there. */
export function numberSeen(
  lesson: Lesson,
  step: TaughtStep,
  pointed: PointedNumber | undefined,
  chosen?: string,
): SeenNumber | undefined {
  const ground = typeof pointed === 'number' ? step.grounds[pointed] : undefined;
  if (pointed === undefined || (pointed !== 'outcome' && !ground)) return undefined;
  const { mm, amount } = ground ?? step;
  const dimension = dimensionOf(ground?.number ?? stepNumber(step.number), step, lesson, chosen);
  if (dimension) return { as: 'length', dimension, amount };
  if (mm !== undefined && Math.abs(mm) < NOTHING) return { as: 'nothing' };
  for (const { by, atLast } of foundFrom(lesson, step, ground)) {
    const there = dimensionOf(stepNumber(by.number), by, lesson, chosen);
    if (there) return { as: 'found from it', dimension: there, by, atLast };
  }
  if (mm !== undefined) return { as: Math.abs(mm) < SHORTEST ? 'nothing' : 'no line' };
  return { as: amount?.endsWith('°') ? 'angle' : 'plain number' };
}

/** A length below this is written as 0 (mm). */
const NOTHING = 0.05;

/** Where a number lies that is known so: on the drawing that was chosen, else on that of the step, rather than on another. */
function dimensionOf(
  number: string,
  step: TaughtStep,
  lesson: Lesson,
  chosen: string | undefined,
): TaughtDimension | undefined {
  const found = lesson.dimensions.filter(({ of }) => of === number);
  for (const on of [chosen, drawingOf(lesson, step.number)]) {
    const there =
      on !== undefined && found.map((each) => lyingOn(each, on)).find((each) => each !== undefined);
    if (there) return there;
  }
  return found[0];
}

/** The dimension as it is seen on a drawing, if it, or a part of it, lies there. */
function lyingOn(dimension: TaughtDimension, on: string): TaughtDimension | undefined {
  if (dimension.on === on) return dimension;
  const lies = dimension.kind === 'parts' && dimension.parts.some((part) => part.on === on);
  return lies ? { ...dimension, on } : undefined;
}

/** A step that rests on a number, straight or by others. */
interface Resting {
  readonly by: TaughtStep;
  readonly atLast: boolean;
}

/**
 * The steps that rest on a number, the nearest first: the one in which it is pointed at, if it is one that goes into that; those
 * straight on its outcome; then those on these, down the whole way.
 */
function foundFrom(
  { steps }: Lesson,
  step: TaughtStep,
  ground: TaughtGround | undefined,
): readonly Resting[] {
  const found: Resting[] = ground ? [{ by: step, atLast: false }] : [];
  const met = new Set([step.number]);
  let last = new Set([step.number]);
  for (let straight = true; last.size > 0; straight = false) {
    const next = steps.filter(
      ({ number, grounds }) =>
        !met.has(number) && grounds.some((each) => each.step !== undefined && last.has(each.step)),
    );
    for (const by of next) {
      found.push({ by, atLast: !straight });
      met.add(by.number);
    }
    last = new Set(next.map(({ number }) => number));
  }
  return found;
}

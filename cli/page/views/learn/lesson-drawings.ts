import type { Lesson } from './lesson.ts';

/** The names of all drawings of a lesson, in the order in which they are begun. */
export const drawingNames = ({ steps }: Lesson): readonly string[] => [
  ...new Set(steps.flatMap(({ draws }) => draws.map(({ on }) => on))),
];

/** The drawing to show with a step: the one it draws on, else that of the last step before it that draws, else the first. */
export function drawingOf({ steps }: Lesson, step: number): string | undefined {
  const drawing = steps.filter(({ draws }) => draws.length > 0);
  const before = drawing.findLast(({ number }) => number <= step) ?? drawing[0];
  return before?.draws.at(-1)?.on;
}

import type { Lesson, TaughtPoint, TaughtStep } from './lesson.ts';

/** A length as it lies on a drawing: straight from one place to another (mm of the body), or along a line. */
export type Dimension = { readonly on: string; readonly half: boolean } & (
  | { readonly kind: 'straight'; readonly from: TaughtPlace; readonly to: TaughtPlace }
  | { readonly kind: 'line'; readonly name: string; readonly d: string }
);

interface TaughtPlace {
  readonly x: number;
  readonly y: number;
}

/** A length and a distance of the drawing this far apart are the same: both were reckoned from the same number (mm). */
const SAME = 1e-4;

/** A shorter length would be all but a point on the drawing (mm). */
const SHORTEST = 1;

/**
 * Where a length, or else half of it, lies on the drawings of a lesson: how far a point stands out from the lines that the
 * drawing begins with, or from another point, level, plumb or straight across; or how long a line is. Looked for first in
 * what the step itself draws, then in what stands already, from the newest, then in what is yet to be drawn. None where it
 * is nowhere to be seen.
 */
export function dimensionOf(mm: number, step: TaughtStep, lesson: Lesson): Dimension | undefined {
  const length = Math.abs(mm);
  if (length < SHORTEST) return undefined;
  return found(length, step, lesson, false) ?? found(length / 2, step, lesson, true);
}

/** A number that is seen on the drawing in what was found from it. */
export interface DimensionBy {
  readonly dimension: Dimension;
  readonly by: TaughtStep;
}

/** So many steps that rest on a number are looked through at the most. */
const looked = 24;

/** Where a number shows that is no length of the drawing itself: in the nearest step that rests on one of these and is one. */
export function dimensionBy(steps: readonly TaughtStep[], lesson: Lesson): DimensionBy | undefined {
  const seen = new Set(steps.map(({ number }) => number));
  const queue = [...steps];
  for (let i = 0; i < Math.min(queue.length, looked); i++) {
    const by = queue[i];
    if (!by) return undefined;
    const dimension = by.mm === undefined ? undefined : dimensionOf(by.mm, by, lesson);
    if (dimension) return { dimension, by };
    for (const next of lesson.steps)
      if (!seen.has(next.number) && next.grounds.some(({ step }) => step === by.number)) {
        seen.add(next.number);
        queue.push(next);
      }
  }
  return undefined;
}

function found(mm: number, step: TaughtStep, { steps }: Lesson, half: boolean): Dimension | undefined {
  const before = steps.filter(({ number }) => number < step.number).toReversed();
  const later = steps.filter(({ number }) => number > step.number);
  for (const each of [step, ...before, ...later])
    for (const { on, points, lines } of each.draws) {
      const standing = steps
        .filter(({ number }) => number <= each.number)
        .flatMap(({ draws }) => draws.filter((drawing) => drawing.on === on))
        .flatMap((drawing) => drawing.points);
      for (const point of points) {
        const stretch = fromAxes(mm, point) ?? fromPoints(mm, point, standing);
        if (stretch) return { kind: 'straight', on, half, ...stretch };
      }
      const line = lines.find(({ length }) => same(length, mm));
      if (line) return { kind: 'line', on, half, name: line.name, d: line.d };
    }
  return undefined;
}

interface Stretch {
  readonly from: TaughtPlace;
  readonly to: TaughtPlace;
}

const same = (a: number, b: number): boolean => Math.abs(Math.abs(a) - b) < SAME;

function fromAxes(mm: number, { x, y }: TaughtPoint): Stretch | undefined {
  if (same(y, mm)) return { from: { x, y: 0 }, to: { x, y } };
  if (same(x, mm)) return { from: { x: 0, y }, to: { x, y } };
  return undefined;
}

function fromPoints(mm: number, to: TaughtPoint, standing: readonly TaughtPoint[]): Stretch | undefined {
  const straight = standing.find(({ x, y }) => same(Math.hypot(to.x - x, to.y - y), mm));
  if (straight) return { from: straight, to };
  const plumb = standing.find(({ y }) => same(to.y - y, mm));
  if (plumb) return { from: { x: to.x, y: plumb.y }, to };
  const level = standing.find(({ x }) => same(to.x - x, mm));
  return level ? { from: { x: level.x, y: to.y }, to } : undefined;
}

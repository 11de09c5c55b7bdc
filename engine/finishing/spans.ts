import type { Point } from '../geometry/point.ts';

/** From where to where a straight line across a polygon runs inside it. */
export type InsideSpan = readonly [from: number, to: number];

/** The spans inside a polygon on the line on which `axis` is `at`, told by the other axis, mm. Touching it in a corner is no crossing. */
export function spansAt(corners: readonly Point[], axis: 'x' | 'y', at: number): readonly InsideSpan[] {
  const along = axis === 'x' ? 'y' : 'x';
  const met: number[] = [];
  let before = corners.at(-1);
  for (const corner of corners) {
    if (before && before[axis] < at !== corner[axis] < at) {
      const share = (at - before[axis]) / (corner[axis] - before[axis]);
      met.push(before[along] + share * (corner[along] - before[along]));
    }
    before = corner;
  }
  met.sort((a, b) => a - b);
  return Array.from(
    { length: met.length >> 1 },
    (_, i): InsideSpan => [met[2 * i] ?? 0, met[2 * i + 1] ?? 0],
  );
}

/** Whether a length lies in one of the spans, or sticks out by no more than `slack`. */
export const liesIn = (
  spans: readonly InsideSpan[],
  middle: number,
  length: number,
  slack: number,
): boolean =>
  spans.some(([from, to]) => from <= middle - length / 2 + slack && middle + length / 2 - slack <= to);

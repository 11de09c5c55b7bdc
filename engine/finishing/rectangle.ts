import type { Point } from '../geometry/point.ts';
import type { Stroke } from './chords.ts';

/** An upright rectangle, as a label takes up: its middle and its size, mm. */
export interface Rectangle {
  readonly middle: Point;
  readonly width: number;
  readonly height: number;
}

/** Shortest distance from a rectangle, its inside included, to a stroke, mm; 0 where they touch or overlap. Exact. */
export function distanceToStroke(rectangle: Rectangle, stroke: Stroke): number {
  const halfWidth = rectangle.width / 2;
  const halfHeight = rectangle.height / 2;
  const ax = stroke.from.x - rectangle.middle.x;
  const ay = stroke.from.y - rectangle.middle.y;
  const dx = stroke.to.x - stroke.from.x;
  const dy = stroke.to.y - stroke.from.y;
  if (enters(ax, ay, dx, dy, halfWidth, halfHeight)) return 0;
  // Two convex shapes that do not meet are nearest at a corner of one or the other.
  return Math.min(
    beyond(ax, ay, halfWidth, halfHeight),
    beyond(ax + dx, ay + dy, halfWidth, halfHeight),
    fromStroke(halfWidth, halfHeight, ax, ay, dx, dy),
    fromStroke(-halfWidth, halfHeight, ax, ay, dx, dy),
    fromStroke(halfWidth, -halfHeight, ax, ay, dx, dy),
    fromStroke(-halfWidth, -halfHeight, ax, ay, dx, dy),
  );
}

/** A distance, quickly found, that a rectangle and a stroke are apart at least, mm: along the axis where it is more. */
export function leastDistanceToStroke({ middle, width, height }: Rectangle, { from, to }: Stroke): number {
  const across = Math.max(Math.min(from.x, to.x) - middle.x, middle.x - Math.max(from.x, to.x)) - width / 2;
  const along = Math.max(Math.min(from.y, to.y) - middle.y, middle.y - Math.max(from.y, to.y)) - height / 2;
  return Math.max(0, across, along);
}

/** Whether the stroke a + t d, t in [0, 1], meets the rectangle about the origin (Liang and Barsky 1984). */
function enters(ax: number, ay: number, dx: number, dy: number, w: number, h: number): boolean {
  let first = 0;
  let last = 1;
  for (const [start, step, half] of [
    [ax, dx, w],
    [ay, dy, h],
  ] as const) {
    if (step === 0) {
      if (Math.abs(start) > half) return false;
      continue;
    }
    const t1 = (-half - start) / step;
    const t2 = (half - start) / step;
    first = Math.max(first, Math.min(t1, t2));
    last = Math.min(last, Math.max(t1, t2));
  }
  return first <= last;
}

const beyond = (x: number, y: number, w: number, h: number): number =>
  Math.hypot(Math.max(0, Math.abs(x) - w), Math.max(0, Math.abs(y) - h));

function fromStroke(x: number, y: number, ax: number, ay: number, dx: number, dy: number): number {
  const square = dx * dx + dy * dy;
  const share = square === 0 ? 0 : ((x - ax) * dx + (y - ay) * dy) / square;
  const t = Math.min(1, Math.max(0, share));
  return Math.hypot(ax + t * dx - x, ay + t * dy - y);
}

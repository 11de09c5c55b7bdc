import { chordPoints } from '../geometry/chords.ts';
import type { Curve } from '../geometry/curve.ts';
import type { Point } from '../geometry/point.ts';

/** A straight stretch of something drawn. */
export interface Stroke {
  readonly from: Point;
  readonly to: Point;
}

/** A curve as a chain of chords that stay within `flatness` (mm) of it. */
export function chordsOf(curve: Curve, flatness: number): Stroke[] {
  const points = chordPoints(curve, flatness);
  const strokes: Stroke[] = [];
  for (let i = 2; i < points.length; i += 2) {
    const from = { x: points[i - 2] ?? 0, y: points[i - 1] ?? 0 };
    strokes.push({ from, to: { x: points[i] ?? 0, y: points[i + 1] ?? 0 } });
  }
  return strokes;
}

import { type Bounds, controlBox } from '../geometry/bounds.ts';
import { chordPoints } from '../geometry/chords.ts';
import type { Curve } from '../geometry/curve.ts';
import { type Point, point, vectorBetween } from '../geometry/point.ts';
import { unit, type Vector } from '../geometry/vector.ts';

/** A curve made ready for many questions of what is near: the ends of its chords, flat, and an upright box about it. */
export interface Drawn {
  readonly chords: Float64Array;
  readonly box: Bounds;
}

/** A curve by chords within `flatness` (mm) of it. */
export const drawn = (curve: Curve, flatness: number): Drawn => ({
  chords: chordPoints(curve, flatness),
  box: controlBox(curve),
});

/** The place of some curves that is nearest to a point. */
export interface Nearest {
  readonly distance: number;
  readonly at: Point;
  /** Unit heading of the chord there. */
  readonly heading: Vector;
}

/** The nearest place of some curves' chords to `p`, if it is nearer than `within` (mm). */
export function nearest(curves: readonly Drawn[], p: Point, within: number): Nearest | undefined {
  let best: Float64Array | undefined;
  let chord = 0;
  let share = 0;
  let least = within;
  for (const { chords, box } of curves) {
    if (box.left > p.x + least || box.right < p.x - least) continue;
    if (box.top > p.y + least || box.bottom < p.y - least) continue;
    for (let i = 0; i + 3 < chords.length; i += 2) {
      const x = (chords[i] as number) - p.x;
      const y = (chords[i + 1] as number) - p.y;
      const dx = (chords[i + 2] as number) - p.x - x;
      const dy = (chords[i + 3] as number) - p.y - y;
      if ((x > least && x + dx > least) || (x < -least && x + dx < -least)) continue;
      if ((y > least && y + dy > least) || (y < -least && y + dy < -least)) continue;
      const square = dx * dx + dy * dy;
      const t = square === 0 ? 0 : Math.min(1, Math.max(0, -(x * dx + y * dy) / square));
      const apart = Math.sqrt((x + t * dx) * (x + t * dx) + (y + t * dy) * (y + t * dy));
      if (apart >= least) continue;
      least = apart;
      best = chords;
      chord = i;
      share = t;
    }
  }
  if (!best) return undefined;
  const from = point(best[chord] as number, best[chord + 1] as number);
  const to = point(best[chord + 2] as number, best[chord + 3] as number);
  const along = vectorBetween(from, to);
  return {
    distance: least,
    at: point(from.x + share * along.x, from.y + share * along.y),
    heading: unit(along),
  };
}

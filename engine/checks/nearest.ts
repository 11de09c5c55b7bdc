import type { Bounds } from '../geometry/bounds.ts';
import { chordPoints } from '../geometry/chords.ts';
import type { Curve } from '../geometry/curve.ts';
import { type Point, point, vectorBetween } from '../geometry/point.ts';
import { unit, type Vector } from '../geometry/vector.ts';

/** A stretch of a curve made ready for many questions of what is near: a run of its chords and an upright box about them. */
export interface Drawn {
  /** The ends of the curve's chords, flat; those of the stretch stand from `first` to `last`, counted in numbers. */
  readonly chords: Float64Array;
  readonly first: number;
  readonly last: number;
  readonly box: Bounds;
}

/** Chords of one stretch: with more, more of them are looked at in vain, and with fewer, more boxes. */
const RUN = 8;

/** A curve by chords within `flatness` (mm) of it, in stretches. */
export function drawn(curve: Curve, flatness: number): Drawn[] {
  const chords = chordPoints(curve, flatness);
  const stretches: Drawn[] = [];
  for (let first = 0; first + 2 < chords.length; first += 2 * RUN) {
    const last = Math.min(first + 2 * RUN, chords.length - 2);
    stretches.push({ chords, first, last, box: boxAbout(chords, first, last) });
  }
  return stretches;
}

function boxAbout(points: Float64Array, first: number, last: number): Bounds {
  let [left, right, top, bottom] = [Infinity, -Infinity, Infinity, -Infinity];
  for (let i = first; i <= last; i += 2) {
    const x = points[i] as number;
    const y = points[i + 1] as number;
    left = Math.min(left, x);
    right = Math.max(right, x);
    top = Math.min(top, y);
    bottom = Math.max(bottom, y);
  }
  return { left, right, top, bottom };
}

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
  for (const { chords, first, last, box } of curves) {
    if (box.left > p.x + least || box.right < p.x - least) continue;
    if (box.top > p.y + least || box.bottom < p.y - least) continue;
    for (let i = first; i < last; i += 2) {
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

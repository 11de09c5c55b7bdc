import { chordsOf, type Stroke } from '../finishing/chords.ts';
import { type Bounds, boundingBox } from '../geometry/bounds.ts';
import type { Curve } from '../geometry/curve.ts';
import { distance, type Point, point, vectorBetween } from '../geometry/point.ts';
import { unit, type Vector } from '../geometry/vector.ts';

/** A curve made ready for many questions of what is near: its chords, and the upright box about it. */
export interface Drawn {
  readonly chords: readonly Stroke[];
  readonly box: Bounds;
}

/** A curve by chords within `flatness` (mm) of it. */
export const drawn = (curve: Curve, flatness: number): Drawn => ({
  chords: chordsOf(curve, flatness),
  box: boundingBox([curve]),
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
  let best: Stroke | undefined;
  let bestAt = p;
  let least = within;
  for (const { chords, box } of curves) {
    if (box.left > p.x + least || box.right < p.x - least) continue;
    if (box.top > p.y + least || box.bottom < p.y - least) continue;
    for (const chord of chords) {
      const { from, to } = chord;
      if (from.x > p.x + least && to.x > p.x + least) continue;
      if (from.x < p.x - least && to.x < p.x - least) continue;
      if (from.y > p.y + least && to.y > p.y + least) continue;
      if (from.y < p.y - least && to.y < p.y - least) continue;
      const at = nearestOn(chord, p);
      const apart = distance(p, at);
      if (apart >= least) continue;
      least = apart;
      best = chord;
      bestAt = at;
    }
  }
  return best && { distance: least, at: bestAt, heading: unit(vectorBetween(best.from, best.to)) };
}

function nearestOn({ from, to }: Stroke, p: Point): Point {
  const dx = to.x - from.x;
  const dy = to.y - from.y;
  const square = dx * dx + dy * dy;
  const share = square === 0 ? 0 : ((p.x - from.x) * dx + (p.y - from.y) * dy) / square;
  const t = Math.min(1, Math.max(0, share));
  return point(from.x + t * dx, from.y + t * dy);
}

import type { Stroke } from '../finishing/chords.ts';
import { distance, type Point, point, vectorBetween } from '../geometry/point.ts';
import { unit, type Vector } from '../geometry/vector.ts';

/** The place of a chain of strokes that is nearest to a point. */
export interface Nearest {
  readonly distance: number;
  readonly at: Point;
  /** Unit heading of the stroke there. */
  readonly heading: Vector;
}

/** The nearest place of some strokes to `p`, if it is nearer than `within` (mm). Exact. */
export function nearest(strokes: readonly Stroke[], p: Point, within: number): Nearest | undefined {
  let best: Stroke | undefined;
  let bestAt = p;
  let least = within;
  for (const stroke of strokes) {
    const { from, to } = stroke;
    if (from.x > p.x + least && to.x > p.x + least) continue;
    if (from.x < p.x - least && to.x < p.x - least) continue;
    if (from.y > p.y + least && to.y > p.y + least) continue;
    if (from.y < p.y - least && to.y < p.y - least) continue;
    const at = nearestOn(stroke, p);
    const apart = distance(p, at);
    if (apart >= least) continue;
    least = apart;
    best = stroke;
    bestAt = at;
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

import { orient2d } from 'robust-predicates';
import type { Edge } from '../geometry/curve.ts';
import { parallelOutline } from '../geometry/parallel-outline.ts';
import { distance, type Point, point } from '../geometry/point.ts';
import { polygonOf } from '../geometry/polygon.ts';

/** How far a polygon may lie outside the line it stands for, mm. Less: more corners, and a slower search. */
export const flatness = 0.4;

/** The same where a length is wanted soon and rounded up to tenths of a metre. */
export const coarseFlatness = 2;

/** What stays free between two lines whose polygons touch, beside the gap, mm; above all that drawing and writing may stray. */
export const clear = 0.05;

/**
 * A polygon all round a closed cutting line (clockwise), never nearer than half the gap and never much farther: the line's
 * parallel, followed by chords no farther from it than `flat` (D. H. Douglas, T. K. Peucker, 1973), and so much farther out.
 * Undefined when the line has no parallel.
 */
export function outwardPolygon(line: Edge, gap: number, flat = flatness): Point[] | undefined {
  const aside = gap / 2 + flat + clear / 2;
  const [outline] = parallelOutline([line], aside, clear / 8, 'round').outlines;
  if (!outline) return undefined;
  const fine = polygonOf(outline, clear / 8);
  // Two corners far from each other stay; between them the chain is thinned on either side.
  const first = 0;
  const far = fine.reduce(
    (best, p, i) => (distance(p, at(fine, 0)) > distance(at(fine, best), at(fine, 0)) ? i : best),
    0,
  );
  const away = flat - clear / 4;
  return [...thinned(fine, first, far, away), ...thinned([...fine, at(fine, 0)], far, fine.length, away)];
}

const at = (points: readonly Point[], i: number): Point => points[i] ?? point(0, 0);

/** The corners from one to another (left out) that a chain must keep to stay within `away` (mm) of itself. */
function thinned(points: readonly Point[], from: number, to: number, away: number): Point[] {
  const [a, b] = [at(points, from), at(points, to)];
  let farthest = -1;
  let most = away;
  for (let i = from + 1; i < to; i++) {
    const far = distanceToSegment(at(points, i), a, b);
    if (far > most) {
      most = far;
      farthest = i;
    }
  }
  return farthest < 0
    ? [a]
    : [...thinned(points, from, farthest, away), ...thinned(points, farthest, to, away)];
}

function distanceToSegment(p: Point, a: Point, b: Point): number {
  const [ex, ey] = [b.x - a.x, b.y - a.y];
  const length2 = ex * ex + ey * ey;
  const t = length2 === 0 ? 0 : Math.min(1, Math.max(0, ((p.x - a.x) * ex + (p.y - a.y) * ey) / length2));
  return Math.hypot(p.x - a.x - t * ex, p.y - a.y - t * ey);
}

/** The part of a polygon where y is not less than 0, for one that y = 0 cuts in two; what is no corner is left out. */
export function halfBelow(polygon: readonly Point[]): Point[] {
  const kept = polygon.flatMap((p, i) => {
    const q = at(polygon, (i + 1) % polygon.length);
    const crossing = p.y * q.y < 0 ? [point(p.x + ((q.x - p.x) * -p.y) / (q.y - p.y), 0)] : [];
    return p.y < 0 ? crossing : [p, ...crossing];
  });
  return kept.filter((p, i) => {
    const [a, b] = [at(kept, (i + kept.length - 1) % kept.length), at(kept, (i + 1) % kept.length)];
    return orient2d(a.x, a.y, p.x, p.y, b.x, b.y) !== 0;
  });
}

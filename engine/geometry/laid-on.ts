import { distance, moved, type Point, point, turnedAbout, vectorBetween } from './point.ts';
import { LAID_ON } from './tolerance.ts';
import type { Transform } from './transform.ts';
import { cross, dot } from './vector.ts';

/** Turns of the search: enough for dress pieces to settle to a hundredth of a millimetre. */
const rounds = 60;

/**
 * Lays one drawing on another as one lays an old piece on its new draft: turned and moved, never mirrored, so that
 * the distances between points of the same place add up to the least. What stayed the same then lies on itself, and
 * only what changed stands apart. `from` and `to` hold the same places in the same order.
 *
 * Iteratively reweighted least squares (E. Weiszfeld, 1937) over the closed form for a turn and a move.
 */
export function laidOn(from: readonly Point[], to: readonly Point[]): Transform {
  let lay = closest(
    from,
    to,
    from.map(() => 1),
  );
  for (let round = 0; round < rounds; round++) {
    const weights = from.map((p, i) => 1 / Math.max(distance(lay(p), to[i] ?? p), LAID_ON));
    lay = closest(from, to, weights);
  }
  return lay;
}

/** The turn and move of least weighted squares. */
function closest(from: readonly Point[], to: readonly Point[], weights: readonly number[]): Transform {
  const [a, b] = [middle(from, weights), middle(to, weights)];
  let [along, across] = [0, 0];
  for (const [i, p] of from.entries()) {
    const [v, w] = [vectorBetween(a, p), vectorBetween(b, to[i] ?? b)];
    along += (weights[i] ?? 0) * dot(v, w);
    across += (weights[i] ?? 0) * cross(v, w);
  }
  const angle = Math.atan2(across, along);
  return (p) => moved(turnedAbout(p, a, angle), vectorBetween(a, b));
}

function middle(points: readonly Point[], weights: readonly number[]): Point {
  let [x, y, total] = [0, 0, 0];
  for (const [i, p] of points.entries()) {
    const weight = weights[i] ?? 0;
    x += weight * p.x;
    y += weight * p.y;
    total += weight;
  }
  return total === 0 ? point(0, 0) : point(x / total, y / total);
}

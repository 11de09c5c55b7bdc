import { type Point, point } from '../geometry/point.ts';
import type { Found } from './solution.ts';

/** What was found for a sketch, and how often it counts. */
export interface Weighed {
  readonly found: Found;
  readonly times: number;
}

/**
 * Where a sketch will about have its answer, as a weighted sum of what was found for others like it: twice the one before
 * less the one before that, or what lies beside it in two rows. The secant predictor of a continuation (E. L. Allgower and
 * K. Georg, Numerical Continuation Methods, 1990; from memory): where the sketches change evenly it is off by the second
 * difference. What not all of them name is left out.
 */
export function foretold(weighed: readonly Weighed[]): Found {
  const first = weighed[0]?.found;
  const points: Record<string, Point> = {};
  const scalars: Record<string, number> = {};
  for (const name of Object.keys(first?.points ?? {})) {
    let [x, y] = [0, 0];
    for (const { found, times } of weighed) {
      const at = found.points[name];
      x += times * (at?.x ?? Number.NaN);
      y += times * (at?.y ?? Number.NaN);
    }
    if (Number.isFinite(x + y)) points[name] = point(x, y);
  }
  for (const name of Object.keys(first?.scalars ?? {})) {
    const sum = weighed.reduce(
      (all, { found, times }) => all + times * (found.scalars[name] ?? Number.NaN),
      0,
    );
    if (Number.isFinite(sum)) scalars[name] = sum;
  }
  return { points, scalars };
}

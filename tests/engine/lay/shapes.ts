import { point } from '../../../engine/geometry/point.ts';
import { planLay } from '../../../engine/lay/plan-lay.ts';
import type { Lay, LayProblem, LayShape, Way } from '../../../engine/lay/problem.ts';

export const upright: readonly Way[] = [{ turn: 0, mirrored: false }];
export const eitherWayUp: readonly Way[] = [...upright, { turn: 180, mirrored: false }];

/** A shape from its corners as x, y, x, y ... */
export const shape = (
  name: string,
  count: number,
  corners: readonly number[],
  ways: readonly Way[] = upright,
): LayShape => ({
  name,
  count,
  ways,
  onFold: false,
  outline: Array.from({ length: corners.length / 2 }, (_, i) =>
    point(corners[2 * i] ?? 0, corners[2 * i + 1] ?? 0),
  ),
});

export const rectangle = (name: string, count: number, width: number, height: number): LayShape =>
  shape(name, count, [0, 0, width, 0, width, height, 0, height]);

/** The lay after so many rounds. */
export function laid(problem: LayProblem, rounds: number, seed = 1): Lay {
  let best: Lay | undefined;
  for (const found of planLay(problem, seed, (done) => done / rounds)) {
    best = found.best;
    if (best && found.rounds >= rounds) break;
  }
  if (!best) throw new Error('nothing was laid');
  return best;
}

import type { Layout } from './layout.ts';
import { inWay, type Lay, type LayProblem, type Placement } from './problem.ts';

/** The places of a layout as moves of its shapes. */
export function layOf(problem: LayProblem, layout: Layout): Lay {
  const { postures, shapeOf } = layout.copies;
  const copies = new Map<number, number>();
  const placements: Placement[] = [];
  let length = 0;
  for (let i = 0; i < layout.count; i++) {
    const shape = shapeOf[i] as number;
    const posture = postures[layout.posture[i] as number];
    if (!posture) continue;
    const copy = copies.get(shape) ?? 0;
    copies.set(shape, copy + 1);
    const { way, middle } = posture;
    const put = (problem.shapes[shape]?.outline ?? []).map((corner) => inWay(corner, way));
    const onX = put.map((corner) => corner.x);
    const onY = put.map((corner) => corner.y);
    const x = inside((layout.x[i] as number) - middle.x, onX, Infinity);
    const y = inside((layout.y[i] as number) - middle.y, onY, problem.width);
    placements.push({ shape, copy, way, x, y });
    length = Math.max(length, ...onX.map((value) => value + x));
  }
  return { length, placements };
}

/** A move that rounding has taken out of the strip, put back by the last digits: no sum is below 0 or above `most`. */
function inside(move: number, values: readonly number[], most: number): number {
  let moved = move;
  for (let tries = 0; tries < 4; tries++) {
    const last = Math.abs(moved) * 2 ** -52;
    const low = Math.min(...values.map((value) => value + moved));
    const high = Math.max(...values.map((value) => value + moved));
    if (low < 0) moved += Math.max(-low, last);
    else if (high > most) moved -= Math.max(high - most, last);
    else break;
  }
  return moved;
}

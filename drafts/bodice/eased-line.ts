import type { Cubic } from '../../engine/geometry/curve.ts';
import { distance, moved, type Point, vectorBetween } from '../../engine/geometry/point.ts';
import { heading, scaled, unit } from '../../engine/geometry/vector.ts';

/** The curve leaves its heading within this share of its length, and is near straight beyond. */
const TURNS_WITHIN = 0.3;

/** A line that leaves a point with a heading (radians), turns gently, and runs on to another nearly straight. */
export function easedLine(from: Point, to: Point, leaving: number): Cubic {
  const length = distance(from, to);
  const handle1 = moved(from, scaled(heading(leaving), TURNS_WITHIN * length));
  const back = unit(vectorBetween(to, handle1));
  return { kind: 'cubic', from, handle1, handle2: moved(to, scaled(back, TURNS_WITHIN * length)), to };
}

import type { Cubic } from '../../engine/geometry/curve.ts';
import { distance, moved, type Point, vectorBetween } from '../../engine/geometry/point.ts';
import { heading, scaled, unit } from '../../engine/geometry/vector.ts';
import { bodiceRules as rules } from './rules.ts';

/** A line that leaves a point with a heading (radians), turns gently, and runs on to another nearly straight. */
export function easedLine(from: Point, to: Point, leaving: number): Cubic {
  const within = rules.turnsWithin.value * distance(from, to);
  const handle1 = moved(from, scaled(heading(leaving), within));
  const back = unit(vectorBetween(to, handle1));
  return { kind: 'cubic', from, handle1, handle2: moved(to, scaled(back, within)), to };
}

import { RUN_OUT_REACH } from '../finishing/run-out.ts';
import { distance, type Point, vectorBetween } from '../geometry/point.ts';
import { COINCIDENCE } from '../geometry/tolerance.ts';
import { dot } from '../geometry/vector.ts';
import type { EdgeCorner } from './edge-side.ts';
import { type DrawnCurves, isNear, type NearestPlace } from './nearest.ts';

/**
 * Whether the cutting line is wider here since an end that was lengthened for its neighbour runs out (`runOut`): straight
 * from the neighbour's seam, prolonged, to where the allowance of this line is kept again.
 */
export function runsOut(
  { at, across }: EdgeCorner,
  chord: NearestPlace['chord'],
  line: readonly DrawnCurves[],
  allowance: number,
  bound: number,
): boolean {
  if (!across || distance(...chord) > RUN_OUT_REACH * allowance) return false;
  const begins = chord.findIndex((p) => {
    const away = vectorBetween(at, p);
    return dot(away, across.onward) >= 0 && Math.abs(dot(away, across.normal)) <= bound;
  });
  const ends = chord[1 - begins];
  return ends !== undefined && line.some((each) => isNear(each, ends, allowance + bound));
}

/** Whether a place lies where the neighbour's square end takes over: outside its seam, prolonged (`turnCorner`). */
export function isBeyond({ at, across }: EdgeCorner, p: Point): boolean {
  if (!across) return false;
  const away = vectorBetween(at, p);
  return dot(away, across.onward) >= 0 && dot(away, across.normal) > -COINCIDENCE;
}

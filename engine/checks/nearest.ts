import type { Bounds } from '../geometry/bounds.ts';
import { chordsWithin, writeEvenPoints } from '../geometry/chords.ts';
import type { Curve } from '../geometry/curve.ts';
import { between, type Point, point, vectorBetween } from '../geometry/point.ts';
import { unit, type Vector } from '../geometry/vector.ts';
import { roomForNumbers } from '../room-for-numbers.ts';

/**
 * Curves made ready for many questions of what is near, as plain numbers in two lists: the ends of all their chords, and
 * their stretches, a run of chords each. Objects for the stretches and their boxes would be most of what a check makes.
 */
export interface DrawnCurves {
  /** x, y, x, y ...; between the last end of one curve and the first of the next there is no chord. */
  readonly ends: readonly number[];
  /**
   * For each stretch where its chords begin and end in `ends`, then the box about them (left, right, top, bottom), then the band along
   * it that holds them: a unit vector across (x, y), and from where to where it reaches that way.
   */
  readonly stretches: readonly number[];
}

/** Numbers of one stretch. */
const STRETCH = 10;

/** Chords of one stretch: with more, more of them are looked at in vain, and with fewer, more boxes and bands. */
const RUN = 4;

/** Curves by chords within `flatness` (mm) of them, in stretches. */
export function drawn(curves: readonly Curve[], flatness: number): DrawnCurves {
  const counts = curves.map((curve) => chordsWithin(curve, flatness));
  // Lists that are as long as they will be from the start: to grow would cost more than all that is written into them.
  let places = 0;
  let runs = 0;
  for (const count of counts) {
    places += 2 * (count + 1);
    runs += Math.ceil(count / RUN);
  }
  const ends = roomForNumbers(places);
  const stretches = roomForNumbers(STRETCH * runs);
  let start = 0;
  let stretch = 0;
  for (let i = 0; i < curves.length; i++) {
    const count = counts[i] as number;
    writeEvenPoints(curves[i] as Curve, count, ends, start);
    const last = start + 2 * count;
    for (let first = start; first < last; first += 2 * RUN, stretch += STRETCH)
      writeStretch(stretches, stretch, ends, first, Math.min(first + 2 * RUN, last));
    start = last + 2;
  }
  return { ends, stretches };
}

function writeStretch(
  stretches: number[],
  at: number,
  ends: readonly number[],
  first: number,
  last: number,
): void {
  let left = Infinity;
  let right = -Infinity;
  let top = Infinity;
  let bottom = -Infinity;
  let least = Infinity;
  let most = -Infinity;
  const alongX = (ends[last] as number) - (ends[first] as number);
  const alongY = (ends[last + 1] as number) - (ends[first + 1] as number);
  const length = Math.sqrt(alongX * alongX + alongY * alongY) || 1;
  const acrossX = alongY / length;
  const acrossY = -alongX / length;
  for (let i = first; i <= last; i += 2) {
    const x = ends[i] as number;
    const y = ends[i + 1] as number;
    const across = x * acrossX + y * acrossY;
    least = Math.min(least, across);
    most = Math.max(most, across);
    left = Math.min(left, x);
    right = Math.max(right, x);
    top = Math.min(top, y);
    bottom = Math.max(bottom, y);
  }
  stretches[at] = first;
  stretches[at + 1] = last;
  stretches[at + 2] = left;
  stretches[at + 3] = right;
  stretches[at + 4] = top;
  stretches[at + 5] = bottom;
  stretches[at + 6] = acrossX;
  stretches[at + 7] = acrossY;
  stretches[at + 8] = least;
  stretches[at + 9] = most;
}

/** The upright rectangle about all that is drawn. */
export function boxOf({ stretches }: DrawnCurves): Bounds {
  let [left, right, top, bottom] = [Infinity, -Infinity, Infinity, -Infinity];
  for (let k = 0; k < stretches.length; k += STRETCH) {
    left = Math.min(left, stretches[k + 2] as number);
    right = Math.max(right, stretches[k + 3] as number);
    top = Math.min(top, stretches[k + 4] as number);
    bottom = Math.max(bottom, stretches[k + 5] as number);
  }
  return { left, right, top, bottom };
}

/** The place of some curves that is nearest to a point. */
export interface NearestPlace {
  readonly distance: number;
  readonly at: Point;
  /** The chord there, all of a straight line, and its unit heading. */
  readonly chord: readonly [from: Point, to: Point];
  readonly heading: Vector;
}

/** The nearest place of some curves' chords to `p`, if it is nearer than `within` (mm). */
export function nearest(
  { ends, stretches }: DrawnCurves,
  p: Point,
  within: number,
): NearestPlace | undefined {
  const { x, y } = p;
  let chord = -1;
  let least = within;
  let square = within * within;
  for (let k = 0; k < stretches.length; k += STRETCH) {
    if (isBeyond(stretches, k, x, y, least)) continue;
    const last = stretches[k + 1] as number;
    for (let i = stretches[k] as number; i < last; i += 2) {
      const apart = squareToChord(ends, i, x, y);
      if (apart >= square) continue;
      square = apart;
      least = Math.sqrt(apart);
      chord = i;
    }
  }
  if (chord < 0) return undefined;
  const from = point(ends[chord] as number, ends[chord + 1] as number);
  const to = point(ends[chord + 2] as number, ends[chord + 3] as number);
  return {
    distance: least,
    at: between(from, to, shareAlongChord(ends, chord, p)),
    chord: [from, to],
    heading: unit(vectorBetween(from, to)),
  };
}

/** Whether any place of some curves' chords is nearer to `p` than `within` (mm). */
export const isNear = (curves: DrawnCurves, { x, y }: Point, within: number): boolean =>
  whichIsNear(curves, x, y, within, 0) >= 0;

/**
 * Which stretch has a place nearer to x, y than `within` (mm), looked for from stretch `first` on, round and round: by where
 * it stands in the list, -1 for none.
 */
export function whichIsNear(
  { ends, stretches }: DrawnCurves,
  x: number,
  y: number,
  within: number,
  first: number,
): number {
  const square = within > 0 ? within * within : 0;
  for (let n = 0, k = first; n < stretches.length; n += STRETCH, k += STRETCH) {
    if (k >= stretches.length) k = 0;
    if (isBeyond(stretches, k, x, y, within)) continue;
    const last = stretches[k + 1] as number;
    for (let i = stretches[k] as number; i < last; i += 2)
      if (squareToChord(ends, i, x, y) < square) return k;
  }
  return -1;
}

/** Whether the box about a stretch, or the band along it, shows that all of it is farther from x, y than `within` (mm). */
function isBeyond(stretches: readonly number[], k: number, x: number, y: number, within: number): boolean {
  if (
    (stretches[k + 2] as number) > x + within ||
    (stretches[k + 3] as number) < x - within ||
    (stretches[k + 4] as number) > y + within ||
    (stretches[k + 5] as number) < y - within
  )
    return true;
  const across = x * (stretches[k + 6] as number) + y * (stretches[k + 7] as number);
  return (stretches[k + 8] as number) > across + within || (stretches[k + 9] as number) < across - within;
}

/** Square distance of a place from the chord that starts at place `i` (mm squared). */
function squareToChord(ends: readonly number[], i: number, px: number, py: number): number {
  const fromX = ends[i] as number;
  const fromY = ends[i + 1] as number;
  const dx = (ends[i + 2] as number) - fromX;
  const dy = (ends[i + 3] as number) - fromY;
  const x = fromX - px;
  const y = fromY - py;
  const along = -(x * dx + y * dy);
  if (!(along > 0)) return x * x + y * y;
  const length = dx * dx + dy * dy;
  if (along >= length) return (x + dx) * (x + dx) + (y + dy) * (y + dy);
  const t = along / length;
  return (x + t * dx) * (x + t * dx) + (y + t * dy) * (y + t * dy);
}

/** How far along the chord that starts at place `i` its place nearest to `p` lies, as a share of it. */
function shareAlongChord(chords: readonly number[], i: number, p: Point): number {
  const x = (chords[i] as number) - p.x;
  const y = (chords[i + 1] as number) - p.y;
  const dx = (chords[i + 2] as number) - p.x - x;
  const dy = (chords[i + 3] as number) - p.y - y;
  const square = dx * dx + dy * dy;
  return square === 0 ? 0 : Math.min(1, Math.max(0, -(x * dx + y * dy) / square));
}

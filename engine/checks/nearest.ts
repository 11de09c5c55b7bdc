import type { Bounds } from '../geometry/bounds.ts';
import { chordPoints } from '../geometry/chords.ts';
import type { Curve } from '../geometry/curve.ts';
import { between, type Point, point, vectorBetween } from '../geometry/point.ts';
import { unit, type Vector } from '../geometry/vector.ts';

/** A stretch of a curve made ready for many questions of what is near: a run of its chords and an upright box about them. */
export interface DrawnStretch {
  /** The ends of the curve's chords, flat; those of the stretch stand from `first` to `last`, counted in numbers. */
  readonly chords: readonly number[];
  readonly first: number;
  readonly last: number;
  readonly box: Bounds;
}

/** Chords of one stretch: with more, more of them are looked at in vain, and with fewer, more boxes. */
const RUN = 8;

/** A curve by chords within `flatness` (mm) of it, in stretches. */
export function drawn(curve: Curve, flatness: number): DrawnStretch[] {
  const chords = chordPoints(curve, flatness);
  const stretches: DrawnStretch[] = [];
  for (let first = 0; first + 2 < chords.length; first += 2 * RUN) {
    const last = Math.min(first + 2 * RUN, chords.length - 2);
    stretches.push({ chords, first, last, box: boxAbout(chords, first, last) });
  }
  return stretches;
}

function boxAbout(points: readonly number[], first: number, last: number): Bounds {
  let [left, right, top, bottom] = [Infinity, -Infinity, Infinity, -Infinity];
  for (let i = first; i <= last; i += 2) {
    const x = points[i] as number;
    const y = points[i + 1] as number;
    left = Math.min(left, x);
    right = Math.max(right, x);
    top = Math.min(top, y);
    bottom = Math.max(bottom, y);
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
export function nearest(curves: readonly DrawnStretch[], p: Point, within: number): NearestPlace | undefined {
  let best: readonly number[] | undefined;
  let chord = 0;
  let least = within;
  let square = within * within;
  for (const stretch of curves) {
    if (isBeyond(stretch, p, least)) continue;
    const { chords, first, last } = stretch;
    for (let i = first; i < last; i += 2) {
      const apart = squareToChord(chords, i, p);
      if (apart >= square) continue;
      square = apart;
      least = Math.sqrt(apart);
      best = chords;
      chord = i;
    }
  }
  if (!best) return undefined;
  const from = point(best[chord] as number, best[chord + 1] as number);
  const to = point(best[chord + 2] as number, best[chord + 3] as number);
  return {
    distance: least,
    at: between(from, to, shareAlongChord(best, chord, p)),
    chord: [from, to],
    heading: unit(vectorBetween(from, to)),
  };
}

/** Whether any place of some curves' chords is nearer to `p` than `within` (mm). */
export const isNear = (curves: readonly DrawnStretch[], p: Point, within: number): boolean =>
  whichIsNear(curves, p, within, 0) !== undefined;

/** Which of some stretches has a place nearer to `p` than `within` (mm), looked for from stretch `first` on, round and round. */
export function whichIsNear(
  curves: readonly DrawnStretch[],
  p: Point,
  within: number,
  first: number,
): number | undefined {
  const square = within > 0 ? within * within : 0;
  for (let k = first; k < first + curves.length; k++) {
    const which = k < curves.length ? k : k - curves.length;
    const stretch = curves[which] as DrawnStretch;
    if (isBeyond(stretch, p, within)) continue;
    for (let i = stretch.first; i < stretch.last; i += 2)
      if (squareToChord(stretch.chords, i, p) < square) return which;
  }
  return undefined;
}

/** Whether the box about a stretch shows that all of it is farther from `p` than `within` (mm). */
const isBeyond = ({ box }: DrawnStretch, p: Point, within: number): boolean =>
  box.left > p.x + within || box.right < p.x - within || box.top > p.y + within || box.bottom < p.y - within;

/** Square distance of `p` from the chord that starts at place `i` (mm squared). */
function squareToChord(chords: readonly number[], i: number, p: Point): number {
  const fromX = chords[i] as number;
  const fromY = chords[i + 1] as number;
  const dx = (chords[i + 2] as number) - fromX;
  const dy = (chords[i + 3] as number) - fromY;
  const x = fromX - p.x;
  const y = fromY - p.y;
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

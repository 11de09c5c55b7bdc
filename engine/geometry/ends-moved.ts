import type { Curve } from './curve.ts';
import { between, distance, moved, type Point, turnedAbout, vectorBetween } from './point.ts';
import { cross, dot, scaled, type Vector } from './vector.ts';

/** What becomes of one end of a curve. */
export interface EndMove {
  /** mm */
  readonly by: Vector;
  /** By how much its heading there turns: radians, clockwise as drawn. */
  readonly turned: number;
}

/**
 * A curve with its ends moved. A cubic turns its heading at either end by as much as is asked, and its handles grow as
 * its chord does: moved all over by one vector it keeps its shape, and an arc whose ends move along their radii becomes
 * the arc beside it. A line stays a line, whatever its ends turn by, unless it would come to lie aslant: then it bends to
 * keep its headings.
 */
export function withEndsMoved(curve: Curve, start: EndMove, end: EndMove): Curve {
  const [from, to] = [moved(curve.from, start.by), moved(curve.to, end.by)];
  if (curve.kind === 'line') return lineMoved(curve, from, to, start.turned, end.turned);
  const growth = distance(from, to) / distance(curve.from, curve.to);
  const carried = (handle: Point, at: Point, { by, turned }: EndMove): Point =>
    between(at, turnedAbout(moved(handle, by), at, turned), growth);
  return {
    kind: 'cubic',
    from,
    handle1: carried(curve.handle1, from, start),
    handle2: carried(curve.handle2, to, end),
    to,
  };
}

/** Farther than this from its heading (radians) a line is seen to lie aslant: less than half of what a join may be out of true. */
const ASLANT = (0.2 * Math.PI) / 180;

function lineMoved(line: Curve, from: Point, to: Point, turnedAtStart: number, turnedAtEnd: number): Curve {
  const [was, is] = [vectorBetween(line.from, line.to), vectorBetween(from, to)];
  const tilt = Math.atan2(cross(was, is), dot(was, is));
  if (Math.abs(tilt) <= ASLANT) return { kind: 'line', from, to };
  const third = scaled(is, 1 / 3);
  return {
    kind: 'cubic',
    from,
    handle1: turnedAbout(moved(from, third), from, turnedAtStart - tilt),
    handle2: turnedAbout(moved(to, scaled(third, -1)), to, turnedAtEnd - tilt),
    to,
  };
}

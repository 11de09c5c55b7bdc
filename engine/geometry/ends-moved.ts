import type { Curve } from './curve.ts';
import { between, distance, moved, type Point, turnedAbout } from './point.ts';
import type { Vector } from './vector.ts';

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
 * the arc beside it. A line stays a line, whatever its ends turn by.
 */
export function withEndsMoved(curve: Curve, start: EndMove, end: EndMove): Curve {
  const [from, to] = [moved(curve.from, start.by), moved(curve.to, end.by)];
  if (curve.kind === 'line') return { kind: 'line', from, to };
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

import { moved, type Point } from '../geometry/point.ts';
import type { Transform } from '../geometry/transform.ts';
import type { Vector } from '../geometry/vector.ts';

/**
 * How a part cut from the paper is laid down again: turned about the origin (radians, clockwise as drawn), then
 * shifted (mm). Lengths and angles within the part stay as they were.
 */
export interface RigidMove {
  readonly turn: number;
  readonly shift: Vector;
}

/** Stays where it lies. */
export const stays: RigidMove = { turn: 0, shift: { x: 0, y: 0 } };

/** Shifted by a vector, not turned. */
export const shifted = (shift: Vector): RigidMove => ({ turn: 0, shift });

/** Turned by an angle (radians, clockwise as drawn) about a pin that stays where it is. */
export function turnedAboutPin(pin: Point, turn: number): RigidMove {
  const at = turned(pin, turn);
  return { turn, shift: { x: pin.x - at.x, y: pin.y - at.y } };
}

/** The move that does `first` and then `second`. */
export function inTurn(first: RigidMove, second: RigidMove): RigidMove {
  const carried = turned(first.shift, second.turn);
  return {
    turn: first.turn + second.turn,
    shift: { x: carried.x + second.shift.x, y: carried.y + second.shift.y },
  };
}

/** The move that takes back another. */
export function undone({ turn, shift }: RigidMove): RigidMove {
  const back = turned(shift, -turn);
  return { turn: -turn, shift: { x: -back.x, y: -back.y } };
}

/** The move as a transform of points. */
export const asTransform =
  ({ turn, shift }: RigidMove): Transform =>
  (p) =>
    moved(turned(p, turn), shift);

function turned<P extends { readonly x: number; readonly y: number }>({ x, y }: P, turn: number) {
  if (turn === 0) return { x, y };
  const [c, s] = [Math.cos(turn), Math.sin(turn)];
  return { x: x * c - y * s, y: x * s + y * c };
}

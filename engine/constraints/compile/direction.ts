import { DraftMistake } from '../../draft-mistake.ts';
import type { CurveEnd } from '../relations.ts';
import { curveSlots, type Slots } from './slots.ts';

/** The angle of a curve's direction of travel at one end, as a function of slots. */
export interface Direction {
  readonly slots: readonly number[];
  /** The angle at `x` (radians, not wrapped); its derivatives by the slots are written from `offset` on. */
  readonly angle: (x: Float64Array, jacobian: Float64Array, offset: number) => number;
}

/**
 * The direction of travel at the end of a curve. A cubic's is its named angle, whatever the handle's length; a
 * line's is that of its chord.
 */
export function directionOf(slots: Slots, { curve, end }: CurveEnd, user: string): Direction {
  const found = curveSlots(slots, curve, user);
  if (found.kind === 'line') return chordDirection(found.slots);
  if (end !== 'start' && end !== 'end')
    throw new DraftMistake(
      `“${user}” names the end “${String(end)}” of “${curve}”: there are start and end.`,
      [user],
    );
  const slot = found.slots[end === 'start' ? 4 : 6];
  return {
    slots: [slot],
    angle: (x, jacobian, offset) => {
      jacobian[offset] = 1;
      return x[slot] as number;
    },
  };
}

/** The heading from one point to another, given the slots of from.x, from.y, to.x, to.y. */
export function chordDirection(ends: readonly [number, number, number, number]): Direction {
  const [fx, fy, tx, ty] = ends;
  return {
    slots: ends,
    angle: (x, jacobian, offset) => {
      const dx = (x[tx] as number) - (x[fx] as number);
      const dy = (x[ty] as number) - (x[fy] as number);
      const square = dx * dx + dy * dy || 1;
      jacobian[offset] = dy / square;
      jacobian[offset + 1] = -dx / square;
      jacobian[offset + 2] = -dy / square;
      jacobian[offset + 3] = dx / square;
      return Math.atan2(dy, dx);
    },
  };
}

/** An angle brought into (-pi, pi] by whole turns. */
export function wrapped(angle: number): number {
  const turned = angle - 2 * Math.PI * Math.round(angle / (2 * Math.PI));
  return turned === -Math.PI ? Math.PI : turned;
}

import { type Direction, directionOf, wrapped } from '../compile/direction.ts';
import { type Equations, SCALE } from '../compile/equations.ts';
import { radians, type Slots } from '../compile/slots.ts';
import type { RelationOf } from './relation-of.ts';

/**
 * The angle turned from the direction of travel of one curve end to that of another, less what it should be,
 * wrapped to (-pi, pi]. Positive turns clockwise as drawn.
 */
export function turn(relation: RelationOf<'turn'>, slots: Slots): Equations {
  const { name, from, to, angle } = relation;
  const directions = [directionOf(slots, to, name), directionOf(slots, from, name)];
  return angleSum(name, directions, [1, -1], -radians(angle, name));
}

/**
 * Where two curves meet, the line runs smoothly from one into the other. An end meeting a start means one
 * direction of travel; two starts or two ends meeting means opposite ones, since one of the curves is then drawn
 * against the run of the line.
 */
export function tangent(relation: RelationOf<'tangent'>, slots: Slots): Equations {
  const { name, a, b } = relation;
  const directions = [directionOf(slots, b, name), directionOf(slots, a, name)];
  return angleSum(name, directions, [1, -1], a.end === b.end ? Math.PI : 0);
}

/**
 * A line running across a sewn seam has no corner there. On each piece `from` is the curve end that comes into
 * the corner along the outline, `to` the one that leaves it:
 *
 *     piece a              |              piece b
 *     --- from ---> o      |      o --- to --->
 *                   |      |      ^
 *          cloth    to     |    from    cloth
 *                   v      |      |
 *
 * The turn at a corner is the angle from the heading of `from` to the heading of `to`, both as walked along the
 * outline: a curve that the sketch draws against the outline, so that `from` is its start or `to` its end, is
 * walked backwards. The cloth's angle there is pi less the turn, so the two angles make a straight one when
 *
 *     turn(a) + turn(b) - pi = 0
 *
 * which is the residual, wrapped to (-pi, pi]. Both outlines must run the same way round (clockwise).
 */
export function acrossSeam(relation: RelationOf<'smooth across seam'>, slots: Slots): Equations {
  const { name, a, b } = relation;
  const ends = [a.to, a.from, b.to, b.from];
  const backwards = (['start', 'end', 'start', 'end'] as const).filter((end, i) => ends[i]?.end !== end);
  const directions = ends.map((end) => directionOf(slots, end, name));
  return angleSum(name, directions, [1, -1, 1, -1], (backwards.length - 1) * Math.PI);
}

/** A weighted sum of direction angles and a constant, wrapped. */
function angleSum(
  name: string,
  directions: readonly Direction[],
  times: readonly number[],
  constant: number,
): Equations {
  const slots = directions.flatMap((direction) => direction.slots);
  const parts = directions.map((direction, i) => ({
    angle: direction.angle,
    times: times[i] ?? 0,
    offset: directions.slice(0, i).reduce((sum, before) => sum + before.slots.length, 0),
    count: direction.slots.length,
  }));
  return {
    name,
    goal: 'zero',
    unit: 'rad',
    scale: SCALE.rad,
    rows: 1,
    elements: [
      {
        slots,
        // A cubic's direction is an unknown itself, a line's is not.
        linear: parts.every(({ count }) => count === 1),
        evaluate: (x, values, jacobian) => {
          let sum = constant;
          for (const part of parts) {
            sum += part.times * part.angle(x, jacobian, part.offset);
            for (let k = part.offset; k < part.offset + part.count; k++)
              jacobian[k] = part.times * (jacobian[k] as number);
          }
          values[0] = wrapped(sum);
        },
      },
    ],
  };
}

import { bulge } from '../compile/bulge.ts';
import { ARM, type Equations, LEAST_CURVATURE_SCALE } from '../compile/equations.ts';
import { type CurveSlots, curveSlots, type Slots } from '../compile/slots.ts';
import type { RelationOf } from './relation-of.ts';

/**
 * The signed curvature of b where the curves meet, less that of a (1/mm). Where two starts or two ends meet, one
 * curve is drawn against the run of the line, which turns the sign of its curvature over.
 */
export function curvature(relation: RelationOf<'curvature'>, slots: Slots): Equations {
  const { name, a, b } = relation;
  const first = curveSlots(slots, a.curve, name);
  const second = curveSlots(slots, b.curve, name);
  const sign = a.end === b.end ? 1 : -1;
  return {
    name,
    goal: 'zero',
    unit: '1/mm',
    scale: bulgeScale(first, a.end, second, b.end, slots.guess),
    rows: 1,
    elements: [
      {
        slots: [...first.slots, ...second.slots],
        linear: false,
        evaluate: (x, values, jacobian) => {
          const split = first.slots.length;
          values[0] =
            endCurvature(x, first, a.end, sign, jacobian, 0) +
            endCurvature(x, second, b.end, 1, jacobian, split);
        },
      },
    ],
  };
}

/**
 * A curvature counts as the bulge it stands for: 3/2 times a handle's length squared, from the two first guesses.
 * A greater factor, such as that of an arm of 100 mm, would let this relation bend every other one's steps.
 */
function bulgeScale(
  first: CurveSlots,
  firstEnd: 'start' | 'end',
  second: CurveSlots,
  secondEnd: 'start' | 'end',
  guess: Float64Array,
): number {
  const lengths = [handleSlot(first, firstEnd), handleSlot(second, secondEnd)]
    .filter((slot) => slot !== undefined)
    .map((slot) => Math.abs(guess[slot] as number));
  const [one = ARM, other = one] = lengths;
  return Math.max(1.5 * one * other, LEAST_CURVATURE_SCALE);
}

function handleSlot(curve: CurveSlots, end: 'start' | 'end'): number | undefined {
  if (curve.kind === 'line') return undefined;
  return curve.slots[end === 'start' ? 5 : 7];
}

function endCurvature(
  x: Float64Array,
  curve: CurveSlots,
  end: 'start' | 'end',
  sign: 1 | -1,
  jacobian: Float64Array,
  offset: number,
): number {
  if (curve.kind === 'line') {
    jacobian.fill(0, offset, offset + 4);
    return 0;
  }
  const handle = end === 'start' ? 5 : 7;
  const length = x[curve.slots[handle]] as number;
  const factor = (sign * 2) / (3 * length * length);
  const bent = factor * bulge(x, curve, end, jacobian, offset);
  for (let k = offset; k < offset + 8; k++) jacobian[k] = factor * (jacobian[k] as number);
  jacobian[offset + handle] = (-2 * bent) / length;
  return bent;
}

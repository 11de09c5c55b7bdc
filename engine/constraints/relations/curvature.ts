import { bulge, bulgeCurvature } from '../compile/bulge.ts';
import { ARM, type Element, type Equations, LEAST_CURVATURE_SCALE } from '../compile/equations.ts';
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
    elements: [...endCurvature(first, a.end, sign), ...endCurvature(second, b.end, 1)],
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

/** Room for the slopes of a bulge, shared by all: nothing is kept in it from one evaluation to the next. */
const slope = new Float64Array(8);

/** The curvature at one end of a curve, times its sign: none where it is a line. */
function endCurvature(curve: CurveSlots, end: 'start' | 'end', sign: 1 | -1): readonly Element[] {
  if (curve.kind === 'line') return [];
  const handle = end === 'start' ? 5 : 7;
  const factorOf = (length: number): number => (sign * 2) / (3 * length * length);
  return [
    {
      slots: curve.slots,
      linear: false,
      evaluate: (x, values, jacobian) => {
        const length = x[curve.slots[handle]] as number;
        const factor = factorOf(length);
        const bent = factor * bulge(x, curve, end, jacobian, 0);
        for (let k = 0; k < 8; k++) jacobian[k] = factor * (jacobian[k] as number);
        jacobian[handle] = (-2 * bent) / length;
        values[0] = bent;
      },
      // The product rule on the bulge times a factor that goes with the handle's length to the power of minus two.
      curve: (x, weights, into) => {
        const length = x[curve.slots[handle]] as number;
        const factor = (weights[0] as number) * factorOf(length);
        const bulging = bulge(x, curve, end, slope, 0);
        bulgeCurvature(x, curve, end, factor, into);
        for (let k = 0; k < 8; k++) {
          const at = k < handle ? 8 * handle + k : 8 * k + handle;
          into[at] = (into[at] as number) - (2 * factor * (slope[k] as number)) / length;
        }
        const own = 9 * handle;
        into[own] = (into[own] as number) + (6 * factor * bulging) / (length * length);
      },
    },
  ];
}

import fc from 'fast-check';
import { expect, it } from 'vitest';
import { bulge, bulgeCurvature } from '../../../../engine/constraints/compile/bulge.ts';
import type { CubicSlots } from '../../../../engine/constraints/compile/slots.ts';
import { uniform } from '../../../uniform.ts';

const curve: CubicSlots = { kind: 'cubic', slots: [0, 1, 2, 3, 4, 5, 6, 7] };
const [place, angle, length] = [uniform(-100, 100), uniform(-3, 3), uniform(5, 80)];
const anyValues = fc.tuple(place, place, place, place, angle, length, angle, length);

/** A slope by a central difference. */
const slope = (f: (at: number) => number, at: number, h = 1e-4): number => (f(at + h) - f(at - h)) / (2 * h);

it.each(['start', 'end'] as const)(
  'the slopes of a bulge at the %s are those of its differences, and its curvature that of its slopes',
  (end) => {
    fc.assert(
      fc.property(anyValues, (values) => {
        const slopes = new Float64Array(8);
        const at = (slot: number, value: number): number =>
          bulge(Float64Array.from(values).fill(value, slot, slot + 1), curve, end, slopes, 0);
        const curvature = new Float64Array(64);
        bulgeCurvature(Float64Array.from(values), curve, end, 2, curvature);
        values.forEach((value, slot) => {
          at(slot, value);
          const here = slopes.slice();
          expect(here[slot]).toBeCloseTo(
            slope((moved) => at(slot, moved), value),
            4,
          );
          for (let other = 0; other < 8; other++) {
            const [row, column] = [Math.max(slot, other), Math.min(slot, other)];
            const bend = slope((moved) => {
              at(slot, moved);
              return slopes[other] as number;
            }, value);
            expect(curvature[8 * row + column], `${slot}, ${other}`).toBeCloseTo(2 * bend, 4);
          }
        });
      }),
      { numRuns: 30 },
    );
  },
);

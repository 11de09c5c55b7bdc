import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { arcLength } from '../../../engine/geometry/arc-length.ts';
import { arcLengthGradient } from '../../../engine/geometry/arc-length-gradient.ts';
import type { Cubic } from '../../../engine/geometry/curve.ts';
import { anyCubic, cubic, seamCubic } from './generators.ts';

const controls = ['from', 'handle1', 'handle2', 'to'] as const;

describe('arcLengthGradient', () => {
  it('agrees with differences of the length in every coordinate', () => {
    fc.assert(
      fc.property(seamCubic, (curve) => {
        const gradient = arcLengthGradient(curve, 1e-6);
        for (const control of controls) {
          for (const axis of ['x', 'y'] as const) {
            const step = 1e-3;
            const ahead = arcLength(nudged(curve, control, axis, step), 1e-11);
            const behind = arcLength(nudged(curve, control, axis, -step), 1e-11);
            expect(gradient[control][axis]).toBeCloseTo((ahead - behind) / (2 * step), 6);
          }
        }
      }),
      { numRuns: 60 },
    );
  });

  it('keeps the accuracy of the length on any cubic', () => {
    fc.assert(
      fc.property(anyCubic, fc.constantFrom(1e-2, 1e-6, 1e-9), (curve, accuracy) => {
        const { length } = arcLengthGradient(curve, accuracy);
        expect(Math.abs(length - arcLength(curve, 1e-11))).toBeLessThanOrEqual(accuracy);
      }),
    );
  });

  it('keeps the accuracy of the gradient, relative to the polygon', () => {
    fc.assert(
      fc.property(anyCubic, (curve) => {
        const coarse = arcLengthGradient(curve, 1e-3);
        const fine = arcLengthGradient(curve, 1e-9);
        const polygon = Math.hypot(curve.to.x - curve.from.x, curve.to.y - curve.from.y);
        fc.pre(polygon > 1);
        for (const control of controls) {
          expect(Math.abs(coarse[control].x - fine[control].x)).toBeLessThanOrEqual(2e-3 / polygon);
          expect(Math.abs(coarse[control].y - fine[control].y)).toBeLessThanOrEqual(2e-3 / polygon);
        }
      }),
    );
  });

  it('does not change when the whole curve moves', () => {
    fc.assert(
      fc.property(anyCubic, (curve) => {
        const gradient = arcLengthGradient(curve, 1e-9);
        for (const axis of ['x', 'y'] as const)
          expect(controls.reduce((sum, control) => sum + gradient[control][axis], 0)).toBeCloseTo(0, 12);
      }),
    );
  });

  it('is that of the chord when the curve is straight and walked evenly', () => {
    const { length, from, handle1, handle2, to } = arcLengthGradient(cubic(0, 0, 10, 0, 20, 0, 30, 0), 1e-9);
    expect(length).toBeCloseTo(30, 12);
    expect(from.x).toBeCloseTo(-1, 12);
    expect(to.x).toBeCloseTo(1, 12);
    for (const still of [from.y, handle1.x, handle1.y, handle2.x, handle2.y, to.y])
      expect(still).toBeCloseTo(0, 12);
  });

  it('stays sound where handles have no length', () => {
    const { length, from, handle2, to } = arcLengthGradient(cubic(0, 0, 0, 0, 100, 0, 100, 0), 1e-9);
    expect(length).toBeCloseTo(100, 9);
    expect(from.x).toBeCloseTo(-1, 9);
    expect(handle2.x).toBeCloseTo(0, 9);
    expect(to.x).toBeCloseTo(1, 9);
  });

  it('is zero for a curve without extent', () => {
    const { length, to } = arcLengthGradient(cubic(1, 1, 1, 1, 1, 1, 1, 1), 1e-9);
    expect([length, to.x, to.y]).toEqual([0, 0, 0]);
  });
});

function nudged(curve: Cubic, control: (typeof controls)[number], axis: 'x' | 'y', by: number): Cubic {
  return { ...curve, [control]: { ...curve[control], [axis]: curve[control][axis] + by } };
}

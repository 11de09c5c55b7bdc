import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  type Bounds,
  boundingBox,
  boundsAbout,
  boundsMeet,
  controlBox,
  grown,
  turningParameters,
} from '../../../engine/geometry/bounds.ts';
import { derivativeAt } from '../../../engine/geometry/evaluate.ts';
import { anyCubic, anyCurve, cubic, line } from './generators.ts';

const side = fc.integer({ min: -4, max: 4 });
const anyBounds: fc.Arbitrary<Bounds> = fc.tuple(side, side, side, side).map(([a, b, c, d]) => ({
  left: Math.min(a, b),
  right: Math.max(a, b),
  top: Math.min(c, d),
  bottom: Math.max(c, d),
}));

describe('upright rectangles', () => {
  it('are grown by a margin on every side', () => {
    expect(grown({ left: 1, right: 2, top: 3, bottom: 5 }, 10)).toEqual({
      left: -9,
      right: 12,
      top: -7,
      bottom: 15,
    });
  });

  it('about several lie about all their curves', () => {
    fc.assert(
      fc.property(fc.array(fc.array(anyCurve, { maxLength: 3 }), { maxLength: 3 }), (chains) => {
        expect(boundsAbout(chains.map(boundingBox))).toEqual(boundingBox(chains.flat()));
      }),
    );
  });

  it('meet where some place of a fine grid lies in both, their edges counted', () => {
    const within = (b: Bounds, x: number, y: number): boolean =>
      x >= b.left && x <= b.right && y >= b.top && y <= b.bottom;
    const grid = Array.from({ length: 9 }, (_, i) => i - 4);
    fc.assert(
      fc.property(anyBounds, anyBounds, (a, b) => {
        const shared = grid.some((x) => grid.some((y) => within(a, x, y) && within(b, x, y)));
        expect(boundsMeet(a, b)).toBe(shared);
      }),
    );
  });
});

describe('the box about the control points', () => {
  it('reaches to the farthest of them on every side', () => {
    expect(controlBox(cubic(1, 2, -3, 4, 5, -6, 7, 8))).toEqual({ left: -3, right: 7, top: -6, bottom: 8 });
    expect(controlBox(cubic(1, 2, 9, 4, 5, 11, -7, -8))).toEqual({ left: -7, right: 9, top: -8, bottom: 11 });
    expect(controlBox(line(4, 1, 2, 3))).toEqual({ left: 2, right: 4, top: 1, bottom: 3 });
  });
});

describe('the places where a curve turns back along an axis', () => {
  it('have no speed along it, and there are two of an S', () => {
    const wave = cubic(0, 0, 10, 30, 20, -30, 30, 0);
    expect(turningParameters(wave.from, wave.handle1, wave.handle2, wave.to, 'y')).toHaveLength(2);
    expect(turningParameters(wave.from, wave.handle1, wave.handle2, wave.to, 'x')).toHaveLength(0);
    fc.assert(
      fc.property(anyCubic, fc.constantFrom('x' as const, 'y' as const), (curve, axis) => {
        for (const t of turningParameters(curve.from, curve.handle1, curve.handle2, curve.to, axis))
          expect(derivativeAt(curve, t)[axis]).toBeCloseTo(0, 6);
      }),
    );
  });
});

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  asCubic,
  curvatureAt,
  curvatureSlopeAt,
  derivativeAt,
  directionAt,
  headingAt,
  pointAt,
  secondDerivativeAt,
  writePlaceAt,
} from '../../../engine/geometry/evaluate.ts';
import { distance } from '../../../engine/geometry/point.ts';
import { part, reversed, split } from '../../../engine/geometry/split.ts';
import {
  mirroredIn,
  movedBy,
  scaledFrom,
  transformedCurve,
  turnedBy,
} from '../../../engine/geometry/transform.ts';
import { magnitude } from '../../../engine/geometry/vector.ts';
import { uniform } from '../../uniform.ts';
import { anyCubic, anyCurve, anyPoint, cubic, line } from './generators.ts';

const share = fc.double({ min: 0.01, max: 0.99, noNaN: true });

describe('a curve', () => {
  it('has the same place and heading in plain numbers as in points, to the bit, its ends and places of no speed included', () => {
    const still = cubic(0, 0, 0, 0, 30, 40, 30, 40);
    const same = (curve: Parameters<typeof pointAt>[0], t: number): void => {
      const into = [9, 9, 9, 9, 9, 9];
      writePlaceAt(curve, t, into, 1);
      const [{ x, y }, along] = [pointAt(curve, t), headingAt(curve, t)];
      expect(into).toEqual([9, x, y, along.x, along.y, 9]);
    };
    for (const t of [0, 0.5, 1]) same(still, t);
    same(cubic(0, 0, 10, 0, 0, 0, 10, 0), 0.5);
    fc.assert(fc.property(anyCurve, uniform(0, 1), (curve, t) => same(curve, t)));
  });

  it('has the curvature of its closed form', () => {
    // The cubic with speed 1 + t^2 has curvature 2 / (1 + t^2)^2; the one with speed 3 (1 - 2 t (1 - t)) -2/3, -8/3.
    const first = cubic(0, 0, 1 / 3, 0, 2 / 3, 1 / 3, 2 / 3, 1);
    expect([0, 0.5, 1].map((t) => curvatureAt(first, t))).toEqual([
      expect.closeTo(2, 12),
      expect.closeTo(1.28, 12),
      expect.closeTo(0.5, 12),
    ]);
    const second = cubic(0, 0, 0, 1, 1, 1, 1, 0);
    expect(curvatureAt(second, 0)).toBeCloseTo(-2 / 3, 12);
    expect(curvatureAt(second, 0.5)).toBeCloseTo(-8 / 3, 12);
  });

  it('has positive curvature where it turns clockwise as drawn', () => {
    expect(curvatureAt(cubic(0, 0, 10, 0, 20, 10, 20, 20), 0.5)).toBeGreaterThan(0);
  });

  it('has derivatives that agree with differences', () => {
    fc.assert(
      fc.property(anyCurve, share, (curve, t) => {
        const h = 1e-5;
        const ahead = pointAt(curve, t + h);
        const behind = pointAt(curve, t - h);
        const slope = derivativeAt(curve, t);
        expect(slope.x).toBeCloseTo((ahead.x - behind.x) / (2 * h), 3);
        expect(slope.y).toBeCloseTo((ahead.y - behind.y) / (2 * h), 3);
        const bend = secondDerivativeAt(curve, t);
        expect(bend.x).toBeCloseTo(
          (derivativeAt(curve, t + h).x - derivativeAt(curve, t - h).x) / (2 * h),
          3,
        );
      }),
    );
  });

  it('has an end direction even where a handle has no length', () => {
    expect(directionAt(cubic(0, 0, 0, 0, 10, 0, 10, 10), 'start')).toEqual({ x: 1, y: 0 });
    expect(directionAt(cubic(0, 0, 0, 5, 10, 10, 10, 10), 'end').x).toBeCloseTo(
      Math.cos(Math.atan2(5, 10)),
      12,
    );
    expect(directionAt(cubic(0, 0, 0, 0, 0, 10, 0, 10), 'end').y).toBe(1);
    expect(headingAt(line(0, 0, 0, 5), 0.3)).toEqual({ x: 0, y: 1 });
    expect(directionAt(cubic(1, 1, 1, 1, 1, 1, 1, 1), 'start')).toEqual({ x: 0, y: 0 });
  });

  it('is the same line when its two parts are put together', () => {
    fc.assert(
      fc.property(anyCurve, share, share, (curve, t, u) => {
        const [before, after] = split(curve, t);
        expect(distance(pointAt(before, u), pointAt(curve, t * u))).toBeLessThan(1e-9);
        expect(distance(pointAt(after, u), pointAt(curve, t + (1 - t) * u))).toBeLessThan(1e-9);
        const [low, high] = [Math.min(t, u), Math.max(t, u)];
        fc.pre(high - low > 1e-3);
        expect(distance(pointAt(part(curve, low, high), 0.5), pointAt(curve, (low + high) / 2))).toBeLessThan(
          1e-9,
        );
      }),
    );
  });

  it('keeps its ends to the bit when nothing is cut off there', () => {
    const curve = cubic(0.1, 0.2, 10, 0.3, 20, 10, 20.7, 20);
    expect(part(curve, 0, 1)).toEqual(curve);
    expect(part(curve, 0, 0.5).from).toEqual(curve.from);
    expect(part(curve, 0.5, 1).to).toEqual(curve.to);
  });

  it('runs the other way when reversed, with the opposite curvature', () => {
    fc.assert(
      fc.property(anyCubic, share, (curve, t) => {
        expect(distance(pointAt(reversed(curve), t), pointAt(curve, 1 - t))).toBeLessThan(1e-9);
        fc.pre(magnitude(derivativeAt(curve, t)) > 1);
        expect(curvatureAt(reversed(curve), 1 - t)).toBeCloseTo(-curvatureAt(curve, t), 6);
      }),
    );
  });

  it('has the slope of its curvature that differences show', () => {
    fc.assert(
      fc.property(anyCubic, fc.double({ min: 0.01, max: 0.99, noNaN: true }), (curve, t) => {
        fc.pre(magnitude(derivativeAt(curve, t)) > 10);
        const step = 1e-6;
        const difference = (curvatureAt(curve, t + step) - curvatureAt(curve, t - step)) / (2 * step);
        expect(curvatureSlopeAt(curve, t)).toBeCloseTo(difference, 2);
      }),
    );
    expect(curvatureSlopeAt(line(0, 0, 1, 2), 0.5)).toBe(0);
  });

  it('is the same line written as a cubic', () => {
    const straight = line(1, 2, 30, 40);
    expect(distance(pointAt(asCubic(straight), 0.3), pointAt(straight, 0.3))).toBeLessThan(1e-12);
  });

  it('follows its control points through every transform', () => {
    const turn = uniform(-7, 7);
    fc.assert(
      fc.property(anyCurve, anyPoint, anyPoint, turn, share, (curve, a, b, angle, t) => {
        fc.pre(distance(a, b) > 1);
        for (const to of [
          movedBy({ x: a.x, y: a.y }),
          turnedBy(a, angle),
          mirroredIn(a, b),
          scaledFrom(a, 1.5),
        ])
          expect(distance(pointAt(transformedCurve(curve, to), t), to(pointAt(curve, t)))).toBeLessThan(1e-8);
        const twice = mirroredIn(a, b)(mirroredIn(a, b)(curve.from));
        expect(distance(twice, curve.from)).toBeLessThan(1e-8);
      }),
    );
  });
});

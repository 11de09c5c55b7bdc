import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { arc } from '../../../engine/geometry/arc.ts';
import { arcLength } from '../../../engine/geometry/arc-length.ts';
import type { Curve } from '../../../engine/geometry/curve.ts';
import { headingAt, pointAt } from '../../../engine/geometry/evaluate.ts';
import { fitCurve, fitPoints } from '../../../engine/geometry/fit.ts';
import type { Sample } from '../../../engine/geometry/fit-one-cubic.ts';
import { joints } from '../../../engine/geometry/inflections.ts';
import { nearestOnEdge } from '../../../engine/geometry/nearest.ts';
import { distance, point } from '../../../engine/geometry/point.ts';
import { seamCubic } from './generators.ts';

const sum = (curves: readonly Curve[]): number =>
  curves.reduce((length, curve) => length + arcLength(curve, 1e-10), 0);

const circle = (t: number): Sample => ({
  point: point(100 * Math.cos(t), 100 * Math.sin(t)),
  tangent: { x: -Math.sin(t), y: Math.cos(t) },
});

const ellipse =
  (a: number, b: number) =>
  (t: number): Sample => {
    const x = -a * Math.sin(t);
    const y = b * Math.cos(t);
    const speed = Math.hypot(x, y);
    return { point: point(a * Math.cos(t), b * Math.sin(t)), tangent: { x: x / speed, y: y / speed } };
  };

/** The clothoid with curvature pi s: the Fresnel integrals, summed by Simpson's rule in 2000 steps. */
function clothoid(s: number): Sample {
  const steps = 2000;
  let x = 0;
  let y = 0;
  for (let i = 0; i <= steps; i++) {
    const weight = i === 0 || i === steps ? 1 : i % 2 === 1 ? 4 : 2;
    const angle = (Math.PI / 2) * ((s * i) / steps) ** 2;
    x += (weight * Math.cos(angle) * s) / (3 * steps);
    y += (weight * Math.sin(angle) * s) / (3 * steps);
  }
  const angle = (Math.PI / 2) * s * s;
  return { point: point(x, y), tangent: { x: Math.cos(angle), y: Math.sin(angle) } };
}

describe('arc', () => {
  it('has the known error of one cubic for a quarter circle', () => {
    // Largest radial error 2.7253e-4 with handles 0.5522847498; quarter length 1.5710166981.
    const { curves, deviation } = arc(point(0, 0), { x: 1, y: 0 }, Math.PI / 2, 1);
    expect(curves).toHaveLength(1);
    expect(deviation).toBeCloseTo(2.7253e-4, 6);
    expect(curves[0]?.handle1.y).toBeCloseTo(0.5522847498, 10);
    expect(sum(curves)).toBeCloseTo(1.5710166981, 9);
    const radii = Array.from({ length: 1001 }, (_, i) => {
      const at = pointAt(curves[0] as Curve, i / 1000);
      return Math.hypot(at.x, at.y) - 1;
    });
    expect(Math.max(...radii)).toBeCloseTo(2.7253e-4, 8);
    expect(Math.max(...radii)).toBeLessThanOrEqual(deviation);
    expect(Math.min(...radii)).toBeGreaterThan(-1e-12);
  });

  it('takes as many cubics as the tolerance needs', () => {
    for (const tolerance of [1e-3, 1e-5, 1e-8]) {
      const { curves, deviation } = arc(point(3, 4), { x: 0, y: -50 }, -5, tolerance);
      expect(deviation).toBeLessThanOrEqual(tolerance);
      const end = curves.at(-1)?.to ?? point(0, 0);
      expect(
        distance(end, point(3 + 50 * Math.cos(-Math.PI / 2 - 5), 4 + 50 * Math.sin(-Math.PI / 2 - 5))),
      ).toBeLessThan(1e-9);
    }
  });
});

describe('fitCurve', () => {
  it('keeps every tolerance on a circle, with the deviation it says', () => {
    for (const tolerance of [1, 1e-1, 1e-2, 1e-4, 1e-6]) {
      const { curves, deviation } = fitCurve(circle, 0, 2, tolerance);
      const strays = curves.flatMap((curve) =>
        Array.from({ length: 200 }, (_, i) => {
          const at = pointAt(curve, i / 199);
          return Math.abs(Math.hypot(at.x, at.y) - 100);
        }),
      );
      expect(deviation).toBeLessThanOrEqual(tolerance);
      expect(Math.max(...strays)).toBeLessThanOrEqual(deviation + 1e-12);
    }
  });

  it('gives the perimeter of an ellipse', () => {
    // 4 a E(e^2): semi-axes 1 and 0.5, 1 and 0.75; 16 and 11 cm in mm.
    for (const [a, b, perimeter] of [
      [1, 0.5, 4.844224110274],
      [1, 0.75, 5.525873040177],
      [160, 110, 855.5179444],
    ] as const) {
      const { curves } = fitCurve(ellipse(a, b), 0, 2 * Math.PI, 1e-8 * a);
      expect(Math.abs(sum(curves) / perimeter - 1)).toBeLessThan(1e-8);
    }
  });

  it('gives the length of a catenary', () => {
    const catenary = (x: number): Sample => ({
      point: point(x, Math.cosh(x)),
      tangent: { x: 1 / Math.cosh(x), y: Math.tanh(x) },
    });
    const { curves } = fitCurve(catenary, 0, 1, 1e-9);
    expect(sum(curves)).toBeCloseTo(1.1752011936, 8);
  });

  it('follows a clothoid, which has no cubic form', () => {
    const { curves, deviation } = fitCurve(clothoid, 0, 1, 1e-6);
    expect(deviation).toBeLessThanOrEqual(1e-6);
    expect(sum(curves)).toBeCloseTo(1, 6);
    // The Fresnel integrals C(1) and S(1).
    expect(curves.at(-1)?.to.x).toBeCloseTo(0.7798934004, 9);
    expect(curves.at(-1)?.to.y).toBeCloseTo(0.4382591474, 9);
    expect(joints({ name: 'clothoid', curves }).every(({ angle }) => Math.abs(angle) < 1e-9)).toBe(true);
  });

  it('takes fewer pieces the more it may stray', () => {
    const counts = [1e-1, 1e-3, 1e-5, 1e-7].map(
      (tolerance) => fitCurve(circle, 0, 3, tolerance).curves.length,
    );
    expect(counts).toEqual(counts.toSorted((a, b) => a - b));
    expect(counts[0]).toBeLessThanOrEqual(2);
    // The sixth power: a hundredth of the error costs 100^(1/6) = 2.2 times as many pieces.
    expect(counts[3]).toBeLessThanOrEqual(30);
  });

  it('finds a cubic again from its own points', () => {
    fc.assert(
      fc.property(seamCubic, (curve) => {
        const { curves } = fitCurve(
          (t) => ({ point: pointAt(curve, t), tangent: headingAt(curve, t) }),
          0,
          1,
          1e-2,
        );
        expect(curves).toHaveLength(1);
      }),
      { numRuns: 60 },
    );
  });
});

describe('fitPoints', () => {
  it('takes as many cubics as it needs, end to end through the points, one heading at each joint', () => {
    const spiral = Array.from({ length: 121 }, (_, i) => {
      const turn = i / 12;
      return point((20 + 6 * turn) * Math.cos(turn), (20 + 6 * turn) * Math.sin(turn));
    });
    const { curves, deviation } = fitPoints(spiral, 0.05);
    expect(deviation).toBeLessThanOrEqual(0.05);
    expect(curves.length).toBeGreaterThan(4);
    expect(curves.length).toBeLessThan(20);
    expect([curves[0]?.from, curves.at(-1)?.to]).toEqual([spiral[0], spiral.at(-1)]);
    for (const p of spiral) expect(nearestOnEdge({ curves }, p).distance).toBeLessThanOrEqual(0.05);
    for (const [i, curve] of curves.entries()) {
      expect(spiral).toContainEqual(curve.from);
      if (i > 0) expect(curve.from).toEqual(curves[i - 1]?.to);
    }
    for (const { angle } of joints({ name: 'spiral', curves })) expect(angle).toBeCloseTo(0, 9);
  });

  it('passes near every point of a smooth row, within the tolerance', () => {
    const points = Array.from({ length: 21 }, (_, i) => circle(i / 10).point);
    const { curves, deviation } = fitPoints(points, 0.02, { start: { x: 0, y: 1 } });
    expect(deviation).toBeLessThanOrEqual(0.02);
    for (const p of points) expect(nearestOnEdge({ curves }, p).distance).toBeLessThanOrEqual(0.02);
    expect(curves.length).toBeLessThanOrEqual(4);
    expect(curves[0]?.handle1.x).toBeCloseTo(100, 9);
  });

  it('is straight through two points and refuses fewer', () => {
    const { curves, deviation } = fitPoints([point(0, 0), point(0, 0), point(30, 0)], 0.01);
    expect(deviation).toBe(0);
    expect(curves).toHaveLength(1);
    expect(sum(curves)).toBeCloseTo(30, 9);
    expect(() => fitPoints([point(0, 0), point(0, 0)], 0.01)).toThrow(RangeError);
  });
});

import { describe, expect, test } from 'vitest';
import type { Curve, Edge } from '../../../engine/geometry/curve.ts';
import { outwardPoints } from '../../../engine/geometry/outward-chords.ts';
import { point } from '../../../engine/geometry/point.ts';
import { strayOf } from '../../../engine/geometry/stray.ts';

/** Quarter of a circle of 100 mm as a cubic: its radius is out by 0.027 mm at most (k = 0.5522847498, from memory). */
const k = 55.22847498;
const quarter: Curve = {
  kind: 'cubic',
  from: point(100, 0),
  handle1: point(100, k),
  handle2: point(k, 100),
  to: point(0, 100),
};
const onCircle = (radius: number, degrees: number) =>
  point(radius * Math.cos((degrees * Math.PI) / 180), radius * Math.sin((degrees * Math.PI) / 180));
const chordsOf = (steps: number, radius = 100) =>
  Array.from({ length: steps + 1 }, (_, i) => onCircle(radius, (90 * i) / steps));

describe('how far a polyline strays from its curve', () => {
  test('is its sagitta, r (1 - cos half a step), and its straights run as the curve does over them', () => {
    for (const steps of [3, 9, 30]) {
      const { apart, turned } = strayOf(chordsOf(steps), [quarter]);
      const sagitta = 100 * (1 - Math.cos(Math.PI / 4 / steps));
      expect(Math.abs(apart - sagitta)).toBeLessThan(0.0273);
      expect(turned).toBe(0);
    }
  });

  test('is by how much it lies beside', () => {
    expect(strayOf(chordsOf(60, 101), [quarter]).apart).toBeCloseTo(1, 1);
  });

  test('is told where one corner is moved along the line, of directions alone where that is enough', () => {
    const zigzag = [point(0, 0), point(10, 0.004), point(20, -0.004), point(30, 0)];
    const straight: Curve = { kind: 'line', from: point(0, 0), to: point(30, 0) };
    const { apart, turned } = strayOf(zigzag, [straight]);
    expect(apart).toBeCloseTo(0.004, 9);
    expect(turned).toBeCloseTo(Math.atan(0.008 / 10), 9);
  });

  test('is told where it leaves out a corner, a joint or the rest of its curves', () => {
    const corners = [point(0, 0), point(100, 0), point(100, 0.5), point(100.2, 0), point(200, 0)];
    const spike = corners.slice(1).map((to, i): Curve => ({ kind: 'line', from: corners[i] ?? to, to }));
    expect(strayOf(corners, spike).apart).toBeCloseTo(0, 12);
    expect(strayOf(corners, spike).turned).toBeCloseTo(0, 12);
    expect(strayOf([point(0, 0), point(200, 0)], spike).apart).toBeCloseTo(0.5, 9);
    expect(strayOf(corners.slice(0, -1), spike).apart).toBeCloseTo(99.8, 9);
    expect(strayOf([], spike).apart).toBe(Number.POSITIVE_INFINITY);
  });

  test('is told where it runs the other way round', () => {
    const { apart } = strayOf(chordsOf(30).toReversed(), [quarter]);
    expect(apart).toBeGreaterThan(100);
  });

  test('is at most the flatness of tangents about a closed line, corners folded back on themselves and all', () => {
    const star: Edge = {
      name: 'star',
      curves: [
        quarter,
        { kind: 'line', from: point(0, 100), to: point(1, 30) },
        { kind: 'line', from: point(1, 30), to: point(-1, 100) },
        { kind: 'line', from: point(-1, 100), to: point(0, 0) },
        { kind: 'line', from: point(0, 0), to: point(100, 0) },
      ],
    };
    for (const flatness of [0.5, 0.05, 0.005]) {
      const corners = outwardPoints(star.curves, flatness);
      const { apart, turned } = strayOf([...corners, ...corners.slice(0, 1)], star.curves);
      expect(apart).toBeLessThanOrEqual(flatness);
      expect(turned).toBeLessThan(1e-9);
    }
  });
});

import { Bezier } from 'bezier-js';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Cubic } from '../../../engine/geometry/curve.ts';
import { curveCrossings } from '../../../engine/geometry/curve-crossings.ts';
import { headingAt, pointAt } from '../../../engine/geometry/evaluate.ts';
import {
  crossings,
  edgeCrossings,
  levelAt,
  outlineCrossings,
  throughPoints,
  upright,
} from '../../../engine/geometry/intersect.ts';
import { feetOnEdge, nearestOnCurve, nearestOnEdge } from '../../../engine/geometry/nearest.ts';
import { distance, type Point, point, vectorBetween } from '../../../engine/geometry/point.ts';
import { rootsBetween01 } from '../../../engine/geometry/roots.ts';
import { movedBy, transformedCurve, turnedBy } from '../../../engine/geometry/transform.ts';
import { cross, dot } from '../../../engine/geometry/vector.ts';
import { anyCubic, anyCurve, anyPoint, cubic, line, polygon, seamCubic } from './generators.ts';

/** Distance of p from the straight line through two points (mm), positive on the right of the heading. */
function distanceFromLine(a: Point, b: Point, p: Point): number {
  return cross(vectorBetween(a, b), vectorBetween(a, p)) / distance(a, b);
}

describe('crossings with a straight line', () => {
  it('lie on both, and are as many as the changes of side', () => {
    fc.assert(
      fc.property(anyCurve, anyPoint, anyPoint, (curve, a, b) => {
        fc.pre(distance(a, b) > 1);
        const found = crossings(curve, throughPoints(a, b));
        for (const { t, point: at, along } of found) {
          expect(distance(pointAt(curve, t), at)).toBe(0);
          expect(Math.abs(distanceFromLine(a, b, at))).toBeLessThan(1e-8);
          expect(Math.abs(along)).toBeCloseTo(distance(a, at), 6);
        }
        const sides = [curve.from, curve.to].map((p) => distanceFromLine(a, b, p) > 0);
        expect(found.length % 2 === 1).toBe(sides[0] !== sides[1]);
      }),
    );
  });

  it('count a touch once and a curve within the line not at all', () => {
    expect(crossings(cubic(0, 0, 0, 4, 4, 4, 4, 0), levelAt(3)).map(({ t }) => t)).toEqual([
      expect.closeTo(0.5, 7),
    ]);
    expect(crossings(line(0, 3, 10, 3), levelAt(3))).toEqual([]);
  });

  it('count the middle of a wave whose ends lie on the line, whichever way it goes through', () => {
    for (const y of [30, -30])
      expect(crossings(cubic(0, 0, 30, y, 60, -y, 90, 0), levelAt(0)).map(({ t }) => t)).toEqual([0, 0.5, 1]);
    for (const y of [30, -30])
      expect(crossings(cubic(0, 0, 30, y, 60, -2 * y, 90, 0), levelAt(0)).map(({ t }) => t)).toEqual([
        0,
        expect.closeTo(1 / 3, 12),
        1,
      ]);
  });

  it('count the joint of an edge, and the corner of an outline, once', () => {
    const edge = { name: 'e', curves: [line(0, 0, 10, 10), line(10, 10, 20, 20)] };
    expect(edgeCrossings(edge, levelAt(10)).map(({ curve, point: at }) => [curve, at.x])).toEqual([[0, 10]]);
    const diamond = polygon([0, -10], [10, 0], [0, 10], [-10, 0]);
    expect(outlineCrossings(diamond, levelAt(0)).map(({ along }) => along)).toEqual([-10, 10]);
    expect(outlineCrossings(diamond, upright(5)).map(({ along }) => along)).toEqual([-5, 5]);
  });
});

describe('curveCrossings', () => {
  it('finds three crossings of a line with an S and nine of two entwined cubics', () => {
    expect(curveCrossings(line(-10, 0, 110, 0), cubic(0, -20, 40, 120, 60, -120, 100, 20))).toHaveLength(3);
    const wave = cubic(0, 0, 300, 90, -200, 90, 100, 0);
    const turned = cubic(5, -20, 95, 280, 95, -220, 5, 80);
    expect(curveCrossings(wave, turned)).toHaveLength(9);
  });

  it('finds the same however the two lie on the sheet', () => {
    const wave = cubic(0, 0, 300, 90, -200, 90, 100, 0);
    const other = cubic(5, -20, 95, 280, 95, -220, 5, 80);
    const places = curveCrossings(wave, other).map(({ t, u }) => [t, u]);
    for (let step = 1; step < 12; step++) {
      const turn = turnedBy(point(3, 8), (step * Math.PI) / 6);
      const found = curveCrossings(transformedCurve(wave, turn), transformedCurve(other, turn));
      expect(found.map(({ t, u }) => [t, u])).toEqual(
        places.map(([t = 0, u = 0]) => [expect.closeTo(t, 9), expect.closeTo(u, 9)]),
      );
    }
  });

  it('finds every clear crossing that bezier-js finds, and none that is not on both curves', () => {
    const bezier = ({ from: a, handle1: b, handle2: c, to: d }: Cubic) =>
      new Bezier(a.x, a.y, b.x, b.y, c.x, c.y, d.x, d.y);
    fc.assert(
      fc.property(seamCubic, seamCubic, anyPoint, (a, other, p) => {
        const b = transformedCurve(other, movedBy({ x: p.x / 4, y: p.y / 4 }));
        const found = curveCrossings(a, b);
        for (const { t, u } of found) expect(distance(pointAt(a, t), pointAt(b, u))).toBeLessThan(1e-5);
        for (const pair of bezier(a).intersects(bezier(b), 0.5)) {
          const t = Number(String(pair).split('/')[0]);
          const near = nearestOnCurve(b, pointAt(a, t));
          // It reports where two small boxes meet. Near the ends, and where the curves run nearly side by side, the
          // curves themselves need not.
          const across = Math.abs(cross(headingAt(a, t), headingAt(b, near.t)));
          if (across < 0.5 || Math.min(t, near.t) < 0.05 || Math.max(t, near.t) > 0.95) continue;
          expect(Math.min(...found.map((own) => distance(own.point, near.point)))).toBeLessThan(3);
        }
      }),
      { numRuns: 40 },
    );
  });

  it('agrees with the crossings of a straight line', () => {
    fc.assert(
      fc.property(anyCubic, anyPoint, anyPoint, (curve, a, b) => {
        fc.pre(distance(a, b) > 10);
        const within = crossings(curve, throughPoints(a, b)).filter(
          ({ along }) => along > 1e-3 && along < distance(a, b) - 1e-3,
        );
        const found = curveCrossings(curve, line(a.x, a.y, b.x, b.y));
        for (const { point: at } of within)
          expect(Math.min(...found.map((own) => distance(own.point, at)))).toBeLessThan(1e-4);
      }),
    );
  });

  it('counts a common end', () => {
    expect(curveCrossings(line(0, 0, 10, 0), line(10, 0, 10, 10))).toEqual([
      { t: 1, u: 0, point: point(10, 0) },
    ]);
    expect(curveCrossings(line(0, 0, 10, 0), line(0, 1, 10, 1))).toEqual([]);
  });
});

describe('a loop that is crossed where it crosses itself', () => {
  it('is crossed twice at one place', () => {
    const loop = cubic(0, 0, 100, 100, -50, 100, 50, 0);
    // Its x is 25 at t = 1/2 and where 20 t^2 - 20 t + 2 = 0.
    const passes = [-1, 1].map((sign) => (1 + sign * Math.sqrt(0.6)) / 2);
    const { y } = pointAt(loop, passes[0] ?? 0);
    const found = curveCrossings(loop, line(0, y, 60, y));
    expect(found).toHaveLength(2);
    for (const [i, { t, u, point: at }] of found.toSorted((a, b) => a.t - b.t).entries()) {
      expect(t).toBeCloseTo(passes[i] ?? 0, 9);
      expect(u).toBeCloseTo(25 / 60, 9);
      expect(distance(at, point(25, y))).toBeLessThan(1e-6);
    }
  });
});

describe('nearestOnCurve', () => {
  it('is no farther than any of many places on the curve, and what bezier-js finds', () => {
    fc.assert(
      fc.property(anyCubic, anyPoint, (curve, p) => {
        const nearest = nearestOnCurve(curve, p);
        for (let i = 0; i <= 200; i++)
          expect(distance(pointAt(curve, i / 200), p)).toBeGreaterThanOrEqual(nearest.distance - 1e-9);
        const { from, handle1, handle2, to } = curve;
        const bezier = new Bezier(from.x, from.y, handle1.x, handle1.y, handle2.x, handle2.y, to.x, to.y);
        const theirs = bezier.project(p).t ?? 0;
        // It may run a little beyond the ends of the curve.
        fc.pre(theirs >= 0 && theirs <= 1);
        expect(distance(pointAt(curve, theirs), p)).toBeGreaterThanOrEqual(nearest.distance - 1e-9);
      }),
      { numRuns: 60 },
    );
  });

  it('names the curve of an edge that is nearest', () => {
    const edge = { name: 'e', curves: [line(0, 0, 10, 0), line(10, 0, 10, 10)] };
    expect(nearestOnEdge(edge, point(13, 6))).toEqual({ curve: 1, t: 0.6, point: point(10, 6), distance: 3 });
    expect(nearestOnEdge(edge, point(-3, -4)).distance).toBe(5);
  });
});

describe('feetOnEdge', () => {
  const edge = { name: 'e', curves: [line(0, 0, 10, 0), line(10, 0, 20, 10)] };
  const places = (x: number, y: number) => feetOnEdge(edge, point(x, y)).map(({ curve, t }) => [curve, t]);

  it('are where the line from the point stands square on an edge', () => {
    expect(places(4, -3)).toEqual([[0, 0.4]]);
    expect(places(4, 11)).toEqual([
      [0, 0.4],
      [1, expect.closeTo(0.25, 12)],
    ]);
    expect(places(25, 0)).toEqual([[1, expect.closeTo(0.75, 12)]]);
    expect(places(-3, 4)).toEqual([]);
  });

  it('count an end that it stands square on within rounding of a file, and no farther', () => {
    expect(places(-0.005, 7)).toContainEqual([0, 0]);
    expect(places(-0.02, 7)).not.toContainEqual([0, 0]);
    expect(places(10.005, -7)).toEqual([[0, 1]]);
  });

  // The feet from (0, c) on the parabola y = x^2 lie at 0 and at +-sqrt(c - 1/2), in units of 10 mm here, with c = 3/2.
  it('come in the order of the edge, an end that is one found twice', () => {
    const parabola = { name: 'parabola', curves: [cubic(-10, 10, 0, -10, 10, 0, 20, 40)] };
    const back = { name: 'back', curves: [cubic(20, 40, 10, 0, 0, -10, -10, 10)] };
    const found = (walked: typeof parabola) =>
      feetOnEdge(walked, point(0, 15)).map(({ point: { x } }) => Math.round(x) + 0);
    expect(found(parabola)).toEqual([-10, -10, 0, 10]);
    expect(found(back)).toEqual([10, 0, -10, -10]);
  });

  it('are three of an arch over whose hollow the point stands high', () => {
    const arch = { name: 'arch', curves: [cubic(0, 0, 0, 200, 100, 200, 100, 0)] };
    const found = feetOnEdge(arch, point(50, 60));
    expect(found).toHaveLength(3);
    for (const { t, point: at } of found)
      expect(
        dot(headingAt(arch.curves[0] ?? line(0, 0, 1, 1), t), vectorBetween(at, point(50, 60))),
      ).toBeCloseTo(0, 9);
  });
});

describe('rootsBetween01', () => {
  it('finds simple, double and end roots', () => {
    // (t - 1/4) (t - 3/4); (t - 1/2)^2; t (1 - t): in Bernstein form of degree 2.
    expect(rootsBetween01([3 / 16, -5 / 16, 3 / 16])).toEqual([
      expect.closeTo(0.25, 14),
      expect.closeTo(0.75, 14),
    ]);
    expect(rootsBetween01([1 / 4, -1 / 4, 1 / 4])).toEqual([expect.closeTo(0.5, 7)]);
    expect(rootsBetween01([0, 1, 0])).toEqual([0, 1]);
    expect(rootsBetween01([1, 2, 3])).toEqual([]);
    expect(rootsBetween01([0, 0, 0])).toEqual([]);
  });
});

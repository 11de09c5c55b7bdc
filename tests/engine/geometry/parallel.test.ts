import fc from 'fast-check';
import Coordinate from 'jsts/org/locationtech/jts/geom/Coordinate.js';
import GeometryFactory from 'jsts/org/locationtech/jts/geom/GeometryFactory.js';
import BufferOp from 'jsts/org/locationtech/jts/operation/buffer/BufferOp.js';
import BufferParameters from 'jsts/org/locationtech/jts/operation/buffer/BufferParameters.js';
import { describe, expect, it } from 'vitest';
import { arc } from '../../../engine/geometry/arc.ts';
import { arcLength } from '../../../engine/geometry/arc-length.ts';
import type { Curve, Outline } from '../../../engine/geometry/curve.ts';
import { curvatureAt, headingAt, pointAt } from '../../../engine/geometry/evaluate.ts';
import { isSimple } from '../../../engine/geometry/inside.ts';
import { nearestOnEdge } from '../../../engine/geometry/nearest.ts';
import { outlineCurves, signedArea } from '../../../engine/geometry/outline.ts';
import { cusps, parallelCurve } from '../../../engine/geometry/parallel-curve.ts';
import { parallelEdge, parallelOutline } from '../../../engine/geometry/parallel-outline.ts';
import { distance, point } from '../../../engine/geometry/point.ts';
import { polygonOf } from '../../../engine/geometry/polygon.ts';
import { uniform } from '../../uniform.ts';
import { blobOutline, cubic, line, polygon, seamCubic } from './generators.ts';

const lengthOf = (outline: Outline | undefined): number =>
  outlineCurves(outline ?? []).reduce((sum, curve) => sum + arcLength(curve, 1e-10), 0);

const along = (curves: readonly Curve[], count: number) =>
  curves.flatMap((curve) => Array.from({ length: count }, (_, i) => pointAt(curve, i / (count - 1))));

const aside = fc.constantFrom(12.7, -12.7, 6.4, -20, 30);

describe('parallelCurve', () => {
  it('keeps 0.02 mm everywhere, measured from the curve and from the true parallel', () => {
    fc.assert(
      fc.property(seamCubic, aside, (curve, d) => {
        const { curves, deviation } = parallelCurve(curve, d, 0.02);
        expect(deviation).toBeLessThanOrEqual(0.02);
        for (let i = 0; i <= 150; i++) {
          const at = pointAt(curve, i / 150);
          const heading = headingAt(curve, i / 150);
          const wanted = point(at.x + d * heading.y, at.y - d * heading.x);
          expect(nearestOnEdge({ curves }, wanted).distance).toBeLessThanOrEqual(0.02);
        }
        if (cusps(curve, d).length > 0 || curves.length === 0) return;
        for (const at of along(curves, 60)) {
          const { distance: away, t } = nearestOnEdge({ curves: [curve] }, at);
          if (t > 0 && t < 1) expect(away).toBeLessThanOrEqual(Math.abs(d) + 0.02);
        }
      }),
      { numRuns: 30 },
    );
  });

  it('takes few curves', () => {
    const counts = fc
      .sample(seamCubic, { numRuns: 200, seed: 7 })
      .map((curve) => parallelCurve(curve, 12.7, 0.02).curves.length);
    expect(counts.reduce((a, b) => a + b, 0) / counts.length).toBeLessThan(3);
  });

  it('is a line beside a line, on the left as drawn when positive', () => {
    expect(parallelCurve(line(0, 0, 10, 0), 2, 0.02).curves).toEqual([line(0, -2, 10, -2)]);
  });

  it('is the same cubic moved aside beside a straight one, however it slants and however unevenly it runs', () => {
    const end = fc.record({
      x: uniform(-300, 300),
      y: uniform(-300, 300),
    });
    const handles = fc.constantFrom([1 / 3, 2 / 3], [0, 1], [0, 0], [1, 1], [0.9, 0.1], [1, 0], [1e-9, 1]);
    fc.assert(
      fc.property(
        end,
        end,
        handles,
        aside,
        fc.constantFrom(0.02, 1e-6),
        (a, b, [s = 0, t = 0], d, tolerance) => {
          fc.pre(Math.hypot(b.x - a.x, b.y - a.y) > 1);
          const at = (share: number) => [a.x + share * (b.x - a.x), a.y + share * (b.y - a.y)] as const;
          const { curves, deviation } = parallelCurve(
            cubic(...at(0), ...at(s), ...at(t), ...at(1)),
            d,
            tolerance,
          );
          expect(curves).toHaveLength(1);
          expect(deviation).toBeLessThan(1e-9);
          for (const place of along(curves, 9)) {
            const off = (b.y - a.y) * (place.x - a.x) - (b.x - a.x) * (place.y - a.y);
            expect(off / Math.hypot(b.x - a.x, b.y - a.y)).toBeCloseTo(d, 9);
          }
        },
      ),
    );
  });

  it('has its cusps where the radius of curvature is the distance', () => {
    const valley = cubic(0, 0, 45, 60, 55, 60, 100, 0);
    const found = cusps(valley, 30);
    expect(found).toHaveLength(2);
    for (const t of found) expect(curvatureAt(valley, t)).toBeCloseTo(-1 / 30, 9);
    expect(cusps(valley, -30)).toEqual([]);
  });
});

describe('the parallel of a curve whose one handle lies on its chord', () => {
  it.each([
    ['first', cubic(0, 0, 30, 0, 60, 40, 100, 0)],
    ['second', cubic(0, 0, 30, 40, 60, 0, 100, 0)],
  ])('bends as it does, be it the %s', (_, curve) => {
    const { curves } = parallelCurve(curve, 10, 0.02);
    for (const at of along(curves, 40))
      expect(Math.abs(nearestOnEdge({ curves: [curve] }, at).distance - 10)).toBeLessThan(0.02);
  });
});

describe('the cusps of a parallel', () => {
  const wave = cubic(0, 0, 40, 90, 60, -90, 100, 0);

  it('lie on the one side of a wave, and on the other for a distance to the other side', () => {
    for (const d of [12, 20, -12, -20]) {
      const found = cusps(wave, d);
      expect(found).toHaveLength(2);
      for (const t of found) expect(curvatureAt(wave, t)).toBeCloseTo(-1 / d, 9);
      expect(cusps(wave, -d).map((t) => 1 - t)).toEqual(found.toReversed().map((t) => expect.closeTo(t, 9)));
    }
  });

  it('are as many as the changes of direction, told by many places', () => {
    fc.assert(
      fc.property(seamCubic, fc.constantFrom(12.7, -12.7, 40, -90), (curve, d) => {
        const runsOn = Array.from({ length: 2001 }, (_, i) => 1 + d * curvatureAt(curve, i / 2000) > 0);
        const changes = runsOn.filter((runs, i) => i > 0 && runs !== runsOn[i - 1]).length;
        const found = cusps(curve, d);
        for (const t of found) expect(d * curvatureAt(curve, t)).toBeCloseTo(-1, 6);
        // Two that lie nearer to each other than the places are not told by these.
        expect((found.length - changes) % 2).toBe(0);
        expect(found.length).toBeGreaterThanOrEqual(changes);
      }),
    );
  });

  it('are none where the radius is the distance at an end', () => {
    // At its start a curve with sides a, b turns by 2/3 (a x b) / |a|^3: here by -1/30, and less from there on.
    const curve = cubic(0, 0, 30, 0, 60, -45, 120, -90);
    expect(curvatureAt(curve, 0)).toBeCloseTo(-1 / 30, 12);
    expect(cusps(curve, 30)).toEqual([]);
    expect(cusps(cubic(120, -90, 60, -45, 30, 0, 0, 0), -30)).toEqual([]);
  });
});

describe('parallelOutline', () => {
  const square = polygon([0, 0], [10, 0], [10, 10], [0, 10]);
  const triangle = polygon([0, 0], [3, 0], [3, 4]);

  it('has the length and area of Steiner (1840) round a square, a triangle and a circle', () => {
    // L + 2 pi d and A + L d + pi d^2 with round corners; mitred by elementary geometry.
    for (const [outline, join, length, area] of [
      [square, 'round', 46.283185, 143.141593],
      [square, 'mitre', 48, 144],
      [triangle, 'round', 18.283185, 21.141593],
      [triangle, 'mitre', 24, 24],
    ] as const) {
      const { outlines, deviation } = parallelOutline(outline, 1, 1e-8, join);
      expect(outlines).toHaveLength(1);
      expect(deviation).toBeLessThanOrEqual(1e-8);
      expect(lengthOf(outlines[0])).toBeCloseTo(length, 5);
      expect(signedArea(outlines[0] ?? [])).toBeCloseTo(area, 5);
    }
    const circle = [{ name: 'circle', curves: arc(point(0, 0), { x: 10, y: 0 }, 2 * Math.PI, 1e-9).curves }];
    const around = parallelOutline(circle, 1, 1e-7, 'round').outlines[0];
    expect(lengthOf(around)).toBeCloseTo(69.115038, 5);
    expect(signedArea(around ?? [])).toBeCloseTo(380.132711, 5);
  });

  it('keeps the names of the edges and lengthens straight ones into a mitre', () => {
    const { outlines } = parallelOutline(square, 1, 0.02, 'mitre');
    expect(outlines[0]?.map(({ name }) => name).toSorted()).toEqual(['e0', 'e1', 'e2', 'e3']);
    expect(outlineCurves(outlines[0] ?? [])).toHaveLength(4);
  });

  it('rounds a corner too sharp for a mitre', () => {
    const needle = polygon([0, 0], [100, 0], [0, 5]);
    const tip = parallelOutline(needle, 5, 0.01, 'mitre').outlines[0] ?? [];
    expect(Math.max(...along(outlineCurves(tip), 50).map(({ x }) => x))).toBeLessThan(105.1);
  });

  it('lies one distance away everywhere, closed and simple, outward and inward', () => {
    fc.assert(
      fc.property(blobOutline, fc.constantFrom(12.7, 5, -5, -12.7), (outline, d) => {
        const { outlines, deviation } = parallelOutline(outline, d, 0.02, 'round');
        const source = { curves: outlineCurves(outline) };
        expect(deviation).toBeLessThanOrEqual(0.02);
        expect(outlines.length).toBeGreaterThanOrEqual(1);
        for (const loop of outlines) {
          const curves = outlineCurves(loop);
          for (const at of along(curves, 25))
            expect(Math.abs(nearestOnEdge(source, at).distance - Math.abs(d))).toBeLessThanOrEqual(0.021);
          for (const [i, curve] of curves.entries())
            expect(distance(curve.to, curves[(i + 1) % curves.length]?.from ?? curve.to)).toBe(0);
          expect(isSimple(loop)).toBe(true);
        }
      }),
      { numRuns: 30 },
    );
  });

  it('has the area of the buffer in JSTS', () => {
    const factory = new GeometryFactory();
    fc.assert(
      fc.property(blobOutline, fc.constantFrom(12.7, -8), (outline, d) => {
        const ring = polygonOf(outline, 0.005).map(({ x, y }) => new Coordinate(x, y));
        const jsts = factory.createPolygon(factory.createLinearRing([...ring, ...ring.slice(0, 1)]), []);
        const reference = BufferOp.bufferOp(jsts, d, new BufferParameters(64)).getArea();
        const area = parallelOutline(outline, d, 0.005, 'round').outlines.reduce(
          (sum, loop) => sum + signedArea(loop),
          0,
        );
        // Each may stray by 0.005 mm along some 900 mm.
        expect(Math.abs(area - reference)).toBeLessThan(10);
      }),
      { numRuns: 12 },
    );
  });

  it('cuts away the cusps of a hollow narrower than the distance', () => {
    const valley: Outline = [
      { name: 'valley', curves: [cubic(0, 0, 45, 0, 45, 60, 50, 60), cubic(50, 60, 55, 60, 55, 0, 100, 0)] },
      { name: 'right', curves: [line(100, 0, 100, 100)] },
      { name: 'bottom', curves: [line(100, 100, 0, 100)] },
      { name: 'left', curves: [line(0, 100, 0, 0)] },
    ];
    const source = { curves: outlineCurves(valley) };
    for (const d of [2, 5, 10, 20, 40]) {
      const { outlines } = parallelOutline(valley, d, 0.02, 'round');
      expect(outlines).toHaveLength(1);
      expect(isSimple(outlines[0] ?? [])).toBe(true);
      for (const at of along(outlineCurves(outlines[0] ?? []), 40))
        expect(Math.abs(nearestOnEdge(source, at).distance - d)).toBeLessThanOrEqual(0.021);
    }
  });

  it('closes over a slot, parts a dumbbell, and leaves nothing of a piece too narrow', () => {
    const slot = polygon([0, 0], [40, 0], [40, 50], [45, 50], [45, 0], [100, 0], [100, 100], [0, 100]);
    expect(parallelOutline(slot, 5, 0.02, 'round').outlines).toHaveLength(1);
    const dumbbell = polygon(
      [0, 0],
      [40, 0],
      [40, 18],
      [60, 18],
      [60, 0],
      [100, 0],
      [100, 40],
      [60, 40],
      [60, 22],
      [40, 22],
      [40, 40],
      [0, 40],
    );
    expect(parallelOutline(dumbbell, -5, 0.02, 'round').outlines).toHaveLength(2);
    expect(parallelOutline(square, -6, 0.02, 'round').outlines).toEqual([]);
  });
});

describe('parallelEdge', () => {
  it('goes round corners and cuts off what crosses', () => {
    const bent = { name: 'bent', curves: [line(0, 0, 50, 0), line(50, 0, 50, 50)] };
    const outside = parallelEdge(bent, 10, 0.02, 'mitre');
    expect(outside.edge).toEqual({ name: 'bent', curves: [line(0, -10, 60, -10), line(60, -10, 60, 50)] });
    const inside = parallelEdge(bent, -10, 0.02, 'mitre');
    expect(inside.edge.curves).toEqual([line(0, 10, 40, 10), line(40, 10, 40, 50)]);
  });

  it('is the parallel of its curve where there is nothing to cut', () => {
    const curve = cubic(0, 0, 40, -10, 80, -10, 120, 0);
    expect(parallelEdge({ name: 'e', curves: [curve] }, 12.7, 0.02, 'round').edge.curves).toEqual(
      parallelCurve(curve, 12.7, 0.02).curves,
    );
  });
});

import fc from 'fast-check';
import Centroid from 'jsts/org/locationtech/jts/algorithm/Centroid.js';
import Coordinate from 'jsts/org/locationtech/jts/geom/Coordinate.js';
import GeometryFactory from 'jsts/org/locationtech/jts/geom/GeometryFactory.js';
import OverlayOp from 'jsts/org/locationtech/jts/operation/overlay/OverlayOp.js';
import RelateOp from 'jsts/org/locationtech/jts/operation/relate/RelateOp.js';
import { describe, expect, it } from 'vitest';
import { arc } from '../../../engine/geometry/arc.ts';
import { boundingBox } from '../../../engine/geometry/bounds.ts';
import type { Outline } from '../../../engine/geometry/curve.ts';
import { pointAt } from '../../../engine/geometry/evaluate.ts';
import { contains, isSimple } from '../../../engine/geometry/inside.ts';
import { nearestOnEdge } from '../../../engine/geometry/nearest.ts';
import {
  centroid,
  outlineBounds,
  outlineCurves,
  reversedOutline,
  signedArea,
} from '../../../engine/geometry/outline.ts';
import { type Point, point } from '../../../engine/geometry/point.ts';
import { polygonOf, sharedArea } from '../../../engine/geometry/polygon.ts';
import { mirroredIn, movedBy, type Transform, transformedEdge } from '../../../engine/geometry/transform.ts';
import { anyCubic, anyPoint, blobOutline, cubic, line, polygon } from './generators.ts';

const transformedOutline = (outline: Outline, to: Transform): Outline =>
  outline.map((edge) => transformedEdge(edge, to));

const square = polygon([0, 0], [10, 0], [10, 10], [0, 10]);

/** An outline's polygon in JSTS. */
function inJsts(outline: Outline, tolerance: number) {
  const ring = polygonOf(outline, tolerance).map(({ x, y }) => new Coordinate(x, y));
  const factory = new GeometryFactory();
  return factory.createPolygon(factory.createLinearRing([...ring, ...ring.slice(0, 1)]), []);
}

describe('signedArea', () => {
  it('is positive for outlines that run clockwise as drawn', () => {
    expect(signedArea(square)).toBe(100);
    expect(signedArea(reversedOutline(square))).toBe(-100);
    expect(signedArea(transformedOutline(square, mirroredIn(point(0, 0), point(0, 1))))).toBe(-100);
  });

  it('is exact for cubics', () => {
    // Area under (0,0) (0,1) (1,1) (1,0) is 0.6; four quarter arcs with k = 0.5522847498 enclose 3.1424723327.
    const hill = [{ name: 'hill', curves: [cubic(0, 0, 0, 1, 1, 1, 1, 0), line(1, 0, 0, 0)] }];
    expect(signedArea(hill)).toBeCloseTo(-0.6, 14);
    const circle = [{ name: 'circle', curves: arc(point(5, 5), { x: 1, y: 0 }, 2 * Math.PI, 1).curves }];
    expect(circle[0]?.curves.length).toBe(4);
    expect(signedArea(circle)).toBeCloseTo(3.1424723327, 10);
  });

  it('agrees with the area of a fine polygon in JSTS', () => {
    fc.assert(
      fc.property(blobOutline, (outline) => {
        const fine = inJsts(outline, 1e-4).getArea();
        expect(Math.abs(signedArea(outline) - fine)).toBeLessThan(0.2);
      }),
      { numRuns: 40 },
    );
  });
});

describe('centroid', () => {
  it('agrees with that of a fine polygon in JSTS', () => {
    fc.assert(
      fc.property(blobOutline, (outline) => {
        const fine = Centroid.getCentroid(inJsts(outline, 1e-4));
        const centre = centroid(outline);
        expect(centre.x).toBeCloseTo(fine.x, 3);
        expect(centre.y).toBeCloseTo(fine.y, 3);
      }),
      { numRuns: 40 },
    );
  });

  it('moves with the outline', () => {
    const moved = centroid(transformedOutline(square, movedBy({ x: 1000, y: -500 })));
    expect(moved.x).toBeCloseTo(1005, 9);
    expect(moved.y).toBeCloseTo(-495, 9);
  });
});

describe('boundingBox', () => {
  it('holds every point of a curve and touches it on each side', () => {
    fc.assert(
      fc.property(anyCubic, (curve) => {
        const box = boundingBox([curve]);
        const points = Array.from({ length: 401 }, (_, i) => pointAt(curve, i / 400));
        const xs = points.map(({ x }) => x);
        const ys = points.map(({ y }) => y);
        for (const [low, high, all] of [
          [box.left, box.right, xs],
          [box.top, box.bottom, ys],
        ] as const) {
          expect(Math.min(...all)).toBeGreaterThanOrEqual(low - 1e-9);
          expect(Math.max(...all)).toBeLessThanOrEqual(high + 1e-9);
          expect(Math.min(...all) - low).toBeLessThan(0.1);
          expect(high - Math.max(...all)).toBeLessThan(0.1);
        }
      }),
    );
  });
});

describe('polygonOf', () => {
  it('strays from the outline by no more than the tolerance', () => {
    fc.assert(
      fc.property(blobOutline, fc.constantFrom(1, 0.1, 0.01), (outline, tolerance) => {
        const corners = polygonOf(outline, tolerance);
        const chain = { curves: outlineCurves(outline) };
        for (const [i, corner] of corners.entries()) {
          const next: Point = corners[(i + 1) % corners.length] ?? corner;
          const middle = point((corner.x + next.x) / 2, (corner.y + next.y) / 2);
          expect(nearestOnEdge(chain, middle).distance).toBeLessThanOrEqual(tolerance);
        }
      }),
      { numRuns: 20 },
    );
  });
});

describe('contains', () => {
  it('agrees with a fine polygon in JSTS away from the outline', () => {
    fc.assert(
      fc.property(blobOutline, anyPoint, (outline, far) => {
        const p = point(far.x * 0.4, far.y * 0.4);
        fc.pre(nearestOnEdge({ curves: outlineCurves(outline) }, p).distance > 0.01);
        const at = new GeometryFactory().createPoint(new Coordinate(p.x, p.y));
        const inside = RelateOp.contains(inJsts(outline, 1e-3), at);
        expect(contains(outline, p)).toBe(inside);
      }),
      { numRuns: 60 },
    );
  });

  it('is not misled by corners at the level of the point', () => {
    const diamond = polygon([0, -10], [10, 0], [0, 10], [-10, 0]);
    expect(contains(diamond, point(0, 0))).toBe(true);
    expect(contains(diamond, point(-20, 0))).toBe(false);
    expect(contains(diamond, point(-5, -10))).toBe(false);
    expect(contains(square, point(-5, 0))).toBe(false);
  });
});

describe('isSimple', () => {
  it('holds for outlines that never meet themselves', () => {
    fc.assert(
      fc.property(blobOutline, (outline) => isSimple(outline)),
      { numRuns: 40 },
    );
    expect(isSimple(square)).toBe(true);
  });

  it.each([0, 9e-14, 1e-8, 1e-6])('holds for a side whose upright handles lean out by %d mm', (out) => {
    const side = cubic(100, 0, 100 - out, 130.2, 80 - out, 260.4, 80, 390.6);
    const hem = cubic(80, 390.6, 160 / 3, 365.6, 80 / 3, 375, 0, 400);
    const edges = [line(0, 0, 100, 0), side, hem, line(0, 400, 0, 0)];
    expect(isSimple([{ name: 'panel', curves: edges }])).toBe(true);
  });

  it('sees crossing sides, a loop within one curve, a touch, and a line that turns back', () => {
    expect(isSimple(polygon([0, 0], [10, 10], [10, 0], [0, 10]))).toBe(false);
    expect(
      isSimple([{ name: 'loop', curves: [cubic(0, 0, 100, 100, 0, 100, 100, 0), line(100, 0, 0, 0)] }]),
    ).toBe(false);
    expect(isSimple(polygon([0, 0], [10, 0], [10, 10], [20, 10]))).toBe(false);
    expect(isSimple(polygon([0, 0], [10, 0], [10, 10], [5, 0], [0, 10]))).toBe(false);
    expect(isSimple(polygon([0, 0], [10, 0], [10, 10], [10, 5], [0, 5]))).toBe(false);
  });
});

describe('sharedArea', () => {
  it('is nothing for pieces that only touch and the overlap for pieces that overlap', () => {
    const beside = transformedOutline(square, movedBy({ x: 10, y: 0 }));
    const over = transformedOutline(square, movedBy({ x: 5, y: 5 }));
    const within = polygon([2, 2], [5, 2], [5, 5], [2, 5]);
    expect(sharedArea(square, beside, 0.01)).toBeCloseTo(0, 9);
    expect(sharedArea(square, over, 0.01)).toBeCloseTo(25, 9);
    expect(sharedArea(square, within, 0.01)).toBeCloseTo(9, 9);
    expect(sharedArea(square, transformedOutline(square, movedBy({ x: 50, y: 0 })), 0.01)).toBe(0);
  });

  it('agrees with the intersection in JSTS', () => {
    fc.assert(
      fc.property(blobOutline, blobOutline, fc.integer({ min: 20, max: 180 }), (a, b, x) => {
        const other = transformedOutline(b, movedBy({ x: x + 0.371, y: 7.123 }));
        const reference = OverlayOp.intersection(inJsts(a, 0.1), inJsts(other, 0.1)).getArea();
        expect(Math.abs(sharedArea(a, other, 0.1) - reference)).toBeLessThan(1e-3);
      }),
      { numRuns: 20 },
    );
  });

  it('meets in the bounds of both', () => {
    expect(outlineBounds(square)).toEqual({ left: 0, right: 10, top: 0, bottom: 10 });
  });
});

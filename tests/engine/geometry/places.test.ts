import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { arcLength } from '../../../engine/geometry/arc-length.ts';
import { betweenPlaces } from '../../../engine/geometry/between-places.ts';
import { edgeLength, edgeOf, pointAlong } from '../../../engine/geometry/edge.ts';
import { evenPlaces } from '../../../engine/geometry/even-places.ts';
import { farthestAlong } from '../../../engine/geometry/farthest.ts';
import { placeOfGreatest } from '../../../engine/geometry/greatest.ts';
import { distance, point } from '../../../engine/geometry/point.ts';
import { dot, heading } from '../../../engine/geometry/vector.ts';
import { uniform } from '../../uniform.ts';
import { anyCubic, cubic, line } from './generators.ts';

const edge = edgeOf('neckline', [
  line(0, 0, 40, 0),
  cubic(40, 0, 70, 0, 90, 30, 90, 70),
  cubic(90, 70, 90, 100, 60, 130, 30, 130),
]);

describe('even places along an edge', () => {
  it('lie where the arc length puts them, and head as the edge does', () => {
    const length = edgeLength(edge);
    for (const [i, place] of evenPlaces(edge, 29, 1e-4).entries()) {
      const exact = pointAlong(edge, (length * i) / 28);
      expect(distance(place.point, exact.point)).toBeLessThan(1e-3);
      expect(dot(place.direction, exact.direction)).toBeGreaterThan(1 - 1e-6);
    }
  });

  it('come nearer to them as the chords do', () => {
    const miss = (flatness: number): number =>
      Math.max(
        ...evenPlaces(edge, 29, flatness).map(({ point: p }, i) =>
          distance(p, pointAlong(edge, (edgeLength(edge) * i) / 28).point),
        ),
      );
    expect(miss(1)).toBeGreaterThan(miss(1e-2));
    expect(miss(1e-2)).toBeLessThan(3e-2);
  });
});

describe('the part of an edge between two places', () => {
  it('is as long as they are apart, and whole where they are its ends', () => {
    expect(edgeLength(betweenPlaces(edge, 25, 120))).toBeCloseTo(95, 5);
    expect(betweenPlaces(edge, 0, edgeLength(edge))).toBe(edge);
  });

  it('is refused where nothing would be left', () => {
    expect(() => betweenPlaces(edge, edgeLength(edge) + 1, edgeLength(edge) + 2)).toThrow(RangeError);
  });
});

describe('the farthest place of an edge', () => {
  it('is no nearer than any other place of it, whatever the direction', () => {
    fc.assert(
      fc.property(anyCubic, uniform(-3, 3), uniform(0, 1), (curve, angle, share) => {
        const drawn = edgeOf('any', [curve]);
        const far = (p: { x: number; y: number }): number => dot(heading(angle), { x: p.x, y: p.y });
        const some = pointAlong(drawn, share * arcLength(curve, 1e-3), 1e-3).point;
        expect(far(farthestAlong(drawn, heading(angle)))).toBeGreaterThan(far(some) - 1e-6);
      }),
    );
  });

  it('is the top of an arch (closed form)', () => {
    const arch = edgeOf('cap', [cubic(0, 0, 0, -100, 100, -100, 100, 0)]);
    expect(distance(farthestAlong(arch, { x: 0, y: -1 }), point(50, -75))).toBeLessThan(1e-9);
  });
});

describe('the greatest value of a function', () => {
  it('is found inside the interval and at its ends', () => {
    expect(placeOfGreatest(Math.sin, Math.cos, 0, 3, 8)).toBeCloseTo(Math.PI / 2, 9);
    expect(
      placeOfGreatest(
        (t) => t,
        () => 1,
        0,
        3,
        8,
      ),
    ).toBeCloseTo(3, 6);
    expect(
      placeOfGreatest(
        (t) => -5 - t,
        () => -1,
        0,
        3,
        8,
      ),
    ).toBeCloseTo(0, 6);
  });

  it('is narrowed down in few looks, wherever in the interval it lies', () => {
    fc.assert(
      fc.property(uniform(0.2, 9.8), uniform(0.2, 5), (summit, width) => {
        let asked = 0;
        const slope = (t: number): number => {
          asked++;
          return -(t - summit) / width - (t - summit) ** 3;
        };
        const found = placeOfGreatest(
          (t) => -((t - summit) ** 2) / (2 * width) - (t - summit) ** 4 / 4,
          slope,
          0,
          10,
          20,
        );
        // The value itself changes by rounding only nearer than about 1e-8.
        expect(Math.abs(found - summit)).toBeLessThan(1e-6);
        expect(asked).toBeLessThan(20);
      }),
    );
  });

  it('is no lower than the best look where the slope misleads, and never outside', () => {
    // A saw: it rises everywhere and falls at once at 1.7.
    const saw = (t: number): number => (t < 1.7 ? t : t - 2);
    const found = placeOfGreatest(saw, () => 1, 0, 3, 3);
    expect(found).toBeLessThanOrEqual(3);
    expect(saw(found)).toBeGreaterThanOrEqual(1);
  });
});

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { placeInPolygon } from '../../../engine/geometry/in-polygon.ts';
import { contains } from '../../../engine/geometry/inside.ts';
import { type Point, point } from '../../../engine/geometry/point.ts';

const square = [point(0, 0), point(10, 0), point(10, 10), point(0, 10)];

describe('where a point lies to a polygon', () => {
  it.each<[number, number, string]>([
    [5, 5, 'inside'],
    [0, 0, 'on'],
    [10, 10, 'on'],
    [5, 0, 'on'],
    [5, 10, 'on'],
    [0, 5, 'on'],
    [10, 5, 'on'],
    [-1, 0, 'outside'],
    [-1, 10, 'outside'],
    [11, 10, 'outside'],
    [5, -1, 'outside'],
  ])('%f, %f of a square: %s, whichever way it runs', (x, y, place) => {
    expect(placeInPolygon(point(x, y), square)).toBe(place);
    expect(placeInPolygon(point(x, y), square.toReversed())).toBe(place);
  });

  it('is told to the last digit beside a slanting edge', () => {
    // The ends of the edge and 0.3 of it, as doubles have them: what rounds away in a plain cross product decides here.
    const triangle = [point(0, 0), point(1, 3), point(-5, 3)];
    const up = (value: number): number => value * (1 + Number.EPSILON);
    expect(placeInPolygon(point(0.25, 0.75), triangle)).toBe('on');
    expect(placeInPolygon(point(up(0.25), 0.75), triangle)).toBe('outside');
    expect(placeInPolygon(point(0.25, up(0.75)), triangle)).toBe('inside');
  });

  it('is the same as among curves, wherever it lies beside the outline', () => {
    const place = fc.record({ x: fc.integer({ min: 0, max: 12 }), y: fc.integer({ min: 0, max: 12 }) });
    fc.assert(
      fc.property(
        fc.uniqueArray(place, { minLength: 3, maxLength: 9, selector: ({ x, y }) => 13 * x + y }),
        place,
        (corners, at) => {
          const polygon: readonly Point[] = corners.map(({ x, y }) => point(x, y));
          const found = placeInPolygon(point(at.x, at.y), polygon);
          fc.pre(found !== 'on');
          const curves = polygon.map((from, i) => ({
            kind: 'line' as const,
            from,
            to: polygon[(i + 1) % polygon.length] ?? from,
          }));
          expect(found === 'inside').toBe(contains([{ name: 'outline', curves }], point(at.x, at.y)));
        },
      ),
    );
  });
});

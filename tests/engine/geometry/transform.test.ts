import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  between,
  distance,
  moved,
  point,
  turnedAbout,
  vectorBetween,
} from '../../../engine/geometry/point.ts';
import { mirroredIn, movedBy, scaledFrom, turnedBy } from '../../../engine/geometry/transform.ts';
import {
  angleOf,
  cross,
  dot,
  heading,
  magnitude,
  minus,
  outward,
  plus,
  scaled,
  unit,
} from '../../../engine/geometry/vector.ts';
import { uniform } from '../../uniform.ts';
import { anyPoint } from './generators.ts';

const angle = uniform(-7, 7);
const near = (a: { x: number; y: number }, b: { x: number; y: number }): void => {
  expect(a.x).toBeCloseTo(b.x, 6);
  expect(a.y).toBeCloseTo(b.y, 6);
};

describe('turning', () => {
  it('is clockwise as drawn: from the side to down', () => {
    near(turnedAbout(point(5, 1), point(2, 1), Math.PI / 2), point(2, 4));
    near(turnedBy(point(2, 1), -Math.PI / 2)(point(5, 1)), point(2, -2));
    near(heading(Math.PI / 2), { x: 0, y: 1 });
  });

  it('keeps the distance from the pivot and adds to the angle', () => {
    fc.assert(
      fc.property(anyPoint, anyPoint, angle, (p, pivot, by) => {
        fc.pre(distance(p, pivot) > 1);
        const turned = turnedAbout(p, pivot, by);
        expect(distance(turned, pivot)).toBeCloseTo(distance(p, pivot), 6);
        const [was, is] = [vectorBetween(pivot, p), vectorBetween(pivot, turned)];
        near(unit(is), heading(angleOf(was) + by));
      }),
    );
  });
});

describe('mirroring in a line', () => {
  it('leaves the middle between a point and its image on the line, square across it', () => {
    fc.assert(
      fc.property(anyPoint, anyPoint, anyPoint, (a, b, p) => {
        fc.pre(distance(a, b) > 1);
        const image = mirroredIn(a, b)(p);
        const along = unit(vectorBetween(a, b));
        expect(cross(along, vectorBetween(a, between(p, image, 0.5)))).toBeCloseTo(0, 6);
        expect(dot(along, vectorBetween(p, image))).toBeCloseTo(0, 6);
        near(mirroredIn(a, b)(image), p);
      }),
    );
    near(mirroredIn(point(0, 0), point(0, 1))(point(3, 4)), point(-3, 4));
  });
});

describe('moving and scaling', () => {
  it('move by a vector, and away from the centre by the factor', () => {
    expect(movedBy({ x: 2, y: -3 })(point(10, 10))).toEqual(point(12, 7));
    expect(moved(point(10, 10), { x: 2, y: -3 })).toEqual(point(12, 7));
    expect(scaledFrom(point(1, 2), 3)(point(2, 4))).toEqual(point(4, 8));
    expect(scaledFrom(point(1, 2), 3)(point(1, 2))).toEqual(point(1, 2));
  });
});

describe('vectors', () => {
  it('are added, taken away, scaled and measured part by part', () => {
    const [a, b] = [
      { x: 3, y: 4 },
      { x: 2, y: -5 },
    ];
    expect([plus(a, b), minus(a, b), scaled(a, 2)]).toEqual([
      { x: 5, y: -1 },
      { x: 1, y: 9 },
      { x: 6, y: 8 },
    ]);
    expect([dot(a, b), cross(a, b), magnitude(a)]).toEqual([-14, -23, 5]);
    expect(unit(a)).toEqual({ x: 0.6, y: 0.8 });
    expect(unit({ x: 0, y: 0 })).toEqual({ x: 0, y: 0 });
    expect(outward({ x: 1, y: 0 })).toEqual({ x: 0, y: -1 });
    expect(outward({ x: 0, y: 1 })).toEqual({ x: 1, y: -0 });
  });
});

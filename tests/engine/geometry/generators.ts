import fc from 'fast-check';
import type { Cubic, Curve, Line, Outline } from '../../../engine/geometry/curve.ts';
import { type Point, point } from '../../../engine/geometry/point.ts';
import { uniform } from '../../uniform.ts';

type Four = readonly [number, number, number, number, number, number, number, number];

/** A cubic from its four control points, written out. */
export const cubic = (...[a, b, c, d, e, f, g, h]: Four): Cubic => ({
  kind: 'cubic',
  from: point(a, b),
  handle1: point(c, d),
  handle2: point(e, f),
  to: point(g, h),
});

/** A line from its two ends, written out. */
export const line = (a: number, b: number, c: number, d: number): Line => ({
  kind: 'line',
  from: point(a, b),
  to: point(c, d),
});

/** A closed polygon through the given corners; its edges are named e0, e1 ... */
export const polygon = (...corners: readonly (readonly [number, number])[]): Outline =>
  corners.map(([x, y], i) => {
    const [nextX, nextY] = corners[(i + 1) % corners.length] ?? [x, y];
    return { name: `e${i}`, curves: [line(x, y, nextX, nextY)] };
  });

/** Coordinates anywhere on a large sheet, in whole micrometres, so that they may coincide but not nearly. */
export const coordinate = fc
  .integer({ min: -500_000, max: 500_000 })
  .map((micrometres) => micrometres / 1000);

export const anyPoint: fc.Arbitrary<Point> = fc.record({ x: coordinate, y: coordinate });

/** Any cubic at all, loops and cusps among them. */
export const anyCubic: fc.Arbitrary<Cubic> = fc
  .tuple(anyPoint, anyPoint, anyPoint, anyPoint)
  .map(([from, handle1, handle2, to]) => ({ kind: 'cubic', from, handle1, handle2, to }));

export const anyCurve: fc.Arbitrary<Curve> = fc.oneof(
  anyCubic,
  fc.tuple(anyPoint, anyPoint).map(([from, to]): Line => ({ kind: 'line', from, to })),
);

/** A cubic as edges have them: 20 to 400 mm, its ends turned less than 70 degrees from its chord. */
export const seamCubic: fc.Arbitrary<Cubic> = fc
  .record({
    chord: fc.double({ min: 20, max: 400, noNaN: true }),
    lie: uniform(-Math.PI, Math.PI),
    turns: fc.tuple(uniform(-1.2, 1.2), uniform(-1.2, 1.2)),
    shares: fc.tuple(
      fc.double({ min: 0.2, max: 0.5, noNaN: true }),
      fc.double({ min: 0.2, max: 0.5, noNaN: true }),
    ),
  })
  .map(({ chord, lie, turns, shares }) => {
    const to = point(chord * Math.cos(lie), chord * Math.sin(lie));
    const [first, second] = [chord * shares[0], chord * shares[1]];
    return cubic(
      0,
      0,
      first * Math.cos(lie + turns[0]),
      first * Math.sin(lie + turns[0]),
      to.x - second * Math.cos(lie + turns[1]),
      to.y - second * Math.sin(lie + turns[1]),
      to.x,
      to.y,
    );
  });

/**
 * A simple clockwise outline of cubics: corners at rising angles about a centre, each side bulging in or out a
 * little, smooth nowhere in particular.
 */
export const blobOutline: fc.Arbitrary<Outline> = fc
  .array(
    fc.record({
      radius: fc.double({ min: 90, max: 160, noNaN: true }),
      bulge: uniform(-0.12, 0.2),
      lean: fc.double({ min: 0.25, max: 0.45, noNaN: true }),
    }),
    { minLength: 4, maxLength: 9 },
  )
  .map((corners) =>
    corners.map(({ radius, bulge, lean }, i) => {
      const next = corners[(i + 1) % corners.length] ?? { radius };
      const a = (2 * Math.PI * i) / corners.length;
      const b = (2 * Math.PI * (i + 1)) / corners.length;
      const from = point(radius * Math.cos(a), radius * Math.sin(a));
      const to = point(next.radius * Math.cos(b), next.radius * Math.sin(b));
      const dx = to.x - from.x;
      const dy = to.y - from.y;
      const at = (share: number) => point(from.x + share * dx + bulge * dy, from.y + share * dy - bulge * dx);
      return {
        name: `e${i}`,
        curves: [{ kind: 'cubic', from, handle1: at(lean), handle2: at(1 - lean), to }],
      };
    }),
  );

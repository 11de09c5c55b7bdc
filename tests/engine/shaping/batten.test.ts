import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { arc } from '../../../engine/geometry/arc.ts';
import { edgeLength, pointAlong } from '../../../engine/geometry/edge.ts';
import { inflectionCount, joints } from '../../../engine/geometry/inflections.ts';
import { nearestOnEdge } from '../../../engine/geometry/nearest.ts';
import { distance, point } from '../../../engine/geometry/point.ts';
import { heading, vector } from '../../../engine/geometry/vector.ts';
import { bandedSolution } from '../../../engine/shaping/banded.ts';
import { batten } from '../../../engine/shaping/batten.ts';
import { ofLength } from '../../../engine/shaping/of-length.ts';
import { redrawn } from '../../../engine/shaping/redraw.ts';
import { uniform } from '../../uniform.ts';

const ends = { start: { x: 1, y: 0 }, end: { x: 1, y: 0 } };

/** Places in steps up and down about a level. */
const anySteps = fc
  .array(uniform(-10, 10), { minLength: 3, maxLength: 20 })
  .map((heights) => heights.map((y, i) => point(20 * i, y)));

describe('the batten', () => {
  test('without reach goes through every place, curvature-continuous, under the headings at its ends', () => {
    fc.assert(
      fc.property(anySteps, (places) => {
        const curves = batten(places, ends, 0);
        for (const p of places) expect(nearestOnEdge({ curves }, p).distance).toBeLessThan(1e-3);
        for (const { angle, curvatureJump } of joints({ name: '', curves })) {
          expect(Math.abs(angle)).toBeLessThan(1e-9);
          expect(Math.abs(curvatureJump)).toBeLessThan(1e-9);
        }
        expect(curves[0]?.handle1.y).toBeCloseTo(places[0]?.y ?? 0, 9);
        expect(curves.at(-1)?.handle2.y).toBeCloseTo(places.at(-1)?.y ?? 0, 9);
      }),
      { numRuns: 40 },
    );
  });

  test('with the widest reach is one cubic from end to end and waves no more than once', () => {
    fc.assert(
      fc.property(anySteps, (places) => {
        const length = 20 * (places.length - 1);
        expect(inflectionCount({ name: '', curves: redrawn(batten(places, ends, 4 * length)) })).toBeLessThan(
          2,
        );
      }),
      { numRuns: 40 },
    );
  });

  // A cubic spline with exact end slopes interpolates to the fourth order: 5 h^4 |f''''| / 384 (C. de Boor, 1978).
  test('through places on a circle strays from it by no more than a cubic spline does', () => {
    const rim = { name: 'rim', curves: arc(point(0, 0), vector(100, 0), 2, 1e-9).curves };
    const places = Array.from({ length: 11 }, (_, i) => pointAlong(rim, 20 * i).point);
    const curves = batten(places, { start: heading(Math.PI / 2), end: heading(2 + Math.PI / 2) }, 0);
    for (let i = 0; i <= 100; i++) {
      const p = pointAlong({ name: '', curves }, 1.99 * i).point;
      expect(Math.abs(distance(p, point(0, 0)) - 100)).toBeLessThan((2 * 5 * 20 ** 4) / 384 / 100 ** 3);
    }
  });

  test('places on top of each other are one', () => {
    const twice = [point(0, 0), point(50, 5), point(50, 5), point(100, 0), point(100, 1e-9)];
    expect(batten(twice, ends, 0)).toHaveLength(2);
  });
});

test('a banded system is solved as the full one is, with unknowns given beforehand', () => {
  // Second differences of a parabola are constant: u = x (5 - x) solves -u" = 2 with 0 at either end.
  const matrix = Array.from({ length: 6 }, (_, i) => [2, i > 0 ? -1 : 0]);
  const found = bandedSolution(
    matrix,
    [2, 2, 2, 2, 2, 2],
    new Map([
      [0, 0],
      [5, 0],
    ]),
  );
  for (const [x, u] of found.entries()) expect(u).toBeCloseTo(x * (5 - x), 12);
});

describe('a chain made to a length', () => {
  const curves = [
    { kind: 'cubic', from: point(0, 0), handle1: point(30, 20), handle2: point(70, 20), to: point(100, 0) },
  ] as const;
  const made = (length: number) => ({ name: '', curves: ofLength(curves, length, 0) });

  test('comes out at one it can have', () => {
    for (const length of [103, 105, 108]) expect(edgeLength(made(length))).toBeCloseTo(length, 5);
  });

  test('comes as near as it can without waving to one it cannot have', () => {
    // Its end tangents meet at (50, 33.3): the two sides there are 120.2 mm long, and no calm line is longer.
    const longest = edgeLength(made(130));
    expect(longest).toBeGreaterThan(110);
    expect(longest).toBeLessThan(120.2);
    expect(inflectionCount(made(130))).toBe(0);
  });
});

import { describe, expect, it } from 'vitest';
import { arc } from '../../../engine/geometry/arc.ts';
import type { Curve } from '../../../engine/geometry/curve.ts';
import { pointAt } from '../../../engine/geometry/evaluate.ts';
import { nearestOnEdge } from '../../../engine/geometry/nearest.ts';
import { signedArea } from '../../../engine/geometry/outline.ts';
import { outwardPoints } from '../../../engine/geometry/outward-chords.ts';
import { type Point, point } from '../../../engine/geometry/point.ts';
import { vector } from '../../../engine/geometry/vector.ts';
import { cubic, line } from '../garments.ts';

const polygon = (points: readonly Point[]): readonly Curve[] =>
  points.map((from, i) => line(from, points[(i + 1) % points.length] ?? from));

/** How far a place lies outside a clockwise polygon, mm; negative inside. By the winding of the nearest side. */
function outside(points: readonly Point[], p: Point): number {
  let inside = false;
  for (const [i, a] of points.entries()) {
    const b = points[(i + 1) % points.length] ?? a;
    if (a.y > p.y !== b.y > p.y && p.x < a.x + ((p.y - a.y) / (b.y - a.y)) * (b.x - a.x)) inside = !inside;
  }
  const away = nearestOnEdge({ curves: polygon(points) }, p).distance;
  return inside ? -away : away;
}

const shapes: Readonly<Record<string, readonly Curve[]>> = {
  'round all about': arc(point(0, 0), vector(150, 0), 2 * Math.PI, 1e-4).curves,
  'with a hollow': [
    line(point(0, 0), point(300, 0)),
    cubic(point(300, 0), point(200, 100), point(200, 200), point(300, 300)),
    line(point(300, 300), point(0, 300)),
    cubic(point(0, 300), point(90, 200), point(90, 100), point(0, 0)),
  ],
  'with edges that turn between hollow and round': [
    cubic(point(0, 0), point(100, -90), point(200, 90), point(300, 0)),
    cubic(point(300, 0), point(420, 150), point(160, 180), point(300, 300)),
    line(point(300, 300), point(0, 300)),
    line(point(0, 300), point(0, 0)),
  ],
  'with a cubic that is straight, and one with a handle on its end': [
    cubic(point(0, 0), point(100, 0), point(200, 0), point(300, 0)),
    cubic(point(300, 0), point(300, 0), point(350, 200), point(300, 300)),
    cubic(point(300, 300), point(200, 340), point(0, 300), point(0, 300)),
    line(point(0, 300), point(0, 0)),
  ],
};

describe.each(Object.entries(shapes))('a shape %s', (_, curves) => {
  it.each([1, 0.05, 0.001])(
    'is held by its polygon whole, which lies no farther out than %d mm',
    (flatness) => {
      const points = outwardPoints(curves, flatness);
      const on = curves.flatMap((curve) =>
        Array.from({ length: 101 }, (_unused, i) => pointAt(curve, i / 100)),
      );
      expect(Math.max(...on.map((p) => outside(points, p)))).toBeLessThan(1e-9);
      const out = polygon(points).flatMap((side) => [side.from, pointAt(side, 0.3), pointAt(side, 0.5)]);
      expect(Math.max(...out.map((p) => nearestOnEdge({ curves }, p).distance))).toBeLessThanOrEqual(
        flatness,
      );
    },
  );

  it('has every joint among its corners', () => {
    const points = outwardPoints(curves, 0.05);
    for (const { from } of curves) expect(points).toContainEqual(from);
  });
});

it('a circle gets a polygon of tangents, larger than the circle by no more than the flatness all round', () => {
  const points = outwardPoints(shapes['round all about'] ?? [], 0.05);
  const area = signedArea([{ name: '', curves: polygon(points) }]);
  expect(area).toBeGreaterThan(Math.PI * 150 ** 2 - 1e-4);
  expect(area).toBeLessThan(Math.PI * 150.05 ** 2);
});

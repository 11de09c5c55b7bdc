import { describe, expect, it } from 'vitest';
import { meshRegion } from '../../../engine/mesh/mesh-region.ts';
import { meshQuality } from './mesh-quality.ts';

/** A border along a closed curve, clockwise as drawn. */
const along = (count: number, at: (turn: number) => readonly [number, number]): Float64Array =>
  Float64Array.from(Array.from({ length: count }, (_, i) => at((2 * Math.PI * i) / count)).flat());

const rectangle = (width: number, height: number, spacing: number): Float64Array => {
  const corners = [
    [0, 0],
    [width, 0],
    [width, height],
    [0, height],
  ] as const;
  return Float64Array.from(
    corners.flatMap(([x, y], i) => {
      const [toX, toY] = corners[(i + 1) % 4] ?? [0, 0];
      const count = Math.round(Math.hypot(toX - x, toY - y) / spacing);
      return Array.from({ length: count }, (_, k) => [
        x + ((toX - x) * k) / count,
        y + ((toY - y) * k) / count,
      ]).flat();
    }),
  );
};

const area = ({ points, triangles }: ReturnType<typeof meshRegion>): number => {
  let sum = 0;
  for (let t = 0; t < triangles.length; t += 3) {
    const [a = 0, b = 0, c = 0] = triangles.subarray(t, t + 3);
    const [ax = 0, ay = 0] = points.subarray(2 * a, 2 * a + 2);
    const [bx = 0, by = 0] = points.subarray(2 * b, 2 * b + 2);
    const [cx = 0, cy = 0] = points.subarray(2 * c, 2 * c + 2);
    sum += ((bx - ax) * (cy - ay) - (by - ay) * (cx - ax)) / 2;
  }
  return sum;
};

const degrees = (radians: number): number => (180 * radians) / Math.PI;

describe('the mesh of a region', () => {
  it('covers a rectangle exactly, with no angle under 30 degrees', () => {
    const mesh = meshRegion(rectangle(200, 130, 10), 10);
    expect(area(mesh)).toBeCloseTo(26_000, 6);
    expect(degrees(meshQuality(mesh).smallestAngle)).toBeGreaterThan(30);
  });

  it.each([7, 10, 14])('fills a kidney hollow at the top, spaced %d, with no angle under 20 degrees', (h) => {
    const kidney = along(Math.round(520 / h), (turn) => {
      const [x, y] = [100 * Math.cos(turn), 60 * Math.sin(turn)];
      return [x, y + 0.006 * (100 * 100 - x * x) * (y < 0 ? 0.9 : 0.2)];
    });
    const mesh = meshRegion(kidney, h);
    const { smallestAngle, longestSide, shortestSide } = meshQuality(mesh);
    expect(degrees(smallestAngle)).toBeGreaterThan(20);
    expect(longestSide).toBeLessThan(2 * h);
    expect(shortestSide).toBeGreaterThan(h / 2.5);
  });

  it('keeps the points of the border first and where they are', () => {
    const border = rectangle(90, 60, 9);
    const mesh = meshRegion(border, 9);
    expect(mesh.points.slice(0, border.length)).toEqual(border);
  });

  it('bears sides half as long along one stretch of the border as elsewhere', () => {
    const even = rectangle(120, 80, 10);
    const fine: number[] = [];
    for (let x = 0; x < 120; x += 5.5) fine.push(x, 0);
    for (let i = 0; i < even.length; i += 2)
      if ((even[i + 1] as number) > 0 || even[i] === 120) fine.push(even[i] as number, even[i + 1] as number);
    const mesh = meshRegion(Float64Array.from(fine), 10);
    expect(degrees(meshQuality(mesh).smallestAngle)).toBeGreaterThan(20);
  });
});

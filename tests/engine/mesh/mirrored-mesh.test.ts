import { describe, expect, it } from 'vitest';
import { mirroredMesh } from '../../../engine/mesh/mirrored-mesh.ts';
import { meshQuality } from './mesh-quality.ts';

/** A border along a closed curve that is its own mirror image, clockwise as drawn, with a point on the middle at both ends. */
const leaf = (count: number): Float64Array =>
  Float64Array.from(
    Array.from({ length: count }, (_, i) => {
      const turn = (2 * Math.PI * i) / count;
      return [80 * Math.sin(turn), -50 * Math.cos(turn) + 10 * Math.cos(2 * turn)];
    }).flat(),
  );

describe('the mesh of what is the same on both sides', () => {
  it('is the mirror image of itself, point for point and triangle for triangle', () => {
    const mesh = mirroredMesh(leaf(36), 12);
    const { points, triangles, mirror } = mesh ?? { points: [], triangles: [], mirror: [] };
    for (const [i, j] of mirror.entries()) {
      expect(points[2 * i]).toBeCloseTo(-(points[2 * j] as number), 9);
      expect(points[2 * i + 1]).toBeCloseTo(points[2 * j + 1] as number, 9);
      expect(mirror[j]).toBe(i);
    }
    const key = (corners: readonly number[]): string => corners.toSorted((a, b) => a - b).join(' ');
    const all = Array.from({ length: triangles.length / 3 }, (_, t) => [
      ...triangles.slice(3 * t, 3 * t + 3),
    ]);
    const known = new Set(all.map(key));
    expect(all.every((corners) => known.has(key(corners.map((p) => mirror[p] as number))))).toBe(true);
  });

  it('keeps the points of its border first and where they are, and has no angle under 20 degrees', () => {
    const border = leaf(36);
    const mesh = mirroredMesh(border, 12);
    expect(mesh?.points.slice(0, border.length)).toEqual(border);
    expect(((mesh ? meshQuality(mesh).smallestAngle : 0) * 180) / Math.PI).toBeGreaterThan(20);
  });

  it('covers what its border encloses', () => {
    const border = leaf(36);
    const turn = (at: ArrayLike<number>, order: readonly number[]): number =>
      order.reduce((sum, p, k) => {
        const q = order[(k + 1) % order.length] as number;
        const [x = 0, y = 0, toX = 0, toY = 0] = [at[2 * p], at[2 * p + 1], at[2 * q], at[2 * q + 1]];
        return sum + (x * toY - y * toX) / 2;
      }, 0);
    const mesh = mirroredMesh(border, 12);
    let sum = 0;
    for (let t = 0; t < (mesh?.triangles.length ?? 0); t += 3)
      sum += turn(mesh?.points ?? [], [...(mesh?.triangles.subarray(t, t + 3) ?? [])]);
    expect(sum).toBeCloseTo(
      turn(
        border,
        Array.from({ length: 36 }, (_, i) => i),
      ),
      6,
    );
  });

  it('is none where the border is not the same on both sides, or has no point on the middle', () => {
    expect(
      mirroredMesh(
        leaf(36).map((at, i) => (i === 20 ? at + 1 : at)),
        12,
      ),
    ).toBeUndefined();
    expect(mirroredMesh(Float64Array.from([10, 0, 10, 10, -10, 10, -10, 0]), 5)).toBeUndefined();
  });
});

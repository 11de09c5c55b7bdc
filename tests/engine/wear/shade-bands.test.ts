import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Seen } from '../../../engine/render/form/view.ts';
import { shadeBands } from '../../../engine/wear/shown/shade-bands.ts';

const shades = 14;

const seen = fc.tuple(fc.integer({ min: 0, max: 40 }), fc.integer({ min: 0, max: 40 }), fc.constant(0));

const area = (corners: readonly Seen[]): number =>
  corners.reduce((sum, [x, y], i) => {
    const [nextX, nextY] = corners[(i + 1) % corners.length] as Seen;
    return sum + (x * nextY - nextX * y) / 2;
  }, 0);

const lit = fc
  .record({
    corners: fc.tuple(seen, seen, seen),
    lights: fc.tuple(...[0, 1, 2].map(() => fc.double({ min: 0, max: 1, noNaN: true }))),
  })
  .filter(({ corners }) => area(corners) > 1)
  .map(({ corners, lights: [a = 0, b = 0, c = 0] }) => ({ corners, lights: [a, b, c] as const }));

describe('a triangle in shades', () => {
  it('is all of it there, and no part twice', () => {
    fc.assert(
      fc.property(lit, ({ corners, lights }) => {
        const bands = shadeBands(corners, lights, shades);
        expect(bands.every((band) => area(band.corners) > -1e-9)).toBe(true);
        expect(bands.reduce((sum, band) => sum + area(band.corners), 0)).toBeCloseTo(area(corners), 6);
        expect(new Set(bands.map(({ shade }) => shade)).size).toBe(bands.length);
      }),
    );
  });

  it('is at each place in the shade of the light there, which changes evenly from corner to corner', () => {
    fc.assert(
      fc.property(lit, ({ corners, lights }) => {
        const [a, b, c] = corners;
        // Barycentric coordinates: each corner's share is the area across from it (A. F. Möbius, 1827).
        const lightAt = (p: Seen): number =>
          (area([p, b, c]) * lights[0] + area([a, p, c]) * lights[1] + area([a, b, p]) * lights[2]) /
          area(corners);
        for (const { corners: own, shade } of shadeBands(corners, lights, shades))
          for (const corner of own) {
            expect(lightAt(corner) * shades).toBeGreaterThan(shade - 1e-6);
            expect(Math.min(lightAt(corner) * shades, shades - 1e-6)).toBeLessThan(shade + 1 + 1e-6);
          }
      }),
    );
  });

  it('is one where its light is even, and in full light the lightest', () => {
    const corners: [Seen, Seen, Seen] = [
      [0, 0, 0],
      [10, 0, 0],
      [0, 10, 0],
    ];
    expect(shadeBands(corners, [1, 1, 1], shades)).toEqual([{ corners, shade: shades - 1 }]);
    expect(shadeBands(corners, [0, 0, 0], shades)).toEqual([{ corners, shade: 0 }]);
  });
});

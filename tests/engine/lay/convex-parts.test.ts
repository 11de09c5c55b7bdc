import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { convexParts, type Ring } from '../../../engine/lay/convex-parts.ts';
import { uniform } from '../../uniform.ts';

/** Twice the area of three corners in units of 2^-106, exactly: doubles that are multiples of 2^-53 as whole numbers. */
function exactTurn(ring: readonly number[]): bigint {
  const [ax, ay, bx, by, cx, cy] = ring.map((value) => BigInt(value * 2 ** 53));
  const [x, y] = [ax as bigint, ay as bigint];
  return ((bx as bigint) - x) * ((cy as bigint) - y) - ((by as bigint) - y) * ((cx as bigint) - x);
}

/** Twice the area of a ring (the shoelace formula). */
const doubled = (ring: Ring): number => {
  let sum = 0;
  for (let i = 0; i < ring.length; i += 2) {
    const j = (i + 2) % ring.length;
    sum += (ring[i] as number) * (ring[j + 1] as number) - (ring[j] as number) * (ring[i + 1] as number);
  }
  return sum;
};

describe('convex parts', () => {
  // L. Kettner, K. Mehlhorn, S. Pion, S. Schirra, C. Yap: Classroom examples of robustness problems in geometric
  // computations, 2008, section 3: with rounding, many of these 256 triangles seem flat or turned round.
  test('of a triangle are that triangle just where it turns from x towards y, to the last digit', () => {
    for (let i = 0; i < 16; i++)
      for (let j = 0; j < 16; j++) {
        const ring = [0.5 + i * 2 ** -53, 0.5 + j * 2 ** -53, 12, 12, 24, 24];
        expect(convexParts(Float64Array.from(ring))).toHaveLength(exactTurn(ring) > 0n ? 1 : 0);
      }
  });

  test('of a star-shaped polygon are convex and cover it, without overlap', () => {
    const radii = fc.array(uniform(20, 100), { minLength: 3, maxLength: 24 });
    fc.assert(
      fc.property(radii, (all) => {
        const ring = Float64Array.from(
          all.flatMap((radius, i) => {
            const angle = (2 * Math.PI * i) / all.length;
            return [radius * Math.cos(angle), radius * Math.sin(angle)];
          }),
        );
        const parts = convexParts(ring);
        for (const part of parts)
          for (let i = 0; i < part.length; i += 2) {
            const corner = (k: number): number[] => [...part, ...part].slice(k, k + 2);
            const [a, b, c] = [corner(i), corner(i + 2), corner((i + 4) % part.length)];
            expect(doubled(Float64Array.from([...(a ?? []), ...(b ?? []), ...(c ?? [])]))).toBeGreaterThan(
              -1e-9,
            );
          }
        expect(parts.reduce((sum, part) => sum + doubled(part), 0)).toBeCloseTo(doubled(ring), 6);
      }),
    );
  });
});

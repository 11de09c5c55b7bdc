import { describe, expect, test } from 'vitest';
import { distanceAt } from '../../../engine/form/distance/distance-at.ts';
import { distanceField } from '../../../engine/form/distance/distance-field.ts';
import { shippedBodies } from '../../drafts/drafted.ts';
import { formOf } from './people.ts';

describe('the surface of a form', () => {
  test.each(shippedBodies)(
    'of the %s is closed: every edge belongs to two triangles, which run along it in opposite ways',
    (name) => {
      const { surface } = formOf(name);
      for (const { firstTriangle, triangles, points } of surface.parts) {
        const edges = new Set<string>();
        for (let t = firstTriangle; t < firstTriangle + triangles; t++)
          for (let k = 0; k < 3; k++) {
            const key = `${surface.triangles[3 * t + k]} ${surface.triangles[3 * t + ((k + 1) % 3)]}`;
            expect(edges.has(key)).toBe(false);
            edges.add(key);
          }
        for (const key of edges) expect(edges.has(key.split(' ').toReversed().join(' '))).toBe(true);
        // Euler: points less edges and faces of a closed surface without a hole is 2.
        expect(points - edges.size / 2 + triangles).toBe(2);
      }
    },
  );

  // The body of a woman is about as heavy as water (common knowledge); a form has neither head, hands nor feet, about a
  // tenth of her weight (W. T. Dempster, 1955, from memory). ANSUR II: 67.8 kg at the mean girths of bust 947 and hip 1021.
  test('holds as much as a woman of that size weighs', () => {
    const { surface } = formOf('leading-lady');
    let volume = 0;
    for (let t = 0; t < surface.triangles.length; t += 3) {
      const [a, b, c] = [0, 1, 2].map((k) => {
        const i = 3 * (surface.triangles[t + k] ?? 0);
        return [surface.points[i] ?? 0, surface.points[i + 1] ?? 0, surface.points[i + 2] ?? 0] as const;
      }) as [
        readonly [number, number, number],
        readonly [number, number, number],
        readonly [number, number, number],
      ];
      volume +=
        (a[0] * (b[1] * c[2] - b[2] * c[1]) +
          a[1] * (b[2] * c[0] - b[0] * c[2]) +
          a[2] * (b[0] * c[1] - b[1] * c[0])) /
        6;
    }
    expect(volume / 1e6).toBeGreaterThan(45);
    expect(volume / 1e6).toBeLessThan(68);
  });

  test.each(['leading-lady', 'wardrobe-mistress', 'scene-painter'])(
    'of the %s crosses itself nowhere: just outside of each triangle is outside, just inside inside',
    (name) => {
      const form = formOf(name);
      const { points, triangles, parts } = form.surface;
      const found = new Float64Array(4);
      for (const part of parts.filter((each) => !each.name.startsWith('right'))) {
        const field = distanceField(form, { parts: [part.name], spacing: 7, margin: 21 });
        let wrong = 0;
        for (let t = part.firstTriangle; t < part.firstTriangle + part.triangles; t += 3) {
          const [a, b, c] = [0, 1, 2].map((k) => 3 * (triangles[3 * t + k] ?? 0)) as [number, number, number];
          const side = (to: number, k: number): number => (points[to + k] ?? 0) - (points[a + k] ?? 0);
          const normal = [0, 1, 2].map((k) => {
            const [l, m] = [(k + 1) % 3, (k + 2) % 3];
            return side(b, l) * side(c, m) - side(b, m) * side(c, l);
          });
          const length = Math.hypot(...normal);
          const at = (off: number): number => {
            const [x, y, z] = [0, 1, 2].map(
              (k) =>
                ((points[a + k] ?? 0) + (points[b + k] ?? 0) + (points[c + k] ?? 0)) / 3 +
                (off * (normal[k] ?? 0)) / length,
            ) as [number, number, number];
            distanceAt(field, x, y, z, found);
            return found[0] ?? 0;
          };
          if (at(2) < 0.8 || at(-2) > -0.8) wrong++;
        }
        // Where a hollow or a rim is narrower than the grid a place or two may be off.
        expect(wrong / (part.triangles / 3), part.name).toBeLessThan(0.012);
      }
    },
  );
});

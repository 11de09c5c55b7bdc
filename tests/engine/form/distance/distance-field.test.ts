import { describe, expect, test } from 'vitest';
import { distanceAt } from '../../../../engine/form/distance/distance-at.ts';
import { distanceField } from '../../../../engine/form/distance/distance-field.ts';
import { nearestOnTriangle } from '../../../../engine/form/distance/triangle.ts';
import type { Form } from '../../../../engine/form/form.ts';
import { randomFrom } from '../../../../engine/numeric/random.ts';
import { formOf, trianglesOf } from '../people.ts';

/** The distance to the nearest of all triangles, one by one. */
function bruteDistance(form: Form, x: number, y: number, z: number): number {
  const found = new Float64Array(5);
  let least = Number.POSITIVE_INFINITY;
  for (const [a, b, c] of trianglesOf(form)) {
    nearestOnTriangle(form.surface.points, a, b, c, x, y, z, found);
    least = Math.min(least, found[0] ?? 0);
  }
  return Math.sqrt(least);
}

/** A ball of triangles: an octahedron halved often enough, its corners on the sphere. */
function ball(radius: number): Pick<Form, 'surface'> {
  const corners: [number, number, number][] = [
    [1, 0, 0],
    [-1, 0, 0],
    [0, 1, 0],
    [0, -1, 0],
    [0, 0, 1],
    [0, 0, -1],
  ];
  let faces = [
    [0, 2, 4],
    [2, 1, 4],
    [1, 3, 4],
    [3, 0, 4],
    [2, 0, 5],
    [1, 2, 5],
    [3, 1, 5],
    [0, 3, 5],
  ];
  const middles = new Map<string, number>();
  const middle = (a: number, b: number): number => {
    const key = [Math.min(a, b), Math.max(a, b)].join(' ');
    const known = middles.get(key);
    if (known !== undefined) return known;
    const sum = [0, 1, 2].map((k) => (corners[a]?.[k] ?? 0) + (corners[b]?.[k] ?? 0));
    const length = Math.hypot(...sum);
    corners.push(sum.map((value) => value / length) as [number, number, number]);
    middles.set(key, corners.length - 1);
    return corners.length - 1;
  };
  for (let i = 0; i < 5; i++)
    faces = faces.flatMap(([a = 0, b = 0, c = 0]) => {
      const [ab, bc, ca] = [middle(a, b), middle(b, c), middle(c, a)];
      return [
        [a, ab, ca],
        [ab, b, bc],
        [ca, bc, c],
        [ab, bc, ca],
      ];
    });
  const triangles = Uint32Array.from(faces.flat());
  return {
    surface: {
      points: Float64Array.from(corners.flat(), (value) => radius * value),
      triangles,
      parts: [
        { name: 'torso', firstPoint: 0, points: corners.length, firstTriangle: 0, triangles: faces.length },
      ],
    },
  };
}

describe('the distance to a body', () => {
  test('is that to a ball, outside and inside, and its direction is the radius', () => {
    const field = distanceField(ball(80), { parts: ['torso'] });
    const random = randomFrom(3);
    const found = new Float64Array(4);
    for (let i = 0; i < 2000; i++) {
      const way = [random() - 0.5, random() - 0.5, random() - 0.5];
      const [x, y, z] = way.map((value) => value / Math.hypot(...way)) as [number, number, number];
      const off = 30 * random() - 15;
      distanceAt(field, (80 + off) * x, (80 + off) * y, (80 + off) * z, found);
      expect(Math.abs((found[0] ?? 0) - off)).toBeLessThan(0.12);
      expect((found[1] ?? 0) * x + (found[2] ?? 0) * y + (found[3] ?? 0) * z).toBeGreaterThan(0.9998);
    }
    // Farther off it says where the body lies, some per cent off.
    distanceAt(field, 0, 130, 0, found);
    expect(found[0]).toBeGreaterThan(47);
    expect(found[0]).toBeLessThan(54);
    distanceAt(field, 0, 400, 0, found);
    expect(found[0]).toBeGreaterThan(250);
    expect(found[2]).toBeGreaterThan(0.99);
  });

  test('is that to the nearest of all triangles within a quarter of a mm for nine places in ten', () => {
    const form = formOf('leading-lady');
    const field = distanceField(form);
    const random = randomFrom(8);
    const found = new Float64Array(4);
    const { points, triangles } = form.surface;
    const off: number[] = [];
    while (off.length < 150) {
      const t = 3 * Math.floor((random() * triangles.length) / 3);
      const [x, y, z] = [0, 1, 2].map(
        (k) => (points[3 * (triangles[t] ?? 0) + k] ?? 0) + 24 * random() - 12,
      ) as [number, number, number];
      distanceAt(field, x, y, z, found);
      // Inside, only the nearest part counts, and what of it lies inside another is no surface.
      if ((found[0] ?? 0) < 0.5) continue;
      off.push(Math.abs((found[0] ?? 0) - bruteDistance(form, x, y, z)));
    }
    off.sort((a, b) => a - b);
    expect(off[Math.floor(0.5 * off.length)]).toBeLessThan(0.06);
    expect(off[Math.floor(0.9 * off.length)]).toBeLessThan(0.25);
    // In the creases between an arm and the torso.
    expect(off.at(-1)).toBeLessThan(4);
  });

  test('changes as its direction says, and mirrors itself', () => {
    const field = distanceField(formOf('understudy'), { parts: ['torso'] });
    const random = randomFrom(21);
    const [here, there, mirror] = [new Float64Array(4), new Float64Array(4), new Float64Array(4)];
    const { landmarks } = formOf('understudy');
    for (let i = 0; i < 300; i++) {
      const [x, y, z] = landmarks.bustPoint.map((value) => value + 40 * random() - 20) as [
        number,
        number,
        number,
      ];
      distanceAt(field, x, y, z, here);
      const step = 1e-4;
      distanceAt(
        field,
        x + step * (here[1] ?? 0),
        y + step * (here[2] ?? 0),
        z + step * (here[3] ?? 0),
        there,
      );
      const rise = ((there[0] ?? 0) - (here[0] ?? 0)) / step;
      expect(rise).toBeGreaterThan(0.75);
      expect(rise).toBeLessThan(1.25);
      distanceAt(field, -x, y, z, mirror);
      expect(mirror[0]).toBeCloseTo(here[0] ?? 0, 6);
      expect(mirror[1]).toBeCloseTo(-(here[1] ?? 0), 5);
    }
  });

  test('is the same for the same body', () => {
    const form = formOf('understudy');
    const options = { parts: ['torso', 'left arm'], spacing: 12 } as const;
    expect(distanceField(form, options)).toEqual(distanceField(form, options));
  });
});

describe('the nearest place of a triangle', () => {
  test('is nearer than any other place of it', () => {
    const random = randomFrom(5);
    const found = new Float64Array(5);
    for (let i = 0; i < 200; i++) {
      const points = Float64Array.from({ length: 9 }, () => 20 * random() - 10);
      const [x, y, z] = [0, 1, 2].map(() => 30 * random() - 15) as [number, number, number];
      nearestOnTriangle(points, 0, 3, 6, x, y, z, found);
      let least = Number.POSITIVE_INFINITY;
      for (let j = 0; j <= 60; j++)
        for (let k = 0; k <= 60 - j; k++) {
          const [u, v] = [j / 60, k / 60];
          const place = (c: number): number =>
            (1 - u - v) * (points[c] ?? 0) + u * (points[3 + c] ?? 0) + v * (points[6 + c] ?? 0);
          least = Math.min(least, Math.hypot(x - place(0), y - place(1), z - place(2)));
        }
      expect(Math.sqrt(found[0] ?? 0)).toBeLessThan(least + 1e-9);
      expect(least - Math.sqrt(found[0] ?? 0)).toBeLessThan(0.5);
    }
  });
});

import { describe, expect, test } from 'vitest';
import { point } from '../../../engine/geometry/point.ts';
import { DepthFields } from '../../../engine/lay/depth-fields.ts';
import { noFit } from '../../../engine/lay/no-fit.ts';
import { posturesOf } from '../../../engine/lay/postures.ts';
import { doubledArea } from '../../../engine/lay/problem.ts';
import { overlap } from '../../../engine/lay/proof.ts';
import { randomFrom } from '../../../engine/numeric/random.ts';
import { shapesOf } from './instances.ts';
import { eitherWayUp, rectangle, shape } from './shapes.ts';

const corners = (ring: Float64Array, dx: number, dy: number) =>
  Array.from({ length: ring.length / 2 }, (_, i) =>
    point((ring[2 * i] ?? 0) + dx, (ring[2 * i + 1] ?? 0) + dy),
  );

describe('convex parts', () => {
  test('fill the shape, and each is convex', () => {
    for (const one of [...shapesOf('shirts').shapes, ...shapesOf('trousers').shapes]) {
      const [posture] = posturesOf(one);
      const parts = (posture?.parts ?? []).map((ring) => corners(ring, 0, 0));
      const area = parts.reduce((sum, part) => sum + doubledArea(part), 0);
      expect(area).toBeCloseTo(Math.abs(doubledArea(one.outline)), 9);
      for (const part of parts)
        for (const [i, b] of part.entries()) {
          const [a, c] = [part.at(i - 1) ?? b, part[(i + 1) % part.length] ?? b];
          expect((b.x - a.x) * (c.y - b.y) - (b.y - a.y) * (c.x - b.x)).toBeGreaterThanOrEqual(0);
        }
    }
  });
});

describe('the depth of two shapes in each other', () => {
  test('is that of the closed form for squares: the least of the moves to the four sides', () => {
    const [square] = posturesOf(rectangle('square', 1, 2, 2));
    if (!square) throw new Error('no posture');
    const fields = new DepthFields([noFit(square.parts, square.parts)]);
    const random = randomFrom(3);
    for (let i = 0; i < 500; i++) {
      const [x, y] = [5 * random() - 2.5, 5 * random() - 2.5];
      const expected = Math.max(0, Math.min(2 - Math.abs(x), 2 - Math.abs(y)));
      expect(fields.depth(0, x, y, Infinity)).toBeCloseTo(expected, 12);
    }
  });

  test('is more than nothing exactly where they overlap', () => {
    const postures = shapesOf('shirts').shapes.slice(0, 4).flatMap(posturesOf);
    const random = randomFrom(5);
    for (const moving of postures)
      for (const fixed of postures) {
        const region = noFit(fixed.parts, moving.parts);
        const fields = new DepthFields([region]);
        for (let i = 0; i < 40; i++) {
          const x = region.left + random() * (region.right - region.left);
          const y = region.top + random() * (region.bottom - region.top);
          const overlaps = overlap(corners(moving.ring, x, y), corners(fixed.ring, 0, 0));
          expect(fields.depth(0, x, y, Infinity) > 0).toBe(overlaps);
        }
      }
  });

  test('is nothing where one just fills a notch of the other', () => {
    const [notched] = posturesOf(shape('notched', 1, [0, 0, 1, 0, 1, 1, 2, 1, 2, 0, 3, 0, 3, 2, 0, 2]));
    const [square] = posturesOf(rectangle('square', 1, 1, 1));
    if (!notched || !square) throw new Error('no posture');
    const fields = new DepthFields([noFit(notched.parts, square.parts)]);
    expect(fields.depth(0, 0, -0.5, Infinity)).toBeCloseTo(0, 12);
    expect(fields.depth(0, 0.1, -0.5, Infinity)).toBeGreaterThan(0.05);
  });
});

test('a shape that is the same turned round has one posture', () => {
  const turned = (one: ReturnType<typeof rectangle>) => posturesOf({ ...one, ways: eitherWayUp }).length;
  expect(turned(rectangle('rectangle', 1, 3, 1))).toBe(1);
  expect(turned(shape('triangle', 1, [0, 0, 3, 0, 0, 1]))).toBe(2);
});

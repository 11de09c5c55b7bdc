import type { Frame } from './frame/frame.ts';
import { type Mesh, meshOf } from './mesh.ts';
import type { Rings } from './rings.ts';
import { COLUMNS, HALF } from './section.ts';

/** Below its base the torso closes down to the crotch, inside the thighs: how far on the way, and how large it still is. */
const closing: readonly (readonly [way: number, share: number])[] = [
  [0.99, 0.3],
  [0.96, 0.5],
  [0.88, 0.68],
  [0.74, 0.81],
  [0.56, 0.9],
  [0.36, 0.955],
  [0.16, 0.988],
];

/** The torso with the neck as a closed surface: each section with its mirror image. */
export function torsoMesh(frame: Frame, rings: Rings): Mesh {
  const around = 2 * HALF;
  const loops = closing.length + rings.places.length;
  const points = new Float64Array(3 * around * loops);
  const middle = frame.side.values[0] as number;
  const write = (loop: number, ring: number, down: number, share: number): void => {
    for (let j = 0; j < COLUMNS; j++) {
      const from = 3 * (ring * COLUMNS + j);
      const [x, y, z] = [
        rings.points[from] as number,
        rings.points[from + 1] as number,
        rings.points[from + 2] as number,
      ];
      const place = (column: number, sign: number): void => {
        const to = 3 * (loop * around + column);
        points[to] = sign * share * x;
        points[to + 1] = y - down;
        points[to + 2] = middle + share * (z - middle);
      };
      place(j, 1);
      if (j > 0 && j < HALF) place(around - j, -1);
    }
    // What lies on the mirror lies on it exactly.
    points[3 * loop * around] = 0;
    points[3 * (loop * around + HALF)] = 0;
  };
  const depth = frame.levels.base - frame.crotch;
  for (const [i, [way, share]] of closing.entries()) write(i, 0, way * depth, share);
  for (let i = 0; i < rings.places.length; i++) write(closing.length + i, i, 0, 1);
  const end = (loop: number, lift: number): readonly [number, number, number] => {
    const [a, b] = [3 * loop * around, 3 * (loop * around + HALF)];
    return [
      0,
      ((points[a + 1] as number) + (points[b + 1] as number)) / 2 + lift,
      ((points[a + 2] as number) + (points[b + 2] as number)) / 2,
    ];
  };
  return meshOf({ around, points, bottom: end(0, -0.01 * depth), top: end(loops - 1, 4) });
}

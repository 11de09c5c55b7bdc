import { IN_SPACE } from '../geometry/tolerance.ts';

/** A closed surface of triangles, wound so that their normals point outward. */
export interface Mesh {
  readonly points: Float64Array;
  readonly triangles: Uint32Array;
}

/** Loops of as many points each, one above the other, with a point that closes each end. */
export interface Stack {
  /** Points of a loop; they run from the front over the wearer's left to the back and on round, seen from above clockwise. */
  readonly around: number;
  /** x, y, z, loop after loop from the lowest up. */
  readonly points: Float64Array;
  readonly bottom: readonly [number, number, number];
  readonly top: readonly [number, number, number];
}

/** The closed surface of a stack: quads cut along their shorter diagonal, and a fan at either end. */
export function meshOf({ around, points, bottom, top }: Stack): Mesh {
  const loops = points.length / (3 * around);
  const all = new Float64Array(points.length + 6);
  all.set(points);
  all.set(bottom, points.length);
  all.set(top, points.length + 3);
  const [low, high] = [loops * around, loops * around + 1];
  const triangles = new Uint32Array(3 * (2 * around * (loops - 1) + 2 * around));
  let t = 0;
  const put = (a: number, b: number, c: number): void => {
    triangles[t++] = a;
    triangles[t++] = b;
    triangles[t++] = c;
  };
  const apart = (a: number, b: number): number =>
    Math.hypot(
      (all[3 * a] as number) - (all[3 * b] as number),
      (all[3 * a + 1] as number) - (all[3 * b + 1] as number),
      (all[3 * a + 2] as number) - (all[3 * b + 2] as number),
    );
  for (let i = 0; i + 1 < loops; i++)
    for (let j = 0; j < around; j++) {
      const k = (j + 1) % around;
      const [a, b] = [i * around + j, i * around + k];
      const [c, d] = [a + around, b + around];
      // Loops that mirror themselves have quads that do; where the diagonals are alike the side decides.
      const difference = apart(a, d) - apart(b, c);
      if (difference < -IN_SPACE || (Math.abs(difference) <= IN_SPACE && j < around / 2)) {
        put(a, b, d);
        put(a, d, c);
      } else {
        put(a, b, c);
        put(b, d, c);
      }
    }
  for (let j = 0; j < around; j++) {
    const k = (j + 1) % around;
    put(low, k, j);
    const last = (loops - 1) * around;
    put(high, last + j, last + k);
  }
  return { points: all, triangles };
}

/** The mirror image of a mesh in x = 0. */
export function mirrored({ points, triangles }: Mesh): Mesh {
  const flipped = points.map((value, i) => (i % 3 === 0 ? -value : value));
  const turned = triangles.map((corner, i) => {
    const place = i % 3;
    return place === 0 ? corner : (triangles[place === 1 ? i + 1 : i - 1] as number);
  });
  return { points: flipped, triangles: turned };
}

import { meshRegion } from './mesh-region.ts';
import type { TriangleMesh } from './triangle-mesh.ts';

/** A mesh whose halves on either side of x = 0 are mirror images of each other. */
export interface MirroredMesh extends TriangleMesh {
  /** For each point the one that is its mirror image; itself on the middle. */
  readonly mirror: Int32Array;
}

/** Points so near to x = 0 lie on it, and places so near to each other are one, mm. */
const TOGETHER = 1e-3;

/**
 * Triangles over the inside of a border that is its own mirror image in x = 0, those on one side the mirror images of those
 * on the other, with sides along the middle: the half at x > 0 is meshed (`meshRegion`) and mirrored. Nothing where the
 * border is not so, or crosses the middle elsewhere than at two of its points.
 */
export function mirroredMesh(border: Float64Array, spacing: number): MirroredMesh | undefined {
  const borderCount = border.length / 2;
  const partner = partners(border);
  if (!partner) return undefined;
  const [first, second, ...more] = [...partner.keys()].filter((i) => partner[i] === i);
  if (first === undefined || second === undefined || more.length > 0) return undefined;
  // From one point on the middle to the other over x > 0, as the border runs.
  const leads = (border[2 * (first + 1)] as number) > 0;
  const [from, to] = leads ? [first, second] : [second, first];
  const stretch = Array.from(
    { length: ((to - from + borderCount) % borderCount) + 1 },
    (_, k) => (from + k) % borderCount,
  );
  if (stretch.some((i) => (border[2 * i] as number) < -TOGETHER)) return undefined;
  const [top, bottom] = [border[2 * to + 1] as number, border[2 * from + 1] as number];
  const steps = Math.max(1, Math.round(Math.abs(bottom - top) / spacing));
  const middle = Array.from({ length: steps - 1 }, (_, k) => top + ((bottom - top) * (k + 1)) / steps);
  const half = meshRegion(
    Float64Array.from([
      ...stretch.flatMap((i) => [
        partner[i] === i ? 0 : (border[2 * i] as number),
        border[2 * i + 1] as number,
      ]),
      ...middle.flatMap((y) => [0, y]),
    ]),
    spacing,
  );
  const points = [...border];
  const mirror = [...partner];
  const add = (x: number, y: number): number => points.push(x, y) / 2 - 1;
  // Where each point of the half, and its mirror image, stands among all.
  const here: number[] = [];
  const there: number[] = [];
  for (let k = 0; k < half.points.length / 2; k++) {
    const [x, y] = [half.points[2 * k] as number, half.points[2 * k + 1] as number];
    const known = stretch[k];
    const onMiddle = known === undefined && k < half.borderCount;
    const own = known ?? add(x, y);
    const other = known === undefined ? (onMiddle ? own : add(-x, y)) : (partner[known] as number);
    mirror[own] = other;
    mirror[other] = own;
    here.push(own);
    there.push(other);
  }
  const triangles: number[] = [];
  for (const p of half.triangles) triangles.push(here[p] as number);
  for (let t = 0; t < half.triangles.length; t += 3)
    for (const k of [0, 2, 1]) triangles.push(there[half.triangles[t + k] as number] as number);
  return {
    points: Float64Array.from(points),
    triangles: Int32Array.from(triangles),
    borderCount,
    mirror: Int32Array.from(mirror),
  };
}

/** For each point of a border the one that is its mirror image; nothing where any has none. */
function partners(border: Float64Array): readonly number[] | undefined {
  const count = border.length / 2;
  // Mirrored, a border runs the other way round: one pair says all others.
  const apart = (i: number, j: number): number =>
    Math.hypot(
      (border[2 * i] as number) + (border[2 * j] as number),
      (border[2 * i + 1] as number) - (border[2 * j + 1] as number),
    );
  let last = 0;
  for (let j = 1; j < count; j++) if (apart(0, j) < apart(0, last)) last = j;
  const found = Array.from({ length: count }, (_, i) => (last - i + count) % count);
  return found.every((j, i) => apart(i, j) < TOGETHER) ? found : undefined;
}

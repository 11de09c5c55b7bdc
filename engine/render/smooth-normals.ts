import { triangleNormal } from '../geometry/space.ts';

/** At each point of a surface the sum of the normals of the faces about it, by area, one long: x, y, z ... */
export function smoothNormals({
  points,
  triangles,
}: {
  readonly points: Float64Array;
  readonly triangles: ArrayLike<number>;
}): Float32Array {
  const sums = new Float64Array(points.length);
  for (let t = 0; t < triangles.length; t += 3) {
    const [a, b, c] = [0, 1, 2].map((k) => triangles[t + k] as number) as [number, number, number];
    const normal = triangleNormal(points, a, b, c);
    for (const corner of [a, b, c])
      for (let k = 0; k < 3; k++)
        sums[3 * corner + k] = (sums[3 * corner + k] as number) + (normal[k] as number);
  }
  const normals = new Float32Array(sums.length);
  for (let i = 0; i < sums.length; i += 3) {
    const length = Math.hypot(sums[i] as number, sums[i + 1] as number, sums[i + 2] as number) || 1;
    for (let k = 0; k < 3; k++) normals[i + k] = (sums[i + k] as number) / length;
  }
  return normals;
}

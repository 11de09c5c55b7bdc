import type { PartName, Surface } from '../form.ts';
import type { Grid } from './grid.ts';
import { outwardNormals } from './normals.ts';
import { nearestOnTriangle } from './triangle.ts';

/** So many cells to either side of the surface hold exact distances. */
const exactCells = 3;

/**
 * Exact signed distances near one part of a body, everywhere else infinity: the nearest triangle's, its sign by the pseudonormal
 * of the feature that is nearest (J. A. Baerentzen and H. Aanaes, Signed distance computation using the angle weighted
 * pseudonormal, IEEE TVCG 11, 2005).
 */
export function exactBand(surface: Surface, name: PartName, { origin, spacing, counts }: Grid): Float64Array {
  const part = surface.parts.find((each) => each.name === name);
  const [nx, ny, nz] = counts;
  const own = new Float64Array(nx * ny * nz).fill(Number.POSITIVE_INFINITY);
  if (!part) return own;
  const { points, triangles } = surface;
  const normals = outwardNormals(surface, part);
  const reach = exactCells * spacing;
  const found = new Float64Array(5);
  const low = [0, 0, 0];
  const high = [0, 0, 0];
  const centre = [0, 0, 0];
  for (let t = part.firstTriangle; t < part.firstTriangle + part.triangles; t++) {
    const [a, b, c] = [
      3 * (triangles[3 * t] as number),
      3 * (triangles[3 * t + 1] as number),
      3 * (triangles[3 * t + 2] as number),
    ];
    // A node whose known distance is less than that to a ball round the triangle need not look at it.
    let ball = 0;
    for (let k = 0; k < 3; k++) {
      const [pa, pb, pc] = [points[a + k] as number, points[b + k] as number, points[c + k] as number];
      const from = origin[k] as number;
      const [least, most] = [Math.min(pa, pb, pc), Math.max(pa, pb, pc)];
      low[k] = Math.max(0, Math.ceil((least - reach - from) / spacing));
      high[k] = Math.min((counts[k] as number) - 1, Math.floor((most + reach - from) / spacing));
      centre[k] = (least + most) / 2;
      ball += ((most - least) / 2) ** 2;
    }
    ball = Math.sqrt(ball);
    for (let k = low[2] as number; k <= (high[2] as number); k++)
      for (let j = low[1] as number; j <= (high[1] as number); j++)
        for (let i = low[0] as number; i <= (high[0] as number); i++) {
          const node = (k * ny + j) * nx + i;
          const x = origin[0] + i * spacing;
          const y = origin[1] + j * spacing;
          const z = origin[2] + k * spacing;
          const known = Math.min(reach, Math.abs(own[node] as number)) + ball;
          const off =
            (x - (centre[0] as number)) ** 2 +
            (y - (centre[1] as number)) ** 2 +
            (z - (centre[2] as number)) ** 2;
          if (off > known * known) continue;
          nearestOnTriangle(points, a, b, c, x, y, z, found);
          const squared = found[0] as number;
          if (squared > reach * reach || squared >= (own[node] as number) ** 2) continue;
          own[node] = normals.side(t, found, x, y, z) * Math.sqrt(squared);
        }
  }
  return own;
}

import { minus, placeAt, type Spatial, triangleNormal } from '../../geometry/space.ts';
import type { Part, Surface } from '../form.ts';

/** Outward directions of one part's faces, edges and corners; of which only the side matters, so they are not of length 1. */
export interface OutwardNormals {
  /** 1 outside and -1 inside for a place whose nearest point (`found`, of `nearestOnTriangle`) lies on a triangle. */
  readonly side: (triangle: number, found: Float64Array, x: number, y: number, z: number) => 1 | -1;
}

/** The angle-weighted pseudonormals of Baerentzen and Aanaes, 2005: right for every closed surface. */
export function outwardNormals({ points, triangles }: Surface, part: Part): OutwardNormals {
  const faces = new Float64Array(3 * part.triangles);
  const corners = new Float64Array(3 * part.points);
  const edges = new Map<number, Float64Array>();
  const edgeKey = (a: number, b: number): number => Math.min(a, b) * (points.length / 3) + Math.max(a, b);
  for (let t = 0; t < part.triangles; t++) {
    const at = 3 * (part.firstTriangle + t);
    const ids = [triangles[at] as number, triangles[at + 1] as number, triangles[at + 2] as number];
    const normal = faceNormal(points, ids);
    faces.set(normal, 3 * t);
    for (let k = 0; k < 3; k++) {
      const [a, b, c] = [ids[k] as number, ids[(k + 1) % 3] as number, ids[(k + 2) % 3] as number];
      const angle = angleAt(points, a, b, c);
      const corner = 3 * (a - part.firstPoint);
      const key = edgeKey(a, b);
      const edge = edges.get(key) ?? new Float64Array(3);
      for (let d = 0; d < 3; d++) {
        corners[corner + d] = (corners[corner + d] as number) + angle * (normal[d] as number);
        edge[d] = (edge[d] as number) + (normal[d] as number);
      }
      edges.set(key, edge);
    }
  }
  const sideOf = (
    nx: number,
    ny: number,
    nz: number,
    found: Float64Array,
    x: number,
    y: number,
    z: number,
  ): 1 | -1 =>
    nx * (x - (found[1] as number)) + ny * (y - (found[2] as number)) + nz * (z - (found[3] as number)) < 0
      ? -1
      : 1;
  return {
    side: (triangle, found, x, y, z) => {
      const feature = found[4] as number;
      const at = 3 * triangle;
      if (feature === 6) {
        const face = at - 3 * part.firstTriangle;
        return sideOf(
          faces[face] as number,
          faces[face + 1] as number,
          faces[face + 2] as number,
          found,
          x,
          y,
          z,
        );
      }
      if (feature < 3) {
        const corner = 3 * ((triangles[at + feature] as number) - part.firstPoint);
        return sideOf(
          corners[corner] as number,
          corners[corner + 1] as number,
          corners[corner + 2] as number,
          found,
          x,
          y,
          z,
        );
      }
      const [a, b] = [triangles[at + feature - 3] as number, triangles[at + ((feature - 2) % 3)] as number];
      const [ex, ey, ez] = edges.get(edgeKey(a, b)) ?? [0, 0, 0];
      return sideOf(ex as number, ey as number, ez as number, found, x, y, z);
    },
  };
}

function faceNormal(points: Float64Array, [a, b, c]: readonly number[]): Float64Array {
  const normal = triangleNormal(points, a as number, b as number, c as number);
  const length = Math.hypot(...normal) || 1;
  return Float64Array.from(normal, (value) => value / length);
}

function angleAt(points: Float64Array, a: number, b: number, c: number): number {
  const [u, v] = [b, c].map((p) => minus(placeAt(points, p), placeAt(points, a))) as [Spatial, Spatial];
  const dot = u[0] * v[0] + u[1] * v[1] + u[2] * v[2];
  return Math.acos(Math.min(1, Math.max(-1, dot / (Math.hypot(...u) * Math.hypot(...v) || 1))));
}

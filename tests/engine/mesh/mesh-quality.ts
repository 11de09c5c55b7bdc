import type { TriangleMesh } from '../../../engine/mesh/triangle-mesh.ts';

/** Smallest angle of any triangle, radians; and the longest and shortest side, mm. */
interface MeshQuality {
  readonly smallestAngle: number;
  readonly longestSide: number;
  readonly shortestSide: number;
}

/** How good the triangles are; angles at a point in `sharp`, corners that the border has itself, do not count. */
export function meshQuality({ points, triangles }: TriangleMesh, sharp?: ReadonlySet<number>): MeshQuality {
  let smallestAngle = Math.PI;
  let longestSide = 0;
  let shortestSide = Infinity;
  for (let t = 0; t < triangles.length; t += 3) {
    for (let k = 0; k < 3; k++) {
      const a = triangles[t + k] as number;
      const b = triangles[t + ((k + 1) % 3)] as number;
      const c = triangles[t + ((k + 2) % 3)] as number;
      const ux = (points[2 * b] as number) - (points[2 * a] as number);
      const uy = (points[2 * b + 1] as number) - (points[2 * a + 1] as number);
      const vx = (points[2 * c] as number) - (points[2 * a] as number);
      const vy = (points[2 * c + 1] as number) - (points[2 * a + 1] as number);
      const side = Math.hypot(ux, uy);
      longestSide = Math.max(longestSide, side);
      shortestSide = Math.min(shortestSide, side);
      if (!sharp?.has(a))
        smallestAngle = Math.min(smallestAngle, Math.abs(Math.atan2(ux * vy - uy * vx, ux * vx + uy * vy)));
    }
  }
  return { smallestAngle, longestSide, shortestSide };
}

import { type Part, type PartName, partNames, type Surface } from './form.ts';
import type { Mesh } from './mesh.ts';

/** The parts of a body as one surface. */
export function surfaceOf(meshes: Readonly<Record<PartName, Mesh>>): Surface {
  const parts: Part[] = [];
  let [pointCount, triangleCount] = [0, 0];
  for (const name of partNames) {
    const { points, triangles } = meshes[name];
    const part = {
      name,
      firstPoint: pointCount,
      points: points.length / 3,
      firstTriangle: triangleCount,
      triangles: triangles.length / 3,
    };
    parts.push(part);
    pointCount += part.points;
    triangleCount += part.triangles;
  }
  const points = new Float64Array(3 * pointCount);
  const triangles = new Uint32Array(3 * triangleCount);
  for (const { name, firstPoint, firstTriangle } of parts) {
    points.set(meshes[name].points, 3 * firstPoint);
    triangles.set(
      meshes[name].triangles.map((corner) => corner + firstPoint),
      3 * firstTriangle,
    );
  }
  return { points, triangles, parts };
}

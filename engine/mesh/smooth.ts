/**
 * The points inside moved to the centre of the triangles about them, each triangle counted by its area: it evens out sizes
 * and angles, and leaves the border (the first points) alone.
 */
export function smoothed(points: Float64Array, triangles: Int32Array, borderCount: number): Float64Array {
  const sums = new Float64Array(points.length);
  const areas = new Float64Array(points.length / 2);
  for (let t = 0; t < triangles.length; t += 3) {
    const a = triangles[t] as number;
    const b = triangles[t + 1] as number;
    const c = triangles[t + 2] as number;
    const ax = points[2 * a] as number;
    const ay = points[2 * a + 1] as number;
    const bx = points[2 * b] as number;
    const by = points[2 * b + 1] as number;
    const cx = points[2 * c] as number;
    const cy = points[2 * c + 1] as number;
    const area = Math.abs((bx - ax) * (cy - ay) - (by - ay) * (cx - ax));
    for (let k = 0; k < 3; k++) {
      const p = triangles[t + k] as number;
      areas[p] = (areas[p] as number) + area;
      sums[2 * p] = (sums[2 * p] as number) + (area * (ax + bx + cx)) / 3;
      sums[2 * p + 1] = (sums[2 * p + 1] as number) + (area * (ay + by + cy)) / 3;
    }
  }
  const moved = points.slice();
  for (let p = borderCount; p < areas.length; p++) {
    const area = areas[p] as number;
    if (!(area > 0)) continue;
    moved[2 * p] = (sums[2 * p] as number) / area;
    moved[2 * p + 1] = (sums[2 * p + 1] as number) / area;
  }
  return moved;
}

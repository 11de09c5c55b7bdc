import type { Sewn, SewnPanel } from './sewn.ts';

/**
 * Where the points of a mesh lie when the same garment, meshed coarser, hangs at `x`: each where its place on the flat panel
 * has come to, by the coarse triangle it lies in. Where panels meet their answers are averaged.
 */
export function carriedOver(coarse: Sewn, x: Float64Array, fine: Sewn): Float64Array {
  const sums = new Float64Array(3 * fine.sheet.count);
  const times = new Float64Array(fine.sheet.count);
  for (const [i, { mesh, points }] of fine.panels.entries()) {
    const from = coarse.panels[i];
    if (!from) throw new RangeError('Both meshes are of one garment.');
    for (const [k, p] of points.entries()) {
      carry(from, x, mesh.points[2 * k] as number, mesh.points[2 * k + 1] as number, sums, p);
      times[p] = (times[p] as number) + 1;
    }
  }
  return sums.map((sum, k) => sum / (times[Math.floor(k / 3)] as number));
}

/** Adds the place in space of a place on a flat panel. Just outside it, the nearest triangle is prolonged. */
export function carry(
  { mesh, points }: SewnPanel,
  x: Float64Array,
  u: number,
  v: number,
  sums: Float64Array,
  to: number,
): void {
  const flat = mesh.points;
  let best = -Infinity;
  let triangle = 0;
  let second = 0;
  let third = 0;
  for (let t = 0; t < mesh.triangles.length; t += 3) {
    const a = 2 * (mesh.triangles[t] as number);
    const b = 2 * (mesh.triangles[t + 1] as number);
    const c = 2 * (mesh.triangles[t + 2] as number);
    const bx = (flat[b] as number) - (flat[a] as number);
    const by = (flat[b + 1] as number) - (flat[a + 1] as number);
    const cx = (flat[c] as number) - (flat[a] as number);
    const cy = (flat[c + 1] as number) - (flat[a + 1] as number);
    const px = u - (flat[a] as number);
    const py = v - (flat[a + 1] as number);
    const turn = bx * cy - by * cx;
    const s = (px * cy - py * cx) / turn;
    const r = (bx * py - by * px) / turn;
    const least = Math.min(s, r, 1 - s - r);
    if (least <= best) continue;
    best = least;
    triangle = t;
    second = s;
    third = r;
    if (least >= 0) break;
  }
  const shares = [1 - second - third, second, third];
  for (let k = 0; k < 3; k++) {
    const p = 3 * (points[mesh.triangles[triangle + k] as number] as number);
    for (let axis = 0; axis < 3; axis++)
      sums[3 * to + axis] = (sums[3 * to + axis] as number) + (shares[k] as number) * (x[p + axis] as number);
  }
}

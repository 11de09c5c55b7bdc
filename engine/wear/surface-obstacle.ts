import type { Obstacle } from '../cloth/obstacle.ts';

/** A closed surface of triangles whose corners run round so that its normals point outward. */
export interface Surface {
  /** x, y, z ..., mm */
  readonly points: Float64Array;
  readonly triangles: ArrayLike<number>;
}

/** Triangles by the cells of a grid that lie within reach of them. */
interface Near {
  readonly reach: number;
  readonly cell: number;
  readonly cells: ReadonlyMap<number, readonly number[]>;
}

/** Distances up to this are exact, mm; further off a place is only known to be at least so far. */
const REACH = 40;

/** First the few triangles within 8 mm are tried: cloth at rest lies there. */
const grids = [
  { reach: 8, cell: 5 },
  { reach: REACH, cell: 25 },
] as const;

/** Cells are numbered from here, so that no number is less than nothing: within 10 m of the origin. */
const MIDDLE = 2048;

const cellAt = (value: number, cell: number): number => Math.floor(value / cell) + MIDDLE;
const cellKey = (i: number, j: number, k: number): number => (i * 4096 + j) * 4096 + k;

/**
 * A closed surface as an obstacle: distance to its nearest triangle, found among those near the place's cell of a grid; the
 * direction is that of the surface's normals there, smooth from triangle to triangle. Places more than 40 mm off are told to
 * be 40 mm off; inside, no more than 40 mm deep, the distance is less than nothing.
 */
export function surfaceObstacle({ points, triangles }: Surface): Obstacle {
  const normals = pointNormals(points, triangles);
  const near = grids.map(({ reach, cell }) => gridOf(points, triangles, reach, cell));
  const foot = new Float64Array(2);
  return (x, y, z, out) => {
    let best = Infinity;
    let triangle = -1;
    let u = 0;
    let v = 0;
    for (const { reach, cell, cells } of near) {
      const some = cells.get(cellKey(cellAt(x, cell), cellAt(y, cell), cellAt(z, cell)));
      if (!some) continue;
      best = reach * reach;
      for (const t of some) {
        const square = footOn(points, triangles, t, x, y, z, foot);
        if (square >= best) continue;
        best = square;
        triangle = t;
        u = foot[0] as number;
        v = foot[1] as number;
      }
      if (triangle >= 0) break;
    }
    if (triangle < 0) {
      out.fill(0);
      out[0] = REACH;
      return;
    }
    const w = 1 - u - v;
    const a = 3 * (triangles[3 * triangle] as number);
    const b = 3 * (triangles[3 * triangle + 1] as number);
    const c = 3 * (triangles[3 * triangle + 2] as number);
    let length = 0;
    let side = 0;
    for (let k = 0; k < 3; k++) {
      const n =
        w * (normals[a + k] as number) + u * (normals[b + k] as number) + v * (normals[c + k] as number);
      const at =
        w * (points[a + k] as number) + u * (points[b + k] as number) + v * (points[c + k] as number);
      out[k + 1] = n;
      length += n * n;
      side += n * ((k === 0 ? x : k === 1 ? y : z) - at);
    }
    out[0] = side < 0 ? -Math.sqrt(best) : Math.sqrt(best);
    for (let k = 1; k < 4; k++) out[k] = (out[k] as number) / Math.sqrt(length);
  };
}

function gridOf(points: Float64Array, triangles: ArrayLike<number>, reach: number, cell: number): Near {
  const cells = new Map<number, number[]>();
  const low = new Int32Array(3);
  const high = new Int32Array(3);
  for (let t = 0; t < triangles.length; t += 3) {
    for (let axis = 0; axis < 3; axis++) {
      const a = points[3 * (triangles[t] as number) + axis] as number;
      const b = points[3 * (triangles[t + 1] as number) + axis] as number;
      const c = points[3 * (triangles[t + 2] as number) + axis] as number;
      low[axis] = cellAt(Math.min(a, b, c) - reach, cell);
      high[axis] = cellAt(Math.max(a, b, c) + reach, cell);
    }
    for (let i = low[0] as number; i <= (high[0] as number); i++)
      for (let j = low[1] as number; j <= (high[1] as number); j++)
        for (let k = low[2] as number; k <= (high[2] as number); k++) {
          const key = cellKey(i, j, k);
          const known = cells.get(key);
          if (known) known.push(t / 3);
          else cells.set(key, [t / 3]);
        }
  }
  return { reach, cell, cells };
}

/** Normals at the points, each the sum of its triangles' by area. */
function pointNormals(points: Float64Array, triangles: ArrayLike<number>): Float64Array {
  const normals = new Float64Array(points.length);
  for (let t = 0; t < triangles.length; t += 3) {
    const [a, b, c] = [0, 1, 2].map((k) => 3 * (triangles[t + k] as number)) as [number, number, number];
    const u = [0, 1, 2].map((k) => (points[b + k] as number) - (points[a + k] as number));
    const v = [0, 1, 2].map((k) => (points[c + k] as number) - (points[a + k] as number));
    for (let k = 0; k < 3; k++) {
      const [i, j] = [(k + 1) % 3, (k + 2) % 3];
      const n = (u[i] as number) * (v[j] as number) - (u[j] as number) * (v[i] as number);
      for (const p of [a, b, c]) normals[p + k] = (normals[p + k] as number) + n;
    }
  }
  for (let p = 0; p < normals.length; p += 3) {
    const length = Math.hypot(normals[p] as number, normals[p + 1] as number, normals[p + 2] as number) || 1;
    for (let k = p; k < p + 3; k++) normals[k] = (normals[k] as number) / length;
  }
  return normals;
}

/** Square of the distance to a triangle; writes the shares of its second and third corner at the nearest place of it. */
function footOn(
  points: Float64Array,
  triangles: ArrayLike<number>,
  t: number,
  x: number,
  y: number,
  z: number,
  foot: Float64Array,
): number {
  // Ericson, 2005, Real-Time Collision Detection, section 5.1.5.
  const a = 3 * (triangles[3 * t] as number);
  const b = 3 * (triangles[3 * t + 1] as number);
  const c = 3 * (triangles[3 * t + 2] as number);
  const ax = points[a] as number;
  const ay = points[a + 1] as number;
  const az = points[a + 2] as number;
  const ux = (points[b] as number) - ax;
  const uy = (points[b + 1] as number) - ay;
  const uz = (points[b + 2] as number) - az;
  const vx = (points[c] as number) - ax;
  const vy = (points[c + 1] as number) - ay;
  const vz = (points[c + 2] as number) - az;
  const px = x - ax;
  const py = y - ay;
  const pz = z - az;
  const uu = ux * ux + uy * uy + uz * uz;
  const uv = ux * vx + uy * vy + uz * vz;
  const vv = vx * vx + vy * vy + vz * vz;
  const pu = px * ux + py * uy + pz * uz;
  const pv = px * vx + py * vy + pz * vz;
  const turn = uu * vv - uv * uv;
  let s = (vv * pu - uv * pv) / turn;
  let r = (uu * pv - uv * pu) / turn;
  if (s < 0 || r < 0 || s + r > 1) {
    // On one of the sides: the nearest of the three.
    let best = Infinity;
    const onU = Math.max(0, Math.min(1, pu / uu));
    const onV = Math.max(0, Math.min(1, pv / vv));
    const onW = Math.max(0, Math.min(1, (pv - pu + uu - uv) / (uu - 2 * uv + vv)));
    for (let side = 0; side < 3; side++) {
      const i = side === 0 ? onU : side === 1 ? 0 : 1 - onW;
      const j = side === 0 ? 0 : side === 1 ? onV : onW;
      const dx = px - i * ux - j * vx;
      const dy = py - i * uy - j * vy;
      const dz = pz - i * uz - j * vz;
      const square = dx * dx + dy * dy + dz * dz;
      if (square >= best) continue;
      best = square;
      s = i;
      r = j;
    }
  }
  foot[0] = s;
  foot[1] = r;
  return (px - s * ux - r * vx) ** 2 + (py - s * uy - r * vy) ** 2 + (pz - s * uz - r * vz) ** 2;
}

import { type Form, type PartName, partNames, type Surface } from './form.ts';
import { outwardNormals } from './normals.ts';
import { nearestOnTriangle } from './triangle.ts';

/** Signed distances to a body at the nodes of a grid, mm: outside positive. Plain data, made once. */
export interface DistanceField {
  readonly origin: readonly [x: number, y: number, z: number];
  readonly spacing: number;
  /** Nodes along x, y and z. */
  readonly counts: readonly [x: number, y: number, z: number];
  /** x runs fastest, then y, then z. */
  readonly values: Float64Array;
}

interface FieldOptions {
  /** mm between nodes. */
  readonly spacing?: number;
  /** Which parts of the body count. */
  readonly parts?: readonly PartName[];
  /** How far beyond the body the grid goes, mm. */
  readonly margin?: number;
}

/** A distance that is not known yet, mm. */
const far = 1e9;

/** So many cells to either side of the surface hold exact distances. */
const exactCells = 3;

/**
 * Signed distances to the body, that is to whichever of its parts is nearest. Exact at nodes within three cells of the
 * surface (nearest triangle; its sign by the pseudonormal of the feature that is nearest: J. A. Baerentzen and H. Aanaes,
 * Signed distance computation using the angle weighted pseudonormal, IEEE TVCG 11, 2005), and carried on from there by
 * sweeps over the eikonal equation (H. Zhao, A fast sweeping method for eikonal equations, Math. Comp. 74, 2005), which
 * is some per cent off and serves only to say where the body lies.
 */
export function distanceField(
  { surface }: Pick<Form, 'surface'>,
  { spacing = 8, parts = partNames, margin = 60 }: FieldOptions = {},
): DistanceField {
  const grid = gridAround(surface, parts, spacing, margin);
  const values = new Float64Array(grid.counts[0] * grid.counts[1] * grid.counts[2]).fill(
    Number.POSITIVE_INFINITY,
  );
  for (const name of parts) {
    const own = exactBand(surface, name, grid);
    markInside(own, grid.counts);
    // What is nearer counts; whatever lies inside one part lies inside the body.
    for (let i = 0; i < own.length; i++) values[i] = Math.min(values[i] as number, own[i] as number);
  }
  sweep(values, grid);
  return { ...grid, values };
}

type Grid = Omit<DistanceField, 'values'>;

function gridAround(surface: Surface, names: readonly PartName[], spacing: number, margin: number): Grid {
  const least = [Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY];
  const most = least.map((value) => -value);
  for (const { name, firstPoint, points } of surface.parts) {
    if (!names.includes(name)) continue;
    for (let i = 3 * firstPoint; i < 3 * (firstPoint + points); i++) {
      const value = surface.points[i] as number;
      least[i % 3] = Math.min(least[i % 3] as number, value);
      most[i % 3] = Math.max(most[i % 3] as number, value);
    }
  }
  // Nodes lie at whole steps, so that the grid mirrors itself in x = 0.
  const from = least.map((value) => Math.floor((value - margin) / spacing));
  const to = most.map((value) => Math.ceil((value + margin) / spacing));
  const [x, y, z] = [0, 1, 2].map((k) => (from[k] as number) * spacing) as [number, number, number];
  const [nx, ny, nz] = [0, 1, 2].map((k) => (to[k] as number) - (from[k] as number) + 1) as [
    number,
    number,
    number,
  ];
  return { origin: [x, y, z], spacing, counts: [nx, ny, nz] };
}

/** Exact signed distances near one part; everywhere else infinity. */
function exactBand(surface: Surface, name: PartName, { origin, spacing, counts }: Grid): Float64Array {
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

/** Carries distances on from the band: outside and inside apart, eight sweeps. */
function sweep(values: Float64Array, { spacing, counts }: Grid): void {
  const [nx, ny, nz] = counts;
  const row = nx;
  const layer = nx * ny;
  const known = Uint8Array.from(values, (value) => (Math.abs(value) < far ? 1 : 0));
  const sizeOf = (index: number): number => Math.abs(values[index] as number);
  for (let pass = 0; pass < 8; pass++) {
    const [right, up, ahead] = [(pass & 1) === 0, (pass & 2) === 0, (pass & 4) === 0];
    for (let c = 0; c < nz; c++) {
      const k = ahead ? c : nz - 1 - c;
      for (let b = 0; b < ny; b++) {
        const j = up ? b : ny - 1 - b;
        for (let a = 0; a < nx; a++) {
          const i = right ? a : nx - 1 - a;
          const node = k * layer + j * row + i;
          if (known[node]) continue;
          const x = Math.min(i > 0 ? sizeOf(node - 1) : far, i < nx - 1 ? sizeOf(node + 1) : far);
          const y = Math.min(j > 0 ? sizeOf(node - row) : far, j < ny - 1 ? sizeOf(node + row) : far);
          const z = Math.min(k > 0 ? sizeOf(node - layer) : far, k < nz - 1 ? sizeOf(node + layer) : far);
          const next = eikonal(x, y, z, spacing);
          const before = values[node] as number;
          if (next < Math.abs(before)) values[node] = before < 0 ? -next : next;
        }
      }
    }
  }
}

/** What is unknown is far outside, unless it lies between nodes that are inside: found row by row, each from its known ends. */
function markInside(own: Float64Array, [nx, ny, nz]: readonly [number, number, number]): void {
  for (let row = 0; row < ny * nz; row++) {
    let inside = false;
    for (let i = 0; i < nx; i++) {
      const node = row * nx + i;
      const value = own[node] as number;
      if (Number.isFinite(value)) inside = value < 0;
      else own[node] = inside ? -far : far;
    }
  }
}

/** The distance at a node from those of its neighbours along x, y and z: |grad d| = 1. */
function eikonal(x: number, y: number, z: number, h: number): number {
  const a = Math.min(x, y, z);
  const c = Math.max(x, y, z);
  const b = x + y + z - a - c;
  const one = a + h;
  if (one <= b) return one;
  const two = (a + b + Math.sqrt(2 * h * h - (a - b) ** 2)) / 2;
  if (two <= c) return two;
  const sum = a + b + c;
  return (sum + Math.sqrt(Math.max(0, sum * sum - 3 * (a * a + b * b + c * c - h * h)))) / 3;
}

const weights = new Float64Array(12);
const slopes = new Float64Array(12);

/**
 * The signed distance at a place, and the direction it grows in, which near the body is its outward normal: written into
 * `into` as distance, nx, ny, nz. By cubics through the nodes (E. Catmull and R. Rom, 1974), so that it and its direction
 * change without a jump. At 8 mm half of all places within 12 mm of the surface are within 0.03 mm of the triangles, nine in ten within 0.25; up to
 * 4 mm off where parts meet in a crease. Outside the grid it is at least what it says, and the direction is that of its edge.
 */
export function distanceAt(field: DistanceField, x: number, y: number, z: number, into: Float64Array): void {
  const { origin, spacing, counts, values } = field;
  const [nx, ny, nz] = counts;
  const gx = (x - origin[0]) / spacing;
  const gy = (y - origin[1]) / spacing;
  const gz = (z - origin[2]) / spacing;
  const hx = Math.min(Math.max(gx, 1), nx - 2.000001);
  const hy = Math.min(Math.max(gy, 1), ny - 2.000001);
  const hz = Math.min(Math.max(gz, 1), nz - 2.000001);
  const beyond = Math.max(Math.abs(gx - hx), Math.abs(gy - hy), Math.abs(gz - hz)) * spacing;
  const [i, j, k] = [Math.floor(hx), Math.floor(hy), Math.floor(hz)];
  cubic(hx - i, 0);
  cubic(hy - j, 4);
  cubic(hz - k, 8);
  const start = ((k - 1) * ny + j - 1) * nx + i - 1;
  let [distance, dx, dy, dz] = [0, 0, 0, 0];
  for (let c = 0; c < 4; c++)
    for (let b = 0; b < 4; b++) {
      const row = start + c * nx * ny + b * nx;
      const [v0, v1, v2, v3] = [
        values[row] as number,
        values[row + 1] as number,
        values[row + 2] as number,
        values[row + 3] as number,
      ];
      const value =
        (weights[0] as number) * v0 +
        (weights[1] as number) * v1 +
        (weights[2] as number) * v2 +
        (weights[3] as number) * v3;
      const slope =
        (slopes[0] as number) * v0 +
        (slopes[1] as number) * v1 +
        (slopes[2] as number) * v2 +
        (slopes[3] as number) * v3;
      const [wy, wz] = [weights[4 + b] as number, weights[8 + c] as number];
      distance += wy * wz * value;
      dx += wy * wz * slope;
      dy += (slopes[4 + b] as number) * wz * value;
      dz += wy * (slopes[8 + c] as number) * value;
    }
  const length = Math.hypot(dx, dy, dz) || 1;
  into[0] = distance + beyond;
  into[1] = dx / length;
  into[2] = dy / length;
  into[3] = dz / length;
}

/** Weights of four values at -1, 0, 1 and 2 for the cubic at t between 0 and 1, and of its slope. */
function cubic(t: number, at: number): void {
  const t2 = t * t;
  const t3 = t2 * t;
  weights[at] = (-t3 + 2 * t2 - t) / 2;
  weights[at + 1] = (3 * t3 - 5 * t2 + 2) / 2;
  weights[at + 2] = (-3 * t3 + 4 * t2 + t) / 2;
  weights[at + 3] = (t3 - t2) / 2;
  slopes[at] = (-3 * t2 + 4 * t - 1) / 2;
  slopes[at + 1] = (9 * t2 - 10 * t) / 2;
  slopes[at + 2] = (-9 * t2 + 8 * t + 1) / 2;
  slopes[at + 3] = (3 * t2 - 2 * t) / 2;
}

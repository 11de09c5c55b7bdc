import type { Grid } from './grid.ts';

/** A distance that is not known yet, mm. */
export const far = 1e9;

/**
 * Carries distances on from those known into a grid whose other nodes are `far` or `-far`: outside and inside apart, by eight
 * sweeps over the eikonal equation (H. Zhao, A fast sweeping method for eikonal equations, Math. Comp. 74, 2005).
 */
export function sweep(values: Float64Array, { spacing, counts }: Grid): void {
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

import type { WovenCloth } from './cloth.ts';

/** Cloth as triangles over points in space; where pieces are sewn together they share points. */
export interface ClothSheet {
  readonly count: number;
  /** Three points each. */
  readonly triangles: Int32Array;
  /** Where the corners of each triangle lie on the flat cloth: along the weft and the warp, six numbers a triangle, mm. */
  readonly flat: Float64Array;
  /** How many layers of cloth lie there, for each triangle. */
  readonly layers: Float64Array;
  readonly cloth: WovenCloth;
  /** Points (1) in the plane x = 0, beyond which the sheet goes on as its own mirror image; whoever hangs it keeps them there. */
  readonly middle?: Uint8Array;
}

/** The sheet of one flat mesh (points flat: x, y ...), whose warp runs along `warp` (radians from x, in the mesh's plane). */
export function sheetOf(
  points: Float64Array,
  triangles: Int32Array,
  cloth: WovenCloth,
  warp: number = Math.PI / 2,
): ClothSheet {
  const flat = new Float64Array(2 * triangles.length);
  writeFlat(points, triangles, warp, flat, 0);
  const layers = new Float64Array(triangles.length / 3).fill(1);
  return { count: points.length / 2, triangles, flat, layers, cloth };
}

/** Writes where the corners of triangles lie along weft and warp. */
export function writeFlat(
  points: Float64Array,
  triangles: Int32Array,
  warp: number,
  into: Float64Array,
  from: number,
): void {
  const c = Math.cos(warp);
  const s = Math.sin(warp);
  for (let k = 0; k < triangles.length; k++) {
    const p = 2 * (triangles[k] as number);
    const x = points[p] as number;
    const y = points[p + 1] as number;
    into[from + 2 * k] = s * x - c * y;
    into[from + 2 * k + 1] = c * x + s * y;
  }
}

/** Area of every triangle on the flat cloth, mm^2, layers not counted. */
export function triangleAreas({ triangles, flat }: Pick<ClothSheet, 'triangles' | 'flat'>): Float64Array {
  const areas = new Float64Array(triangles.length / 3);
  for (let t = 0; t < areas.length; t++) {
    const at = 6 * t;
    const ux = (flat[at + 2] as number) - (flat[at] as number);
    const uy = (flat[at + 3] as number) - (flat[at + 1] as number);
    const vx = (flat[at + 4] as number) - (flat[at] as number);
    const vy = (flat[at + 5] as number) - (flat[at + 1] as number);
    areas[t] = Math.abs(ux * vy - uy * vx) / 2;
  }
  return areas;
}

/** The cloth about each point, mm^2: a third of every triangle at it, layers counted where `layered`. */
export function pointAreas(sheet: ClothSheet, layered: boolean): Float64Array {
  const areas = triangleAreas(sheet);
  const sums = new Float64Array(sheet.count);
  for (let k = 0; k < sheet.triangles.length; k++) {
    const t = Math.floor(k / 3);
    const p = sheet.triangles[k] as number;
    const times = layered ? (sheet.layers[t] as number) : 1;
    sums[p] = (sums[p] as number) + ((areas[t] as number) * times) / 3;
  }
  return sums;
}

import type { Force } from './force.ts';
import { type ClothSheet, triangleAreas } from './sheet.ts';

/**
 * Bending: half the rigidity times the square of the curvature, summed over the area. The curvature of a triangle is what its
 * three neighbours are turned against it, each across the side they share (Onate & Zarate, 2000, "Rotation-free triangular
 * plate and shell elements", International Journal for Numerical Methods in Engineering 47, basic triangle): exact for
 * cylinders in any direction on an even mesh, where hinges alone are up to three times too stiff. Taken as a form of second
 * degree in the places, its stiffness is found once; it holds where cloth hardly stretches (Bergou, Wardetzky, Harmon, Zorin &
 * Grinspun, 2006, "A quadratic bending model for inextensible surfaces"). Cloth is flat at rest, across seams too. The
 * rigidity against twist is the geometric mean of those of weft and warp. Where a sheet goes on as its own mirror image it goes on
 * bending there.
 */
export class Bending implements Force {
  readonly pairs: Int32Array;
  /** Pairs of points with what their places' product is multiplied with; a point with itself among them. */
  readonly #a: Int32Array;
  readonly #b: Int32Array;
  /** With x; and with y and z, which differ only at the middle of a sheet that is mirrored. */
  readonly #factor: Float64Array;
  readonly #factorInPlane: Float64Array;
  readonly #blocks: Int32Array;

  constructor(sheet: ClothSheet) {
    const sums = products(curvatures(sheet, false), sheet.count);
    const inPlane = sheet.middle ? products(curvatures(sheet, true), sheet.count) : sums;
    const keys = [...sums.keys()].sort((a, b) => a - b);
    this.#a = Int32Array.from(keys, (key) => Math.floor(key / sheet.count));
    this.#b = Int32Array.from(keys, (key) => key % sheet.count);
    this.#factor = Float64Array.from(keys, (key) => sums.get(key) ?? 0);
    this.#factorInPlane = Float64Array.from(keys, (key) => inPlane.get(key) ?? 0);
    this.#blocks = new Int32Array(keys.length);
    this.pairs = Int32Array.from(keys.flatMap((_, i) => [this.#a[i] as number, this.#b[i] as number]));
  }

  bind(place: (a: number, b: number) => number): void {
    for (let i = 0; i < this.#factor.length; i++)
      this.#blocks[i] = place(this.#a[i] as number, this.#b[i] as number);
  }

  energy(x: Float64Array): number {
    let sum = 0;
    for (let i = 0; i < this.#factor.length; i++) {
      const a = 3 * (this.#a[i] as number);
      const b = 3 * (this.#b[i] as number);
      // Differences, since the shares of each point add up to nothing: sums of products would lose digits.
      if (a === b) continue;
      const dx = (x[a] as number) - (x[b] as number);
      const dy = (x[a + 1] as number) - (x[b + 1] as number);
      const dz = (x[a + 2] as number) - (x[b + 2] as number);
      sum -= (this.#factor[i] as number) * dx * dx + (this.#factorInPlane[i] as number) * (dy * dy + dz * dz);
    }
    return sum / 2;
  }

  add(x: Float64Array, gradient: Float64Array, values: Float64Array): void {
    for (let i = 0; i < this.#factor.length; i++) {
      const factor = this.#factor[i] as number;
      const inPlane = this.#factorInPlane[i] as number;
      const a = 3 * (this.#a[i] as number);
      const b = 3 * (this.#b[i] as number);
      const at = this.#blocks[i] as number;
      values[at] = (values[at] as number) + factor;
      values[at + 4] = (values[at + 4] as number) + inPlane;
      values[at + 8] = (values[at + 8] as number) + inPlane;
      if (a === b) continue;
      for (let k = 0; k < 3; k++) {
        const push = (k === 0 ? factor : inPlane) * ((x[b + k] as number) - (x[a + k] as number));
        gradient[a + k] = (gradient[a + k] as number) + push;
        gradient[b + k] = (gradient[b + k] as number) - push;
      }
    }
  }
}

/** A side of a triangle: which triangle, and the corner opposite. */
interface HingeSide {
  readonly triangle: number;
  readonly corner: number;
}

/** The points about a triangle, and for each part of its curvature what their places are multiplied with, weighed. */
interface Curvature {
  readonly points: readonly number[];
  readonly rows: readonly (readonly number[])[];
}

/** What the places of two points are multiplied with together, by the greater times the count of all plus the lesser. */
function products(found: readonly Curvature[], count: number): Map<number, number> {
  const sums = new Map<number, number>();
  for (const { points, rows } of found)
    for (let i = 0; i < points.length; i++)
      for (let j = 0; j <= i; j++) {
        const [one = 0, other = 0] = [points[i], points[j]];
        const key = Math.max(one, other) * count + Math.min(one, other);
        let product = 0;
        for (const row of rows) product += (row[i] as number) * (row[j] as number);
        sums.set(key, (sums.get(key) ?? 0) + product);
      }
  return sums;
}

/**
 * `inPlane`: as y and z have it. There a triangle beside the middle is turned against its mirror image; what that adds of x
 * cancels out.
 */
function curvatures(sheet: ClothSheet, inPlane: boolean): readonly Curvature[] {
  const { triangles, count, cloth, layers, middle } = sheet;
  const sides = sidesOf(triangles, count);
  const areas = triangleAreas(sheet);
  const twist = Math.sqrt(cloth.weft.bending * cloth.warp.bending);
  return Array.from(areas, (area, triangle): Curvature => {
    const parts = [new Map<number, number>(), new Map<number, number>(), new Map<number, number>()] as const;
    const weight = Math.sqrt(area * (layers[triangle] as number));
    const scale = [
      weight * Math.sqrt(cloth.weft.bending),
      weight * Math.sqrt(cloth.warp.bending),
      weight * Math.sqrt(2 * twist),
    ] as const;
    for (let corner = 0; corner < 3; corner++) {
      const p = triangles[3 * triangle + ((corner + 1) % 3)] as number;
      const q = triangles[3 * triangle + ((corner + 2) % 3)] as number;
      const own = { triangle, corner };
      const next = sides.get(sideKey(p, q, count))?.find((side) => side.triangle !== triangle);
      const neighbour = next ?? (inPlane && middle?.[p] === 1 && middle[q] === 1 ? own : undefined);
      if (!neighbour) continue;
      const here = turning(sheet, own, p);
      const there = turning(sheet, neighbour, p);
      const { along } = here;
      const across = [along[1] ** 2, along[0] ** 2, -along[0] * along[1]] as const;
      for (const [k, part] of parts.entries()) {
        const share = ((across[k] as number) * (scale[k] as number)) / (2 * area);
        const put = (point: number, value: number): void => {
          part.set(point, (part.get(point) ?? 0) + share * value);
        };
        put(p, here.atQ + there.atQ);
        put(q, here.atP + there.atP);
        put(here.opposite, -(here.atP + here.atQ));
        put(there.opposite, -(there.atP + there.atQ));
      }
    }
    const points = [...parts[0].keys()];
    return { points, rows: parts.map((part) => points.map((point) => part.get(point) ?? 0)) };
  });
}

const sideKey = (p: number, q: number, count: number): number => Math.min(p, q) * count + Math.max(p, q);

function sidesOf(triangles: Int32Array, count: number): ReadonlyMap<number, readonly HingeSide[]> {
  const sides = new Map<number, HingeSide[]>();
  for (let k = 0; k < triangles.length; k++) {
    const triangle = Math.floor(k / 3);
    const corner = k % 3;
    const p = triangles[3 * triangle + ((corner + 1) % 3)] as number;
    const q = triangles[3 * triangle + ((corner + 2) % 3)] as number;
    const key = sideKey(p, q, count);
    const known = sides.get(key);
    if (known) known.push({ triangle, corner });
    else sides.set(key, [{ triangle, corner }]);
  }
  return sides;
}

/** A triangle beside the line from p to q: cotangents of its angles there, and the line's direction along weft and warp. */
function turning({ triangles, flat }: ClothSheet, { triangle, corner }: HingeSide, p: number) {
  const at = (k: number): readonly [number, number] => [
    flat[6 * triangle + 2 * (k % 3)] as number,
    flat[6 * triangle + 2 * (k % 3) + 1] as number,
  ];
  const firstIsP = triangles[3 * triangle + ((corner + 1) % 3)] === p;
  const o = at(corner);
  const P = at(firstIsP ? corner + 1 : corner + 2);
  const Q = at(firstIsP ? corner + 2 : corner + 1);
  const area = Math.abs((P[0] - o[0]) * (Q[1] - o[1]) - (P[1] - o[1]) * (Q[0] - o[0])) / 2;
  const cotangent = (a: typeof o, b: typeof o, c: typeof o): number =>
    ((b[0] - a[0]) * (c[0] - a[0]) + (b[1] - a[1]) * (c[1] - a[1])) / (2 * area);
  const length = Math.hypot(Q[0] - P[0], Q[1] - P[1]);
  return {
    opposite: triangles[3 * triangle + corner] as number,
    atP: cotangent(P, Q, o),
    atQ: cotangent(Q, P, o),
    along: [(Q[0] - P[0]) / length, (Q[1] - P[1]) / length] as const,
  };
}

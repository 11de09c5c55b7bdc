import type { Force } from './force.ts';
import type { ClothSheet } from './sheet.ts';
import { type WovenStiffness, writeStress } from './woven-stress.ts';

/**
 * Stretch and shear in the plane of the cloth: triangles of constant strain (Green's), whose threads withstand them as
 * `writeStress` says.
 *
 * The stiffness is made positive by leaving out compressive stress from its geometric part, which is exact where cloth is
 * taut.
 */
export class Membrane implements Force {
  readonly pairs: Int32Array;
  readonly #triangles: Int32Array;
  /** For each triangle the slopes of its second and third corner's share along weft and warp, and its area times layers. */
  readonly #shape: Float64Array;
  /** For each triangle where its blocks stand: 00, 11, 22, 10, 20, 21. */
  readonly #blocks: Int32Array;
  readonly #stiffness: WovenStiffness;
  /**
   * Found for one triangle at a time: stress along weft, warp and in shear, the stiffness of the first two, and what one mm along
   * weft and along warp have become in space.
   */
  readonly #answer = new Float64Array(12);

  constructor({ triangles, flat, layers, cloth }: ClothSheet) {
    const count = triangles.length / 3;
    this.#triangles = triangles;
    this.#shape = new Float64Array(5 * count);
    this.#blocks = new Int32Array(6 * count);
    this.pairs = new Int32Array(6 * count);
    const { weft, warp, coupling, shear, pressed } = cloth;
    this.#stiffness = { weft: weft.stretch, warp: warp.stretch, coupling, shear, pressed };
    for (let t = 0; t < count; t++) {
      const at = 6 * t;
      const a = (flat[at + 2] as number) - (flat[at] as number);
      const b = (flat[at + 3] as number) - (flat[at + 1] as number);
      const c = (flat[at + 4] as number) - (flat[at] as number);
      const d = (flat[at + 5] as number) - (flat[at + 1] as number);
      const turn = a * d - b * c;
      this.#shape.set([d / turn, -b / turn, -c / turn, a / turn], 5 * t);
      this.#shape[5 * t + 4] = (Math.abs(turn) / 2) * (layers[t] as number);
      const [p = 0, q = 0, r = 0] = triangles.subarray(3 * t, 3 * t + 3);
      this.pairs.set([p, q, q, r, r, p], 6 * t);
    }
  }

  bind(place: (a: number, b: number) => number): void {
    for (let t = 0; t < this.#triangles.length / 3; t++) {
      const [p = 0, q = 0, r = 0] = this.#triangles.subarray(3 * t, 3 * t + 3);
      this.#blocks.set([place(p, p), place(q, q), place(r, r), place(q, p), place(r, p), place(r, q)], 6 * t);
    }
  }

  /** Energy per area of the triangle whose corners begin at `t`; writes all of `#answer`. */
  #strained(x: Float64Array, t: number): number {
    const triangles = this.#triangles;
    const shape = this.#shape;
    const out = this.#answer;
    const s = (5 * t) / 3;
    const p = 3 * (triangles[t] as number);
    const q = 3 * (triangles[t + 1] as number);
    const r = 3 * (triangles[t + 2] as number);
    const u1 = shape[s] as number;
    const u2 = shape[s + 1] as number;
    const v1 = shape[s + 2] as number;
    const v2 = shape[s + 3] as number;
    const ax = (x[q] as number) - (x[p] as number);
    const ay = (x[q + 1] as number) - (x[p + 1] as number);
    const az = (x[q + 2] as number) - (x[p + 2] as number);
    const bx = (x[r] as number) - (x[p] as number);
    const by = (x[r + 1] as number) - (x[p + 1] as number);
    const bz = (x[r + 2] as number) - (x[p + 2] as number);
    const ux = u1 * ax + u2 * bx;
    const uy = u1 * ay + u2 * by;
    const uz = u1 * az + u2 * bz;
    const vx = v1 * ax + v2 * bx;
    const vy = v1 * ay + v2 * by;
    const vz = v1 * az + v2 * bz;
    out[6] = ux;
    out[7] = uy;
    out[8] = uz;
    out[9] = vx;
    out[10] = vy;
    out[11] = vz;
    const weft = (ux * ux + uy * uy + uz * uz - 1) / 2;
    const warp = (vx * vx + vy * vy + vz * vz - 1) / 2;
    return writeStress(out, this.#stiffness, weft, warp, ux * vx + uy * vy + uz * vz);
  }

  energy(x: Float64Array): number {
    const { length } = this.#triangles;
    const shape = this.#shape;
    let sum = 0;
    for (let t = 0, s = 4; t < length; t += 3, s += 5) sum += (shape[s] as number) * this.#strained(x, t);
    return sum;
  }

  add(x: Float64Array, gradient: Float64Array, values: Float64Array): void {
    const triangles = this.#triangles;
    const shape = this.#shape;
    const blocks = this.#blocks;
    const out = this.#answer;
    const { shear } = this.#stiffness;
    for (let t = 0, s = 0, e = 0; t < triangles.length; t += 3, s += 5, e += 6) {
      this.#strained(x, t);
      const p = 3 * (triangles[t] as number);
      const q = 3 * (triangles[t + 1] as number);
      const r = 3 * (triangles[t + 2] as number);
      const u1 = shape[s] as number;
      const u2 = shape[s + 1] as number;
      const v1 = shape[s + 2] as number;
      const v2 = shape[s + 3] as number;
      const area = shape[s + 4] as number;
      const ux = out[6] as number;
      const uy = out[7] as number;
      const uz = out[8] as number;
      const vx = out[9] as number;
      const vy = out[10] as number;
      const vz = out[11] as number;
      const su = area * (out[0] as number);
      const sv = area * (out[1] as number);
      const ss = area * (out[2] as number);
      const d11 = area * (out[3] as number);
      const d12 = area * (out[4] as number);
      const d22 = area * (out[5] as number);
      const d33 = area * shear;
      // Stress without its compressive part, for the geometric stiffness.
      const mean = (su + sv) / 2;
      const half = (su - sv) / 2;
      const radius = Math.sqrt(half * half + ss * ss);
      let tu = su;
      let tv = sv;
      let ts = ss;
      if (mean + radius <= 0) {
        tu = 0;
        tv = 0;
        ts = 0;
      } else if (mean - radius < 0) {
        const share = (mean + radius) / (2 * radius);
        tu = share * (radius + half);
        tv = share * (radius - half);
        ts = share * ss;
      }
      const u0 = -(u1 + u2);
      const v0 = -(v1 + v2);
      for (let k = 0; k < 3; k++) {
        const at = k === 0 ? p : k === 1 ? q : r;
        const uk = k === 0 ? u0 : k === 1 ? u1 : u2;
        const vk = k === 0 ? v0 : k === 1 ? v1 : v2;
        const alongU = su * uk + ss * vk;
        const alongV = sv * vk + ss * uk;
        gradient[at] = (gradient[at] as number) + alongU * ux + alongV * vx;
        gradient[at + 1] = (gradient[at + 1] as number) + alongU * uy + alongV * vy;
        gradient[at + 2] = (gradient[at + 2] as number) + alongU * uz + alongV * vz;
      }
      for (let k = 0; k < 6; k++) {
        // Blocks 00, 11, 22, 10, 20, 21: their row's and their column's corner.
        const i = k < 3 ? k : k === 3 ? 1 : 2;
        const j = k < 3 ? k : k === 5 ? 1 : 0;
        let ui = i === 0 ? u0 : i === 1 ? u1 : u2;
        let vi = i === 0 ? v0 : i === 1 ? v1 : v2;
        let uj = j === 0 ? u0 : j === 1 ? u1 : u2;
        let vj = j === 0 ? v0 : j === 1 ? v1 : v2;
        if (k > 2 && (triangles[t + i] as number) < (triangles[t + j] as number)) {
          // The block's rows are those of the greater point.
          [ui, uj] = [uj, ui];
          [vi, vj] = [vj, vi];
        }
        const isotropic = tu * ui * uj + tv * vi * vj + ts * (ui * vj + vi * uj);
        const uu = d11 * ui * uj + d33 * vi * vj;
        const vv = d22 * vi * vj + d33 * ui * uj;
        const uv = d12 * ui * vj + d33 * vi * uj;
        const vu = d12 * vi * uj + d33 * ui * vj;
        const px = uu * ux + uv * vx;
        const py = uu * uy + uv * vy;
        const pz = uu * uz + uv * vz;
        const qx = vu * ux + vv * vx;
        const qy = vu * uy + vv * vy;
        const qz = vu * uz + vv * vz;
        const at = blocks[e + k] as number;
        values[at] = (values[at] as number) + ux * px + vx * qx + isotropic;
        values[at + 1] = (values[at + 1] as number) + ux * py + vx * qy;
        values[at + 2] = (values[at + 2] as number) + ux * pz + vx * qz;
        values[at + 3] = (values[at + 3] as number) + uy * px + vy * qx;
        values[at + 4] = (values[at + 4] as number) + uy * py + vy * qy + isotropic;
        values[at + 5] = (values[at + 5] as number) + uy * pz + vy * qz;
        values[at + 6] = (values[at + 6] as number) + uz * px + vz * qx;
        values[at + 7] = (values[at + 7] as number) + uz * py + vz * qy;
        values[at + 8] = (values[at + 8] as number) + uz * pz + vz * qz + isotropic;
      }
    }
  }

  /** Green's strain of every triangle along weft and warp and its shear angle, three numbers a triangle. */
  strains(x: Float64Array): Float64Array {
    const strains = new Float64Array(this.#triangles.length);
    const out = this.#answer;
    for (let t = 0; t < strains.length; t += 3) {
      this.#strained(x, t);
      const [, , , , , , ux = 0, uy = 0, uz = 0, vx = 0, vy = 0, vz = 0] = out;
      strains[t] = (ux * ux + uy * uy + uz * uz - 1) / 2;
      strains[t + 1] = (vx * vx + vy * vy + vz * vz - 1) / 2;
      strains[t + 2] = ux * vx + uy * vy + uz * vz;
    }
    return strains;
  }
}

import type { Force } from './force.ts';
import type { Obstacle } from './obstacle.ts';

/** Pressure for each mm that cloth and body give way under it, N/mm^3: hard for a body, soft enough to be solved well. */
export const GIVING_WAY = 0.01;

/**
 * Between the nodes of a grid a distance is up to so much too large, mm, and may shrink faster than a point comes nearer: only
 * one that has moved by less than this share of what is left is surely still clear.
 */
const [GRID_ERROR, SURELY] = [4, 0.7];

/** How far cloth slides before friction holds it with full force, mm. */
const CREEP = 0.5;

/**
 * Points of cloth on an obstacle: held `off` mm from it by a pressure that grows with how far they have come nearer. With
 * friction, each holds on to the place where it lay when `hold` was called last: up to the share `friction` of the force
 * across, by a force that grows over the first half millimetre (Coulomb's law, smoothed as by Li et al., 2020, "Incremental
 * potential contact", ACM TOG 39, the force across being that at the time of `hold`).
 */
export class Contact implements Force {
  readonly pairs: readonly number[] = [];
  readonly #obstacle: (point: number) => Obstacle;
  readonly #areas: Float64Array;
  readonly #off: number;
  readonly #friction: number;
  /** Where each point was when its distance was last asked, and that distance. */
  readonly #asked: Float64Array;
  readonly #found: Float64Array;
  #places: Float64Array | undefined;
  readonly #anchors: Float64Array;

  /** `obstacle`: what all points meet, or what each meets. */
  constructor(obstacle: Obstacle | readonly Obstacle[], areas: Float64Array, off: number, friction: number) {
    this.#obstacle = typeof obstacle === 'function' ? () => obstacle : (point) => obstacle[point] as Obstacle;
    this.#areas = areas;
    this.#off = off;
    this.#friction = friction;
    this.#asked = new Float64Array(3 * areas.length).fill(Number.NaN);
    this.#found = new Float64Array(4 * areas.length);
    this.#anchors = new Float64Array(7 * areas.length);
  }

  bind(place: (a: number, b: number) => number): void {
    this.#places = Float64Array.from(this.#areas, (_, i) => place(i, i));
  }

  /** How far nearer than `off` a point is, mm; nothing where it is clear. Its direction is then in `#found`. */
  #depth(x: Float64Array, i: number): number {
    const asked = this.#asked;
    const found = this.#found;
    const px = x[3 * i] as number;
    const py = x[3 * i + 1] as number;
    const pz = x[3 * i + 2] as number;
    const dx = px - (asked[3 * i] as number);
    const dy = py - (asked[3 * i + 1] as number);
    const dz = pz - (asked[3 * i + 2] as number);
    const moved = dx * dx + dy * dy + dz * dz;
    const clear = SURELY * ((found[4 * i] as number) - this.#off - GRID_ERROR);
    if (clear > 0 && moved < clear * clear) return 0;
    if (moved !== 0) {
      this.#obstacle(i)(px, py, pz, found.subarray(4 * i, 4 * i + 4));
      asked[3 * i] = px;
      asked[3 * i + 1] = py;
      asked[3 * i + 2] = pz;
    }
    return Math.max(0, this.#off - (found[4 * i] as number));
  }

  /** Makes friction hold the points where they lie, with the force that presses them there. */
  hold(x: Float64Array): void {
    for (let i = 0; i < this.#areas.length; i++) {
      const depth = this.#depth(x, i);
      const limit = this.#friction * GIVING_WAY * (this.#areas[i] as number) * depth;
      this.#anchors.set(x.subarray(3 * i, 3 * i + 3), 7 * i);
      this.#anchors.set(this.#found.subarray(4 * i + 1, 4 * i + 4), 7 * i + 3);
      this.#anchors[7 * i + 6] = limit;
    }
  }

  /**
   * Once what is held has moved: friction holds with the force that presses each point now, and what has slid keeps only the
   * last half millimetre behind it.
   */
  press(x: Float64Array): void {
    for (let i = 0; i < this.#areas.length; i++) {
      const at = 7 * i;
      const slid = this.#slid(x, i);
      if (slid > CREEP)
        for (let k = 0; k < 3; k++)
          this.#anchors[at + k] = (x[3 * i + k] as number) - ((this.#slide[k] as number) * CREEP) / slid;
      const depth = this.#depth(x, i);
      this.#anchors.set(this.#found.subarray(4 * i + 1, 4 * i + 4), at + 3);
      this.#anchors[at + 6] = this.#friction * GIVING_WAY * (this.#areas[i] as number) * depth;
    }
  }

  /** The force with which the obstacle presses on each point, N. */
  forces(x: Float64Array): Float64Array {
    return this.#areas.map((area, i) => GIVING_WAY * area * this.#depth(x, i));
  }

  energy(x: Float64Array): number {
    let sum = 0;
    for (let i = 0; i < this.#areas.length; i++) {
      const depth = this.#depth(x, i);
      if (depth > 0) sum += (GIVING_WAY * (this.#areas[i] as number) * depth * depth) / 2;
      if ((this.#anchors[7 * i + 6] as number) > 0) sum += this.#frictionAt(x, i);
    }
    return sum;
  }

  add(x: Float64Array, gradient: Float64Array, values: Float64Array): void {
    const found = this.#found;
    for (let i = 0; i < this.#areas.length; i++) {
      const depth = this.#depth(x, i);
      const block = this.#places?.[i] ?? 0;
      if (depth > 0) {
        const stiffness = GIVING_WAY * (this.#areas[i] as number);
        for (let k = 0; k < 3; k++) {
          const nk = found[4 * i + 1 + k] as number;
          gradient[3 * i + k] = (gradient[3 * i + k] as number) - stiffness * depth * nk;
          for (let m = 0; m < 3; m++) {
            const at = block + 3 * k + m;
            values[at] = (values[at] as number) + stiffness * nk * (found[4 * i + 1 + m] as number);
          }
        }
      }
      if ((this.#anchors[7 * i + 6] as number) > 0) this.#addFriction(x, i, gradient, values, block);
    }
  }

  /** How far a point has slid from where it is held, along the surface: writes the slide, returns its length. */
  readonly #slide = new Float64Array(3);

  #slid(x: Float64Array, i: number): number {
    const anchors = this.#anchors;
    const at = 7 * i;
    let across = 0;
    for (let k = 0; k < 3; k++)
      across += ((x[3 * i + k] as number) - (anchors[at + k] as number)) * (anchors[at + 3 + k] as number);
    let square = 0;
    for (let k = 0; k < 3; k++) {
      const along =
        (x[3 * i + k] as number) - (anchors[at + k] as number) - across * (anchors[at + 3 + k] as number);
      this.#slide[k] = along;
      square += along * along;
    }
    return Math.sqrt(square);
  }

  #frictionAt(x: Float64Array, i: number): number {
    const limit = this.#anchors[7 * i + 6] as number;
    const slid = this.#slid(x, i);
    return slid < CREEP ? (limit * slid * slid) / (2 * CREEP) : limit * (slid - CREEP / 2);
  }

  #addFriction(
    x: Float64Array,
    i: number,
    gradient: Float64Array,
    values: Float64Array,
    block: number,
  ): void {
    const anchors = this.#anchors;
    const limit = anchors[7 * i + 6] as number;
    const slid = this.#slid(x, i);
    // Beyond the creep the stiffness along the slide is nothing; a stiffness not less than that is enough.
    const stiffness = limit / Math.max(CREEP, slid);
    for (let k = 0; k < 3; k++) {
      gradient[3 * i + k] = (gradient[3 * i + k] as number) + stiffness * (this.#slide[k] as number);
      for (let m = 0; m < 3; m++) {
        const normal = (anchors[7 * i + 3 + k] as number) * (anchors[7 * i + 3 + m] as number);
        const at = block + 3 * k + m;
        values[at] = (values[at] as number) + stiffness * ((k === m ? 1 : 0) - normal);
      }
    }
  }
}

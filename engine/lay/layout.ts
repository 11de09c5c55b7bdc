import { type Copies, copiesOf, type Remembered, shortestPosture } from './copies.ts';
import type { NoFitTable } from './no-fit-table.ts';
import type { LayProblem } from './problem.ts';
import type { Readied } from './readied.ts';
import { Seats } from './seats.ts';
import { Slabs } from './slabs.ts';

/**
 * Copies on a strip that may overlap, in flat arrays, since their overlaps are asked for a million times a second. Every copy
 * is always inside the strip. Each pair has a weight: a pair that stays in each other's way grows dear, so that the
 * next place sought for one of them is another (guided local search: C. Voudouris, E. Tsang, EJOR 113, 1999).
 */
export class Layout {
  readonly copies: Copies;
  readonly seats: Seats;
  readonly count: number;
  readonly width: number;
  length: number;
  /** Where the middle of each copy's box lies, and in which posture. */
  readonly posture: Int32Array;
  readonly x: Float64Array;
  readonly y: Float64Array;
  readonly weights: Float64Array;
  readonly depths: Float64Array;
  private readonly table: NoFitTable;
  private readonly slabs: Slabs;

  /** `ready` holds what was worked out of the problem's shapes for a strip as wide as this. */
  constructor(problem: LayProblem, { postures, table }: Readied) {
    this.copies = copiesOf(problem, postures);
    this.seats = new Seats(problem, this.copies, postures);
    this.count = this.copies.count;
    this.width = problem.width;
    this.length = 0;
    this.posture = Int32Array.from(this.copies.firstPosture);
    this.x = new Float64Array(this.count);
    this.y = new Float64Array(this.count);
    this.weights = new Float64Array(this.count * this.count).fill(1);
    this.depths = new Float64Array(this.count * this.count);
    this.table = table;
    this.slabs = new Slabs(this.count);
  }

  /** What copy i would cost in a posture at x, y: its weighted overlaps. May stop, and tell less, once beyond `enough`. */
  cost(i: number, posture: number, x: number, y: number, enough: number): number {
    const { table, slabs, posture: postures, x: xs, y: ys, weights } = this;
    const { boxes, signX, signY, field, fields } = table;
    const { words, beginX, endX, beginY, endY } = slabs;
    const row = posture * table.count;
    const first = i * this.count;
    const halfWidth = this.copies.halfWidth[posture] as number;
    const halfHeight = this.copies.halfHeight[posture] as number;
    const right = slabs.atX(x + halfWidth);
    const left = slabs.atX(x - halfWidth);
    const bottom = slabs.atY(y + halfHeight);
    const top = slabs.atY(y - halfHeight);
    let sum = 0;
    for (let word = 0; word < words; word++) {
      let near =
        (beginX[right + word] as number) &
        (endX[left + word] as number) &
        (beginY[bottom + word] as number) &
        (endY[top + word] as number);
      while (near !== 0) {
        const bit = near & -near;
        near ^= bit;
        const j = (word << 5) + 31 - Math.clz32(bit);
        const at = row + (postures[j] as number);
        const box = 4 * at;
        const dx = x - (xs[j] as number);
        if (dx <= (boxes[box] as number) || dx >= (boxes[box + 1] as number)) continue;
        const dy = y - (ys[j] as number);
        if (dy <= (boxes[box + 2] as number) || dy >= (boxes[box + 3] as number) || j === i) continue;
        const weight = weights[first + j] as number;
        const depth = fields.depth(
          field[at] as number,
          dx * (signX[at] as number),
          dy * (signY[at] as number),
          (enough - sum) / weight,
        );
        if (depth === 0) continue;
        sum += depth * weight;
        if (sum >= enough) return sum;
      }
    }
    return sum;
  }

  /** Puts copy i somewhere and notes its overlaps there. */
  put(i: number, posture: number, x: number, y: number): void {
    this.posture[i] = posture;
    this.x[i] = x;
    this.y[i] = y;
    this.stand(i);
    this.measure(i);
  }

  /** Notes in which slabs copy i stands. */
  private stand(i: number): void {
    const posture = this.posture[i] as number;
    const [x, y] = [this.x[i] as number, this.y[i] as number];
    const { halfWidth, halfHeight } = this.copies;
    const [width, height] = [halfWidth[posture] as number, halfHeight[posture] as number];
    this.slabs.put(i, x - width, x + width, y - height, y + height);
  }

  /** Notes the overlaps of copy i with all others. */
  private measure(i: number): void {
    const { table, posture, depths, count } = this;
    const { boxes } = table;
    const { bulk } = this.copies;
    const row = (posture[i] as number) * table.count;
    for (let j = 0; j < count; j++) {
      let depth = 0;
      if (j !== i) {
        const at = row + (posture[j] as number);
        const dx = (this.x[i] as number) - (this.x[j] as number);
        const dy = (this.y[i] as number) - (this.y[j] as number);
        const box = 4 * at;
        if (
          dx > (boxes[box] as number) &&
          dx < (boxes[box + 1] as number) &&
          dy > (boxes[box + 2] as number) &&
          dy < (boxes[box + 3] as number)
        )
          depth = table.fields.depth(
            table.field[at] as number,
            dx * (table.signX[at] as number),
            dy * (table.signY[at] as number),
            Infinity,
          );
      }
      depth *= (bulk[i] as number) * (bulk[j] as number);
      depths[i * count + j] = depth;
      depths[j * count + i] = depth;
    }
  }

  /** Notes the overlaps of all. */
  measureAll(): void {
    this.slabs.clear(this.length, this.width);
    for (let i = 0; i < this.count; i++) this.stand(i);
    for (let i = 0; i < this.count; i++) this.measure(i);
  }

  /** The overlaps of all pairs together, without weights. */
  total(): number {
    const { depths, count } = this;
    let sum = 0;
    for (let i = 0; i < count; i++)
      for (let j = i + 1; j < count; j++) sum += depths[i * count + j] as number;
    return sum;
  }

  /** Whether a copy overlaps any other. */
  overlaps(i: number): boolean {
    const { depths, count } = this;
    for (let j = i * count; j < (i + 1) * count; j++) if ((depths[j] as number) > 0) return true;
    return false;
  }

  /** Moves a copy into the strip, and turns one that is too long for it to where it is shortest. */
  keepInside(i: number): void {
    const { copies, seats, length } = this;
    if (2 * (copies.halfWidth[this.posture[i] as number] as number) > length)
      this.posture[i] = shortestPosture(copies, i);
    const posture = this.posture[i] as number;
    this.x[i] = seats.along(posture, length, this.x[i] as number);
    this.y[i] = seats.across(i, posture, this.y[i] as number);
  }

  /** How far the copies reach. */
  reach(): number {
    const { halfWidth } = this.copies;
    let reach = 0;
    for (let i = 0; i < this.count; i++)
      reach = Math.max(reach, (this.x[i] as number) + (halfWidth[this.posture[i] as number] as number));
    return reach;
  }

  /** Places and postures of all copies, to come back to. */
  remember(): Remembered {
    return { length: this.length, posture: this.posture.slice(), x: this.x.slice(), y: this.y.slice() };
  }

  /** Comes back to places remembered; the overlaps are noted anew. */
  recall({ length, posture, x, y }: Remembered): void {
    this.length = length;
    this.posture.set(posture);
    this.x.set(x);
    this.y.set(y);
    this.measureAll();
  }
}

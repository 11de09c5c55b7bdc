import type { Random } from '../numeric/random.ts';
import type { NoFitTable } from './no-fit-table.ts';
import type { Posture } from './postures.ts';
import { doubledArea, type LayProblem, phaseIn } from './problem.ts';
import type { Readied } from './readied.ts';
import { Slabs } from './slabs.ts';

/**
 * Copies on a strip that may overlap, in flat arrays, since their overlaps are asked for a million times a second. Every copy
 * is always inside the strip. Each pair has a weight: a pair that stays in each other's way grows dear, so that the
 * next place sought for one of them is another (guided local search: C. Voudouris, E. Tsang, EJOR 113, 1999).
 */
export class Layout {
  readonly count: number;
  readonly width: number;
  length: number;
  readonly postures: readonly Posture[];
  /** The shape of each copy, and the first and the number of its postures. */
  readonly shapeOf: Int32Array;
  private readonly firstPosture: Int32Array;
  private readonly postureCount: Int32Array;
  private readonly onFold: Uint8Array;
  private readonly repeat: number;
  /** Where on the repeat the middle of each posture lies. */
  private readonly phase: Float64Array;
  private readonly repeatAcross: number;
  private readonly phaseAcross: Float64Array;
  /** Where the middle of each copy's box lies, and in which posture. */
  readonly posture: Int32Array;
  readonly x: Float64Array;
  readonly y: Float64Array;
  readonly halfWidth: Float64Array;
  readonly halfHeight: Float64Array;
  /** How much a unit of depth counts between two copies before any weight. */
  readonly bulk: Float64Array;
  readonly area: Float64Array;
  readonly weights: Float64Array;
  readonly depths: Float64Array;
  private readonly table: NoFitTable;
  private readonly slabs: Slabs;

  /** `ready` holds what was worked out of the problem's shapes for a strip as wide as this. */
  constructor(problem: LayProblem, { postures: byShape, table }: Readied) {
    const copies = problem.shapes.flatMap(({ count }, shape) => Array.from({ length: count }, () => shape));
    this.count = copies.length;
    this.width = problem.width;
    this.length = 0;
    this.postures = byShape.flat();
    this.shapeOf = Int32Array.from(copies);
    const starts = byShape.map((_, i) => byShape.slice(0, i).reduce((sum, own) => sum + own.length, 0));
    this.firstPosture = Int32Array.from(copies, (shape) => starts[shape] ?? 0);
    this.postureCount = Int32Array.from(copies, (shape) => byShape[shape]?.length ?? 0);
    this.onFold = Uint8Array.from(copies, (shape) => (problem.shapes[shape]?.onFold ? 1 : 0));
    this.repeat = problem.repeat ?? 0;
    this.phase = Float64Array.from(
      byShape.flatMap((own, i) => own.map(({ middle }) => middle.x + (problem.shapes[i]?.phase ?? 0))),
    );
    this.repeatAcross = problem.repeatAcross ?? 0;
    this.phaseAcross = Float64Array.from(
      byShape.flatMap((own, i) =>
        own.map(({ middle, way }) => middle.y + phaseIn(problem.shapes[i] ?? {}, way)),
      ),
    );
    this.posture = Int32Array.from(this.firstPosture);
    this.x = new Float64Array(this.count);
    this.y = new Float64Array(this.count);
    this.halfWidth = Float64Array.from(this.postures, (posture) => posture.halfWidth);
    this.halfHeight = Float64Array.from(this.postures, (posture) => posture.halfHeight);
    const areas = problem.shapes.map(({ outline }) => Math.abs(doubledArea(outline)) / 2);
    this.area = Float64Array.from(copies, (shape) => areas[shape] ?? 0);
    this.bulk = Float64Array.from(this.area, (area) => area ** 0.25);
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
    const halfWidth = this.halfWidth[posture] as number;
    const halfHeight = this.halfHeight[posture] as number;
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
    const [width, height] = [this.halfWidth[posture] as number, this.halfHeight[posture] as number];
    this.slabs.put(i, x - width, x + width, y - height, y + height);
  }

  /** Notes the overlaps of copy i with all others. */
  private measure(i: number): void {
    const { table, posture, depths, count } = this;
    const { boxes } = table;
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
      depth *= (this.bulk[i] as number) * (this.bulk[j] as number);
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

  /** One of the postures of a copy, by chance. */
  somePosture(i: number, random: Random): number {
    const count = this.postureCount[i] as number;
    const first = this.firstPosture[i] as number;
    return count === 1 ? first : first + Math.floor(random() * count);
  }

  /** The posture in which a copy takes the least length. */
  private shortest(i: number): number {
    const first = this.firstPosture[i] as number;
    let best = first;
    for (let k = first; k < first + (this.postureCount[i] as number); k++)
      if ((this.halfWidth[k] as number) < (this.halfWidth[best] as number)) best = k;
    return best;
  }

  /** The place across the strip nearest to a wanted one that is inside it and on its repeat; on the fold the only one. */
  seatAcross(i: number, posture: number, wanted: number): number {
    const half = this.halfHeight[posture] as number;
    if (this.onFold[i]) return half;
    const { repeatAcross } = this;
    if (repeatAcross === 0) return Math.max(half, Math.min(this.width - half, wanted));
    return onLattice(this.phaseAcross[posture] as number, repeatAcross, half, this.width - half, wanted);
  }

  /**
   * The place along the strip nearest to a wanted one that is inside it and on its repeat. On a strip too short for that, the
   * first on the repeat.
   */
  seat(posture: number, wanted: number): number {
    const half = this.halfWidth[posture] as number;
    const { repeat } = this;
    if (repeat === 0) return Math.max(half, Math.min(this.length - half, wanted));
    return onLattice(this.phase[posture] as number, repeat, half, this.length - half, wanted);
  }

  /** The least move along the strip from one place to another that is worth a try. */
  stride(wanted: number): number {
    return wanted === 0 ? 0 : Math.max(wanted, this.repeat);
  }

  /** The same across the strip. */
  strideAcross(wanted: number): number {
    return wanted === 0 ? 0 : Math.sign(wanted) * Math.max(Math.abs(wanted), this.repeatAcross);
  }

  /** Moves a copy into the strip, and turns one that is too long for it to where it is shortest. */
  keepInside(i: number): void {
    if (2 * (this.halfWidth[this.posture[i] as number] as number) > this.length)
      this.posture[i] = this.shortest(i);
    const posture = this.posture[i] as number;
    this.x[i] = this.seat(posture, this.x[i] as number);
    this.y[i] = this.seatAcross(i, posture, this.y[i] as number);
  }

  /** How far the copies reach. */
  reach(): number {
    let reach = 0;
    for (let i = 0; i < this.count; i++)
      reach = Math.max(reach, (this.x[i] as number) + (this.halfWidth[this.posture[i] as number] as number));
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

/** The place a whole number of repeats behind `phase`, between two bounds, nearest to a wanted one; the first where none lies between. */
function onLattice(phase: number, repeat: number, least: number, most: number, wanted: number): number {
  const first = Math.ceil((least - phase) / repeat);
  const last = Math.floor((most - phase) / repeat);
  return phase + repeat * Math.max(first, Math.min(last, Math.round((wanted - phase) / repeat)));
}

/** Places of all copies at some moment. */
export interface Remembered {
  readonly length: number;
  readonly posture: Int32Array;
  readonly x: Float64Array;
  readonly y: Float64Array;
}

/** Slabs along each axis of the strip. */
const slabs = 64;

/**
 * Which boxes may meet a box, as bits: for each slab of the strip, across and along, the boxes that begin in it or before,
 * and those that end in it or after. Four words tell of 32 boxes at once whether any of them matters.
 */
export class Slabs {
  /** Words of 32 boxes each. */
  readonly words: number;
  /** For slab * words: the boxes that begin (end) at an x or y before (after) the slab's end (beginning). */
  readonly beginX: Int32Array;
  readonly endX: Int32Array;
  readonly beginY: Int32Array;
  readonly endY: Int32Array;
  private perX = 0;
  private perY = 0;

  constructor(count: number) {
    this.words = Math.ceil(count / 32);
    this.beginX = new Int32Array(slabs * this.words);
    this.endX = new Int32Array(slabs * this.words);
    this.beginY = new Int32Array(slabs * this.words);
    this.endY = new Int32Array(slabs * this.words);
  }

  /** Begins anew for a strip of another size, with no boxes. */
  clear(length: number, width: number): void {
    this.perX = slabs / length;
    this.perY = slabs / width;
    for (const bits of [this.beginX, this.endX, this.beginY, this.endY]) bits.fill(0);
  }

  /** Where the words of the slab at x, or y, begin. */
  atX(x: number): number {
    const slab = (x * this.perX) | 0;
    return (slab < 0 ? 0 : slab >= slabs ? slabs - 1 : slab) * this.words;
  }

  atY(y: number): number {
    const slab = (y * this.perY) | 0;
    return (slab < 0 ? 0 : slab >= slabs ? slabs - 1 : slab) * this.words;
  }

  /** Puts box i, of which nothing need be known before, where it is now. */
  put(i: number, left: number, right: number, top: number, bottom: number): void {
    const { words, beginX, endX, beginY, endY } = this;
    const [fromX, toX, fromY, toY] = [this.atX(left), this.atX(right), this.atY(top), this.atY(bottom)];
    const bit = 1 << (i & 31);
    const word = i >> 5;
    for (let at = 0; at < slabs * words; at += words) {
      const k = at + word;
      beginX[k] = at >= fromX ? (beginX[k] as number) | bit : (beginX[k] as number) & ~bit;
      endX[k] = at <= toX ? (endX[k] as number) | bit : (endX[k] as number) & ~bit;
      beginY[k] = at >= fromY ? (beginY[k] as number) | bit : (beginY[k] as number) & ~bit;
      endY[k] = at <= toY ? (endY[k] as number) | bit : (endY[k] as number) & ~bit;
    }
  }
}

import type { Force } from './force.ts';

/** A thread from point to point: elastic, a cord, a strap. Slack where it is shorter than at rest. */
export interface Strand {
  readonly a: number;
  readonly b: number;
  /** mm */
  readonly length: number;
  /** Force that would stretch it to twice its length, N. */
  readonly stretch: number;
}

/** Strands that pull their ends together. */
export class Strings implements Force {
  readonly pairs: readonly number[];
  readonly #strands: readonly Strand[];
  readonly #blocks: Int32Array;

  constructor(strands: readonly Strand[]) {
    this.#strands = strands.map((strand) =>
      strand.a >= strand.b ? strand : { ...strand, a: strand.b, b: strand.a },
    );
    this.pairs = strands.flatMap(({ a, b }) => [a, b]);
    this.#blocks = new Int32Array(3 * strands.length);
  }

  bind(place: (a: number, b: number) => number): void {
    for (const [i, { a, b }] of this.#strands.entries())
      this.#blocks.set([place(a, a), place(b, b), place(a, b)], 3 * i);
  }

  energy(x: Float64Array): number {
    let sum = 0;
    for (const { a, b, length, stretch } of this.#strands) {
      const over = Math.max(0, apart(x, a, b) - length);
      sum += (stretch * over * over) / (2 * length);
    }
    return sum;
  }

  add(x: Float64Array, gradient: Float64Array, values: Float64Array): void {
    for (let i = 0; i < this.#strands.length; i++) {
      const { a, b, length, stretch } = this.#strands[i] as Strand;
      const now = apart(x, a, b);
      if (now <= length) continue;
      const tension = (stretch * (now - length)) / length;
      for (let k = 0; k < 3; k++) {
        const along = ((x[3 * a + k] as number) - (x[3 * b + k] as number)) / now;
        gradient[3 * a + k] = (gradient[3 * a + k] as number) + tension * along;
        gradient[3 * b + k] = (gradient[3 * b + k] as number) - tension * along;
        for (let m = 0; m < 3; m++) {
          const other = ((x[3 * a + m] as number) - (x[3 * b + m] as number)) / now;
          const entry = (stretch / length - tension / now) * along * other + (k === m ? tension / now : 0);
          for (let c = 0; c < 3; c++) {
            const at = (this.#blocks[3 * i + c] as number) + 3 * k + m;
            values[at] = (values[at] as number) + (c < 2 ? entry : -entry);
          }
        }
      }
    }
  }
}

const apart = (x: Float64Array, a: number, b: number): number =>
  Math.hypot(
    (x[3 * a] as number) - (x[3 * b] as number),
    (x[3 * a + 1] as number) - (x[3 * b + 1] as number),
    (x[3 * a + 2] as number) - (x[3 * b + 2] as number),
  );

import { assembled } from './subtract-products.ts';

/** How much of a front's memory is asked for at once, bytes. */
const PAGE = 65_536;

/** What is used of WebAssembly, which every place that runs this has and not every compiler's library knows. */
interface Machine {
  readonly Memory: new (size: { readonly initial: number }) => { readonly buffer: ArrayBuffer };
  readonly Module: new (bytes: Uint8Array) => object;
  readonly Instance: new (
    module: object,
    imports: object,
  ) => { readonly exports: Readonly<Record<string, unknown>> };
}

const { WebAssembly: machine } = globalThis as unknown as { readonly WebAssembly: Machine };

type Subtract = (a: number, b: number, stride: number, n: number, at: number) => void;

/**
 * Room for a dense symmetric matrix, and its partial Cholesky factor. m and k are multiples of 3, since unknowns come in
 * threes: the innermost loop goes over three rows and three columns at once, which is what the registers hold.
 */
export class DenseFront {
  /** The matrix, row by row. */
  readonly entries: Float64Array;
  readonly #subtract: Subtract;

  /** Room for so many numbers. */
  constructor(size: number) {
    const memory = new machine.Memory({ initial: Math.ceil((8 * size) / PAGE) + 1 });
    this.entries = new Float64Array(memory.buffer);
    this.#subtract = compiled(memory);
  }

  /**
   * Puts the first k columns of the factor, and what is left of the rest, over the lower triangle of a matrix of order m.
   * False where a pivot is not greater than nothing.
   */
  factor(m: number, k: number): boolean {
    const f = this.entries;
    const subtract = this.#subtract;
    const bytes = 8 * m;
    for (let j = 0; j < k; j += 3) {
      const r0 = j * m;
      const r1 = r0 + m;
      const r2 = r1 + m;
      for (let i = j; i < m; i += 3) subtract(i * bytes, j * bytes, bytes, j, 8 * j);
      const d0 = f[r0 + j] as number;
      if (!(d0 > 0)) return false;
      const l00 = Math.sqrt(d0);
      const l10 = (f[r1 + j] as number) / l00;
      const l20 = (f[r2 + j] as number) / l00;
      const d1 = (f[r1 + j + 1] as number) - l10 * l10;
      if (!(d1 > 0)) return false;
      const l11 = Math.sqrt(d1);
      const l21 = ((f[r2 + j + 1] as number) - l20 * l10) / l11;
      const d2 = (f[r2 + j + 2] as number) - l20 * l20 - l21 * l21;
      if (!(d2 > 0)) return false;
      const l22 = Math.sqrt(d2);
      f[r0 + j] = l00;
      f[r1 + j] = l10;
      f[r2 + j] = l20;
      f[r1 + j + 1] = l11;
      f[r2 + j + 1] = l21;
      f[r2 + j + 2] = l22;
      const i00 = 1 / l00;
      const i11 = 1 / l11;
      const i22 = 1 / l22;
      for (let row = r0 + 3 * m; row < m * m; row += m) {
        const x0 = (f[row + j] as number) * i00;
        const x1 = ((f[row + j + 1] as number) - x0 * l10) * i11;
        f[row + j] = x0;
        f[row + j + 1] = x1;
        f[row + j + 2] = ((f[row + j + 2] as number) - x0 * l20 - x1 * l21) * i22;
      }
    }
    for (let i = k; i < m; i += 3)
      for (let j = k; j <= i; j += 3) subtract(i * bytes, j * bytes, bytes, k, 8 * j);
    return true;
  }
}

let module: object | undefined;

function compiled(memory: object): Subtract {
  module ??= new machine.Module(Uint8Array.from(atob(assembled), (letter) => letter.charCodeAt(0)));
  return new machine.Instance(module, { front: { memory } }).exports.subtract as Subtract;
}

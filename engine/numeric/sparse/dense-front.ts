/**
 * The first k columns of the Cholesky factor of a symmetric matrix of order m, and what is left of the rest, over its lower
 * triangle (row by row, `stride` apart). m and k are multiples of 3, since the unknowns come in threes; the innermost loops
 * go over three rows and three columns at once, which is what the registers hold. False where a pivot is not greater than
 * nothing.
 */
export function factorFront(f: Float64Array, m: number, k: number, stride: number): boolean {
  for (let j = 0; j < k; j += 3) {
    const r0 = j * stride;
    const r1 = r0 + stride;
    const r2 = r1 + stride;
    subtractProducts(f, r0, r0, stride, j, j);
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
    for (let i = j + 3; i < m; i += 3) {
      const row = i * stride;
      subtractProducts(f, row, r0, stride, j, j);
      for (let r = row + j; r < row + 3 * stride; r += stride) {
        const x0 = (f[r] as number) * i00;
        const x1 = ((f[r + 1] as number) - x0 * l10) * i11;
        f[r] = x0;
        f[r + 1] = x1;
        f[r + 2] = ((f[r + 2] as number) - x0 * l20 - x1 * l21) * i22;
      }
    }
  }
  for (let i = k; i < m; i += 3)
    for (let j = k; j <= i; j += 3) subtractProducts(f, i * stride, j * stride, stride, k, j);
  return true;
}

/** Takes from the 3 by 3 block in column `at` of the rows at a the products of the first n columns of rows a and rows b. */
function subtractProducts(
  f: Float64Array,
  a: number,
  b: number,
  stride: number,
  n: number,
  at: number,
): void {
  const a1 = a + stride;
  const a2 = a1 + stride;
  const b1 = b + stride;
  const b2 = b1 + stride;
  let s00 = 0;
  let s01 = 0;
  let s02 = 0;
  let s10 = 0;
  let s11 = 0;
  let s12 = 0;
  let s20 = 0;
  let s21 = 0;
  let s22 = 0;
  for (let p = 0; p < n; p++) {
    const x0 = f[a + p] as number;
    const x1 = f[a1 + p] as number;
    const x2 = f[a2 + p] as number;
    const y0 = f[b + p] as number;
    const y1 = f[b1 + p] as number;
    const y2 = f[b2 + p] as number;
    s00 += x0 * y0;
    s01 += x0 * y1;
    s02 += x0 * y2;
    s10 += x1 * y0;
    s11 += x1 * y1;
    s12 += x1 * y2;
    s20 += x2 * y0;
    s21 += x2 * y1;
    s22 += x2 * y2;
  }
  f[a + at] = (f[a + at] as number) - s00;
  f[a + at + 1] = (f[a + at + 1] as number) - s01;
  f[a + at + 2] = (f[a + at + 2] as number) - s02;
  f[a1 + at] = (f[a1 + at] as number) - s10;
  f[a1 + at + 1] = (f[a1 + at + 1] as number) - s11;
  f[a1 + at + 2] = (f[a1 + at + 2] as number) - s12;
  f[a2 + at] = (f[a2 + at] as number) - s20;
  f[a2 + at + 1] = (f[a2 + at + 1] as number) - s21;
  f[a2 + at + 2] = (f[a2 + at + 2] as number) - s22;
}

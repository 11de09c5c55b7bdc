/** Value at t of a polynomial with these Bernstein coefficients. */
export function bernstein(b: readonly number[], t: number): number {
  const n = b.length - 1;
  const u = 1 - t;
  let binomial = 1;
  let power = 1;
  let sum = (b[0] ?? 0) * u;
  for (let i = 1; i < n; i++) {
    power *= t;
    binomial = (binomial * (n - i + 1)) / i;
    sum = (sum + power * binomial * (b[i] ?? 0)) * u;
  }
  return sum + power * t * (b[n] ?? 0);
}

/** Derivative at t of a polynomial with these Bernstein coefficients. */
export function bernsteinSlope(b: readonly number[], t: number): number {
  const n = b.length - 1;
  return bernstein(
    b.slice(1).map((value, i) => n * (value - (b[i] ?? 0))),
    t,
  );
}

/**
 * Bernstein coefficients of the product of two polynomials (R. T. Farouki and V. T. Rajan, "Algorithms for
 * polynomials in Bernstein form", 1988, formula 44).
 */
export function bernsteinProduct(a: readonly number[], b: readonly number[]): number[] {
  const m = a.length - 1;
  const n = b.length - 1;
  const product = new Array<number>(m + n + 1).fill(0);
  for (const [i, x] of a.entries()) {
    for (const [j, y] of b.entries()) {
      product[i + j] = (product[i + j] ?? 0) + binomial(m, i) * x * binomial(n, j) * y;
    }
  }
  return product.map((value, k) => value / binomial(m + n, k));
}

function binomial(n: number, k: number): number {
  let value = 1;
  for (let i = 1; i <= k; i++) value = (value * (n - k + i)) / i;
  return value;
}

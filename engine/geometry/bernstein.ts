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
  const u = 1 - t;
  let weight = n;
  let power = 1;
  let sum = 0;
  for (let i = 0; i < n; i++) {
    sum = sum * u + weight * power * ((b[i + 1] ?? 0) - (b[i] ?? 0));
    power *= t;
    weight = (weight * (n - 1 - i)) / (i + 1);
  }
  return sum;
}

/**
 * Bernstein coefficients of the product of two polynomials (R. T. Farouki and V. T. Rajan, "Algorithms for
 * polynomials in Bernstein form", 1988, formula 44).
 */
export function bernsteinProduct(a: readonly number[], b: readonly number[]): number[] {
  const m = a.length - 1;
  const n = b.length - 1;
  const product: number[] = [];
  let below = 1;
  for (let k = 0; k <= m + n; k++) {
    const first = Math.max(0, k - n);
    let sum = 0;
    let left = binomial(m, first);
    let right = binomial(n, k - first);
    for (let i = first; i <= Math.min(m, k); i++) {
      sum += left * (a[i] ?? 0) * right * (b[k - i] ?? 0);
      left = (left * (m - i)) / (i + 1);
      right = (right * (k - i)) / (n - k + i + 1);
    }
    product.push(sum / below);
    below = (below * (m + n - k)) / (k + 1);
  }
  return product;
}

function binomial(n: number, k: number): number {
  let value = 1;
  for (let i = 1; i <= k; i++) value = (value * (n - k + i)) / i;
  return value;
}

/** Greatest move of an unknown at arm's length. */
export function longest(p: Float64Array, arms: readonly number[]): number {
  let most = 0;
  for (let k = 0; k < p.length; k++) most = Math.max(most, Math.abs(p[k] as number) * (arms[k] as number));
  return most;
}

/** Sum of the squares of all moves at arm's length. */
export function squareLength(p: Float64Array, arms: readonly number[]): number {
  let sum = 0;
  for (let k = 0; k < p.length; k++) {
    const move = (p[k] as number) * (arms[k] as number);
    sum += move * move;
  }
  return sum;
}

/** Scalar product. */
export function inner(a: Float64Array, b: Float64Array): number {
  let sum = 0;
  for (let k = 0; k < a.length; k++) sum += (a[k] as number) * (b[k] as number);
  return sum;
}

/** p^T H p for a symmetric H of which the lower triangle is given. */
export function quadratic(h: Float64Array, p: Float64Array): number {
  const n = p.length;
  let sum = 0;
  for (let i = 0; i < n; i++) {
    let row = ((h[i * n + i] as number) * (p[i] as number)) / 2;
    for (let j = 0; j < i; j++) row += (h[i * n + j] as number) * (p[j] as number);
    sum += 2 * row * (p[i] as number);
  }
  return sum;
}

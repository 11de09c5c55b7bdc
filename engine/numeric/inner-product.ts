/**
 * The sum of the products of `count` numbers of `a` from `i` on with those of `b` from `j` on. Four sums at a time: a
 * processor adds faster than one sum can wait for.
 */
export function innerProduct(a: Float64Array, i: number, b: Float64Array, j: number, count: number): number {
  let first = 0;
  let second = 0;
  let third = 0;
  let fourth = 0;
  let k = 0;
  for (; k + 3 < count; k += 4) {
    first += (a[i + k] as number) * (b[j + k] as number);
    second += (a[i + k + 1] as number) * (b[j + k + 1] as number);
    third += (a[i + k + 2] as number) * (b[j + k + 2] as number);
    fourth += (a[i + k + 3] as number) * (b[j + k + 3] as number);
  }
  for (; k < count; k++) first += (a[i + k] as number) * (b[j + k] as number);
  return first + second + (third + fourth);
}

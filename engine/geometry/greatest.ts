/** Golden sections that narrow a greatest place down to a billionth of the interval. */
const SECTIONS = 36;
const GOLDEN = (Math.sqrt(5) - 1) / 2;

/**
 * Where a function is greatest on an interval: the best of so many looks, then golden sections about it (J.
 * Kiefer, 1953). Of several summits between two looks one may be missed.
 */
export function placeOfGreatest(f: (t: number) => number, t0: number, t1: number, looks: number): number {
  const step = (t1 - t0) / looks;
  let best = t0;
  let greatest = -Infinity;
  for (let i = 0; i <= looks; i++) {
    const value = f(t0 + i * step);
    if (value > greatest) {
      greatest = value;
      best = t0 + i * step;
    }
  }
  let low = Math.max(t0, best - step);
  let high = Math.min(t1, best + step);
  let left = high - GOLDEN * (high - low);
  let right = low + GOLDEN * (high - low);
  let atLeft = f(left);
  let atRight = f(right);
  for (let i = 0; i < SECTIONS; i++) {
    if (atLeft < atRight) {
      low = left;
      left = right;
      atLeft = atRight;
      right = low + GOLDEN * (high - low);
      atRight = f(right);
    } else {
      high = right;
      right = left;
      atRight = atLeft;
      left = high - GOLDEN * (high - low);
      atLeft = f(left);
    }
  }
  const middle = (low + high) / 2;
  return f(middle) >= greatest ? middle : best;
}
